using System.Text;
using ToolWear.Core.Findings;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Alone;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Core.Wear.Verdicts;
using ToolWear.Results;
using ToolWear.Results.Looks;
using ToolWear.Results.Tools;
using ToolWear.Wording;

namespace ToolWear.Pens;

/// <summary>The card of a tool as text, at most 80 columns wide but for names and notes.</summary>
internal static class CardText
{
    private const string OutlookName = "With its sisters";

    private const int MostEntries = 12;

    /// <summary>Writes the card.</summary>
    /// <param name="card">The card.</param>
    /// <returns>Lines, each with its line end.</returns>
    public static string Of(Card card)
    {
        StringBuilder text = new();
        Head(text, card);
        text.Append(EyeText.Of(card));
        foreach (GaugeForecast gauge in card.Forecast.Gauges)
        {
            Gauge(text, gauge, card.Units);
        }

        text.Append(EyeText.Into(card));
        if (!card.Readings.Rows.IsEmpty)
        {
            text.Append("\nReadings\n").Append(card.Readings.ToText());
        }

        Entries(text, card);
        return text.Append('\n')
            .Append(Wrapped.Of(Words.ForecastBasis))
            .Append(Wrapped.Of(Cautions.ForecastCaution))
            .ToString();
    }

    /// <summary>Writes what the tool is, its verdict, and when it was looked over.</summary>
    /// <param name="text">Where to.</param>
    /// <param name="card">The card.</param>
    internal static void Head(StringBuilder text, Card card)
    {
        Tool tool = card.Forecast.Tool.Tool;
        string place = tool.Place == Place.None ? "" : Places.Words.Word(tool.Place) + " ";
        string eye = tool.Eye is { } name ? $" for eye {name}" : "";
        text.Append(
            $"{tool.Mark}  {place}{tool.Form}{eye}, {tool.Steel ?? "unknown steel"}{Words.DemoMark(card.Shop)}\n"
        );
        text.Append(
            card.Verdict is { } verdict
                ? Wrapped.Of($"{verdict.Shown}: {verdict.Why}")
                : $"scrapped on {card.Forecast.Tool.StateOn:yyyy-MM-dd}\n"
        );
        if (card.Forecast.Tool.State == ToolState.SetAside)
        {
            text.Append(
                card.Forecast.Tool.Lent is { } lent
                    ? Wrapped.Of(LentSince(lent.To, lent.On))
                    : $"set aside since {card.Forecast.Tool.StateOn:yyyy-MM-dd}\n"
            );
        }

        if (card.NextSession is { } session)
        {
            text.Append(Wrapped.Of(LastsSession(session), rest: "  "));
        }

        if (card.Dressed is { } dressed)
        {
            text.Append(Wrapped.Of(dressed, rest: "  "));
        }

        LookedOver seen = LookedOver.Of(card.Shop, card.Forecast.Tool);
        text.Append(
            seen.Last is { } last
                ? $"last looked over {last.On:yyyy-MM-dd}{(last.By is { } by ? " by " + by : "")}: {Core.Ledger.ToolLookedOver.FindingWords.Word(last.Finding)}{(last.Part is { } part ? $" at the {Core.Ledger.ToolLookedOver.PartWords.Word(part)}" : "")}\n"
                : "never looked over\n"
        );
        if (tool.Start.IsUnknown)
        {
            text.Append(
                Wrapped.Of(
                    "in use before these records, nobody knows for how many heats: all counts from its first reading"
                )
            );
        }
        else if (tool.Start.HeatsBefore is { } before)
        {
            text.Append($"{before} heats before these records ({ToolStart.HowWords.Word(tool.Start.How!.Value)})\n");
        }
    }

    /// <summary>Writes the figures of one gauge mark and both its forecasts.</summary>
    /// <param name="text">Where to.</param>
    /// <param name="gauge">The gauge mark.</param>
    /// <param name="units">The unit for people.</param>
    internal static void Gauge(StringBuilder text, GaugeForecast gauge, LengthUnit units)
    {
        string unit = SizeShown.Mark(units);
        GaugeMark mark = gauge.History.Gauge;
        WearHistory wear = gauge.History.Wear;
        string Size(Length? size) => size is { } known ? $"{SizeShown.Caliper(known, units)} {unit}" : "not known";
        text.Append(
            $"\n{mark.Name}: start {Size(gauge.History.Start)}, now {Size(gauge.History.LastKnown)}{Words.AfterRework(gauge.History)}"
        );
        text.Append(
            mark.ScrapSize is { } scrap
                ? $", scrap {(mark.Wears == Wears.Smaller ? "under" : "over")} {Size(scrap)}\n"
                : ", no scrap size\n"
        );
        if (wear.LimitMm is { } limit && gauge.History.LastKnownWearMm is { } worn)
        {
            text.Append($"  {Words.ToGo(limit, worn, units)}");
            text.Append($" when last known; {Words.Heats(gauge.History.HeatsSinceKnown)} heats since\n");
        }

        if (wear.LimitMm <= wear.ResolutionMm * 4)
        {
            text.Append(Wrapped.Of(ReadCoarsely(wear.ResolutionMm, units), "  ", "    "));
        }

        text.Append(Wrapped.Of($"This tool alone: {Alone(gauge.Alone, units)}", "  ", "    "));
        text.Append(
            gauge.History.Tool.State == ToolState.Scrapped
                ? ""
                : Wrapped.Of($"{OutlookName}: {Outlook(gauge)}", "  ", "    ")
        );
        if (gauge.Forecast is { } forecast)
        {
            text.Append(gauge.FollowedToItsLimit ? "" : Wrapped.Of(Words.NotFollowed, "  ", "  "));
            string wider = RangeWords.Widened(gauge.Ranges);
            text.Append(wider.Length == 0 ? "" : Wrapped.Of(wider, "  ", "  "));
            string course = Course(forecast.Traits, gauge.FollowedToItsLimit);
            text.Append(course.Length == 0 ? "" : Wrapped.Of(course, "  ", "  "));
            if (wear.LimitMm is not null)
            {
                text.Append(MeasureNext(MeasuringAdvice.Of(wear, forecast)));
            }
        }
    }

    private static string ReadCoarsely(double mm, LengthUnit units) =>
        $"Read only to {SizeShown.Wear(mm, units)} {SizeShown.Mark(units)}, a quarter or more of all that may wear: a caliper's decimals say more.";

    private static string Alone(ThisToolAlone alone, LengthUnit units)
    {
        if (alone.RateMmPerHeat is not Estimate rate)
        {
            return alone.RateMmPerHeat is NotEnoughData missing ? missing.Why : "not enough data";
        }

        string high = rate.High90 is { } most ? SizeShown.Rate(most, units) : "no bound";
        return $"{SizeShown.Rate(rate.Value, units)} {SizeShown.Mark(units)} a heat on {alone.Readings} readings; "
            + $"nine times in ten {SizeShown.Rate(rate.Low90, units)} to {high}";
    }

    private static string Outlook(GaugeForecast gauge)
    {
        string guess = gauge.History.Wear.GuessIsAssumed ? $"; {Words.Guess(gauge.History.Wear, gauge.Outlook)}" : "";
        if (gauge.Forecast is not { } forecast)
        {
            return gauge.Outlook is NotEnoughData missing ? $"not enough data: {missing.Why}" : "not enough data";
        }

        return forecast.AtOrPastLimit
            ? $"at or past the limit now ({Quantity.Chance.Show(forecast.ChancePastLimitNow, LengthUnit.Mm)}){guess}"
            : Words.HeatsLeft(forecast.HeatsLeft) + guess;
    }

    /// <summary>Writes the last of what happened to the tool.</summary>
    /// <param name="text">Where to.</param>
    /// <param name="card">The card.</param>
    internal static void Entries(StringBuilder text, Card card)
    {
        int skipped = Math.Max(0, card.Entries.Length - MostEntries);
        text.Append(
            skipped == 0 ? "\nWhat happened\n" : $"\nWhat happened, the last {MostEntries} of {card.Entries.Length}\n"
        );
        foreach (Core.Ledger.Entered entered in card.Entries.Skip(skipped))
        {
            text.Append($"  {EntryWords.Of(entered.What, card.Units)}  (entry {entered.Number})\n");
        }
    }

    private static string LentSince(string to, DateOnly on) => $"lent to {to} since {on:yyyy-MM-dd}";

    private static string LastsSession(SessionOutlook outlook) =>
        $"Lasts its next usual session ({Words.Heats(outlook.Heats)} heats): {ChanceText.Of(outlook.ByWear)} by wear"
        + (
            outlook.OnRecord.Failures == 0 ? ""
            : outlook.WithCracks is { } both ? $"; {ChanceText.Of(both)} with cracks as on record ({OnRecord(outlook)})"
            : $"; cracks not counted, nobody knows its heats from new ({OnRecord(outlook)})"
        );

    private static string OnRecord(SessionOutlook outlook)
    {
        int failures = outlook.OnRecord.Failures;
        string leftOut = outlook.OnRecord.LeftOut is > 0 and int tools
            ? $", {tools} more left out: their heats are not known"
            : "";
        return $"{failures} {(failures == 1 ? "crack" : "cracks")} in {outlook.OnRecord.Lives.Length} such tools{leftOut}";
    }

    private static string Course(KindTraits traits, bool isFollowed)
    {
        const double likely = 0.8;
        string first =
            traits.ChanceOfFirstCut > likely
                ? "Tools of this sort lose about a third of their limit in the first heats. "
                : "";
        string last =
            !isFollowed
                ? "Past half their limit tools usually wear a little faster; the range allows for it until one of this sort has been measured there."
            : traits.ChanceOfFaster > likely ? "Past half their limit tools of this sort wear faster."
            : traits.ChanceOfSlower > likely ? "Past half their limit tools of this sort wear slower."
            : "";
        return (first + last).Trim();
    }

    private static string MeasureNext(MeasuringAdvice advice) =>
        advice.MoreHeats < 0.5
            ? "  Measure it once cold.\n"
            : $"  Measure it after about {Words.About(advice.MoreHeats)} more heats.\n";
}
