using System.Collections.Immutable;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Alone;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.Core.Wear.Verdicts;

/// <summary>Judges the tools of a shop.</summary>
public static class ShopVerdicts
{
    private const int MostToMeasure = 3;
    private const double Past = 0.5;
    private const double Near = 0.2;

    /// <summary>Judges a tool.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="forecast">The tool with its forecasts.</param>
    /// <param name="isMostOverdue">Whether its reading is among the most overdue; asked only where the verdict hangs on it.</param>
    /// <returns>The verdict.</returns>
    internal static Judged Of(Shop shop, ToolForecast forecast, Func<bool> isMostOverdue) =>
        Of(LookedOver.Of(shop, forecast.Tool), forecast, isMostOverdue);

    /// <summary>Judges a tool by its ledger and last sizes alone, at once, where no forecast is worked out.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>The verdict; never milder than that of the forecast but for near and past its limit.</returns>
    public static Judged WithoutForecast(Shop shop, ToolInShop tool) =>
        Of(
            LookedOver.Of(shop, tool),
            new ToolForecast(
                tool,
                [
                    .. ShopHistories
                        .Of(shop, tool)
                        .Select(each => new GaugeForecast(
                            each,
                            ThisToolAlone.Of(each.Wear),
                            new NotEnoughData(0, 1, "no forecast is worked out"),
                            FollowedToItsLimit: true
                        )),
                ],
                ShopHistories.UsualSession(shop, tool)
            ),
            () => false
        );

    /// <summary>The tools whose readings are most overdue: three at most, or nothing would be measured.</summary>
    /// <param name="forecasts">The tools that are not scrapped.</param>
    /// <returns>Their numbers.</returns>
    internal static ImmutableHashSet<long> MostOverdue(IEnumerable<ToolForecast> forecasts) =>
        [
            .. forecasts
                .Select(each => (each.Tool.Id, Overdue: ReadingOverdue(each)))
                .Where(each => each.Overdue >= 1)
                .OrderByDescending(each => each.Overdue)
                .ThenBy(each => each.Id)
                .Take(MostToMeasure)
                .Select(each => each.Id),
        ];

    /// <summary>How overdue a reading is: heats since the last one over half of the heats that were left then.</summary>
    /// <param name="forecast">The tool's forecast.</param>
    /// <returns>Below 1 where none is due; 0 where the tool has no limit to measure against.</returns>
    public static double ReadingOverdue(ToolForecast forecast)
    {
        if (forecast.Deciding is not { } gauge || gauge.History.HeatsSinceKnown <= 0)
        {
            return 0;
        }

        double since = gauge.History.HeatsSinceKnown;
        if (gauge.Forecast is not { } known)
        {
            double left = Math.Max(0, gauge.History.Wear.GuessHeats - gauge.History.Wear.HeatsNow);
            return HalfOf(left, since);
        }

        // between 60 and 75 % of the limit a reading is always due: wear that speeds up cannot be seen before
        MeasuringAdvice advice = MeasuringAdvice.Of(gauge.History.Wear, known);
        double half = HalfOf(known.HeatsLeft.Q50 ?? HeatsLeft.Most, since);
        return advice is { BecauseOfRunOut: true, MoreHeats: 0 } ? Math.Max(1, half) : half;
    }

    private static double HalfOf(double left, double since) => since / (0.5 * (left + since));

    private static Judged Of(LookedOver seen, ToolForecast forecast, Func<bool> isMostOverdue)
    {
        List<Reason> reasons =
        [
            .. seen.Open.Select(each => new Reason(each.Rule.Verdict, $"{each.Words}: {each.How}", each.Next?.Deed)),
        ];
        reasons.AddRange(OfWear(forecast));
        if (!seen.SoundSinceHeats && !seen.Open.Any(each => each.Found == seen.Last))
        {
            reasons.Add(new(Verdict.LookItOver, Unseen(seen)));
        }

        bool isWearAsked = seen.Unread is null or { Rule.Wear: WearSays.AfterReading };
        if (seen.Unread is { Rule.Wear: WearSays.AfterReading } unread && !seen.Open.Contains(unread))
        {
            reasons.Add(new(Verdict.MeasureIt, $"{unread.Words}: its sizes count again from the next reading"));
        }
        else if (isWearAsked && ReadingOverdue(forecast) >= 1 && (reasons.Count > 0 || isMostOverdue()))
        {
            reasons.Add(new(Verdict.MeasureIt, Unread(forecast)));
        }

        if (NoLimit(forecast) is { } unknown)
        {
            reasons.Add(new(Verdict.NoLimitKnown, unknown));
        }

        bool mayBeNext = seen.Unread is null && reasons.TrueForAll(each => each.Verdict == Verdict.MeasureIt);
        return new(
            reasons.Count == 0
                ? [new(Verdict.InsideItsLimit, Inside(forecast))]
                : [.. reasons.OrderBy(each => each.Verdict)],
            mayBeNext
        );
    }

    private static IEnumerable<Reason> OfWear(ToolForecast forecast)
    {
        GaugeForecast? past = forecast.Gauges.FirstOrDefault(each => IsReadPast(each.History));
        if (past is not null)
        {
            yield return new(
                Verdict.PastItsLimit,
                $"its {past.History.Gauge.Name} was at or past its scrap size when last read"
            );
        }

        if (forecast.Deciding is not { Forecast: { } known } gauge)
        {
            yield break;
        }

        double now = known.ChancePastLimitNow;
        double soon = forecast.ChancePastLimit(forecast.UsualSession) ?? 0;
        if (now > Past && past is null)
        {
            yield return new(
                Verdict.PastItsLimit,
                $"{ChanceText.Of(now)} that its {gauge.History.Gauge.Name} is past its limit"
            );
        }
        else if (now <= Past && soon > Near && past is null)
        {
            yield return new(
                Verdict.NearItsLimit,
                $"{ChanceText.Of(soon)} that its next {Heats(forecast.UsualSession)} heats take its {gauge.History.Gauge.Name} past its limit"
            );
        }
    }

    // by the size itself: what came in already past it has a limit on the wrong side of its start
    private static bool IsReadPast(GaugeHistory history) =>
        history.LastKnown is { } size
        && history.Gauge.ScrapSize is { } scrap
        && (history.Gauge.Wears == Tools.Wears.Smaller ? size <= scrap : size >= scrap);

    private static string? NoLimit(ToolForecast forecast) =>
        forecast.Gauges.All(each => each.History.Wear.LimitMm is null)
            ? "no scrap size is set, so nothing is known of its limit"
        : forecast.Deciding is { Forecast: null, History: { LastKnownWearMm: null } unread }
            ? $"its {unread.Gauge.Name} was never read, so nothing is known of its limit"
        : null;

    private static string Inside(ToolForecast forecast) =>
        forecast.Deciding switch
        {
            { Forecast: { } known } =>
                $"{ChanceText.Of(known.ChancePastLimit(forecast.UsualSession))} that its next {Heats(forecast.UsualSession)} heats take it past its limit",
            { Outlook: NotEnoughData missing } => $"inside it when last read; {missing.Why}",
            _ => "inside it when last read",
        };

    private static string Unseen(LookedOver seen) =>
        seen.BackFromLoan is { } back ? $"back from a loan on {back.On:yyyy-MM-dd} and not found sound since"
        : seen.Mended is { } mended
            ? $"{ToolReworked.WhatWords.Word(mended.What)} on {mended.On:yyyy-MM-dd} and not found sound since"
        : seen.Last is not { } last ? "never looked over"
        : $"not looked over since its last heats, last on {last.On:yyyy-MM-dd}";

    private static string Unread(ToolForecast forecast) =>
        $"{Heats(forecast.Deciding!.History.HeatsSinceKnown)} heats since its {forecast.Deciding.History.Gauge.Name} was last read";

    private static string Heats(double heats) =>
        heats.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture);
}
