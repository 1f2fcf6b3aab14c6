using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Figures;
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
        if (seen.Ending is { } ending)
        {
            return new(Verdict.Out, $"found {Found(ending)}");
        }

        if (seen.Dressing is { } dressing)
        {
            return new(Verdict.DressFirst, $"found {Found(dressing)}");
        }

        return OfWear(forecast)
            ?? (seen.SoundSinceHeats ? null : new Judged(Verdict.LookItOver, Unseen(seen)))
            ?? (
                ReadingOverdue(forecast) >= 1 && isMostOverdue()
                    ? new Judged(Verdict.MeasureIt, Unread(forecast))
                    : null
            )
            ?? new(Verdict.InsideItsLimit, Inside(forecast));
    }

    private static Judged? OfWear(ToolForecast forecast)
    {
        if (forecast.Deciding is not { } gauge)
        {
            return null;
        }

        if (gauge.Forecast is not { } known)
        {
            return gauge.History.LastKnownWearMm >= gauge.History.Wear.LimitMm
                ? new(
                    Verdict.PastItsLimit,
                    $"its {gauge.History.Gauge.Name} was at or past its scrap size when last read"
                )
                : null;
        }

        double now = known.ChancePastLimitNow;
        double soon = forecast.ChancePastLimit(forecast.UsualSession) ?? 0;
        return now > Past
                ? new(Verdict.PastItsLimit, $"{Percent(now)} that its {gauge.History.Gauge.Name} is past its limit")
            : soon > Near
                ? new(
                    Verdict.NearItsLimit,
                    $"{Percent(soon)} that its next {Heats(forecast.UsualSession)} heats take its {gauge.History.Gauge.Name} past its limit"
                )
            : null;
    }

    private static string Inside(ToolForecast forecast) =>
        forecast.Deciding switch
        {
            null => "no scrap size is set, so nothing is known of its limit",
            { Forecast: { } known } =>
                $"{Percent(known.ChancePastLimit(forecast.UsualSession))} that its next {Heats(forecast.UsualSession)} heats take it past its limit",
            { Outlook: NotEnoughData missing } => $"inside it when last read; {missing.Why}",
            _ => "inside it when last read",
        };

    private static string Unseen(LookedOver seen) =>
        seen.BackFromLoan is { } back ? $"back from a loan on {back.On:yyyy-MM-dd} and not found sound since"
        : seen.Last is not { } last ? "never looked over"
        : last.Finding == Finding.Sound ? $"not looked over since its last heats, last on {last.On:yyyy-MM-dd}"
        : $"found {Found(last)} and not found sound since";

    private static string Unread(ToolForecast forecast) =>
        $"{Heats(forecast.Deciding!.History.HeatsSinceKnown)} heats since its {forecast.Deciding.History.Gauge.Name} was last read";

    private static string Found(ToolLookedOver finding) =>
        $"{ToolLookedOver.FindingWords.Word(finding.Finding)} on {finding.On:yyyy-MM-dd}"
        + (finding.By is { } by ? $" by {by}" : "");

    private static string Percent(double chance) =>
        chance switch
        {
            < 0.005 => "next to no chance",
            > 0.995 => "next to certain",
            _ => $"{chance * 100:0} in 100",
        };

    private static string Heats(double heats) =>
        heats.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture);
}
