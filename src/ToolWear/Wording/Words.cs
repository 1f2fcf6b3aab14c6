using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;
using ToolWear.Core.Wear.Trials;

namespace ToolWear.Wording;

/// <summary>Sentences and figures that several rooms say alike.</summary>
internal static class Words
{
    public const string HeatsAxis = "heats";
    public const string LoansLegend =
        "A lent tool is off the rack. Once it is back it needs looking over and measuring: nobody here counted its heats.";
    public const string NothingToMeasure = "Nothing worked since";
    public const string NoGaugeMark = "It has no gauge mark to read.";
    public const string PatternsLegend =
        "Heats a head: the first guess, and what closed sessions taught; records count from two sessions on (3 by 5: 3 heats by 5 sessions).";

    /// <summary>What a comparison rests on.</summary>
    public const string TrialBasis =
        "Life of A to B: how many times as long A lasts, nine times in ten between the two figures. It needs two tools of each with a reading.";
    public const string WorkingOut = "being worked out";
    public const string HandOverHeading = "For the helper";
    public const string StockTakeLegend =
        "Last seen: the last day in the ledger on which the tool was there, and how it is known.";
    public const string TrialAdvice =
        "A comparison needs two tools of each, each read once; to show a difference of a third it usually needs more than four a side.";

    // what was typed is repeated, however long it was
    private const int MostOfRefusal = 3000;

    /// <summary>Where the forecast that drives verdicts comes from.</summary>
    public const string ForecastBasis =
        "Every tool of this kind and steel wears a little differently; the forecast starts from what its sisters did and moves to this tool's own readings as they come. If the range is wide, one more caliper reading narrows it.";

    /// <summary>What the columns of heats left mean.</summary>
    public const string LeftExplained =
        "Left: about so many heats; nine times in ten it lies between from and to. Where that range is wider than the figure, measure once more.";

    /// <summary>What is said where the range is wider than the figure.</summary>
    public const string MeasureOnceMore = "measure once more";

    /// <summary>What marks a range that may be too narrow.</summary>
    public const string NotFollowedMark = "*";

    /// <summary>What stands beside a range until one tool of the kind has been read close to its limit.</summary>
    public const string NotFollowed =
        "No tool of this sort has been followed to its limit yet; the range may be too narrow.";

    /// <summary>What marks a reading that is more likely wrong than right.</summary>
    public const string Suspect = "likely misread";

    public static string CardHeading(string? mark) => $"Wear card {mark}";

    public static string And(string[] words) =>
        words.Length < 2 ? string.Concat(words) : $"{string.Join(", ", words[..^1])} and {words[^1]}";

    public static string AndMore(int more) => $"and {more} more";

    public static string NoSuchRow(int row) => $"No row has the number {row}.";

    public static string HeadsAt(string stage, int heads) => $"{stage}: {heads} {(heads == 1 ? "head" : "heads")}";

    public static string HeatsOf(Heats heats) =>
        heats == Core.Measure.Heats.Half
            ? "half a heat"
            : $"{heats} {(heats == Core.Measure.Heats.Of(1) ? "heat" : "heats")}";

    public static string BackNow(string mark) =>
        $"{mark} is back. Look it over and measure it: nobody here counted its heats.";

    public static string ReadingTaken(ToolMeasured reading, GaugeHistory history, LengthUnit units)
    {
        string unit = SizeShown.Mark(units);
        string worn =
            history.Wear.LimitMm is { } limit && history.LastKnownWearMm is { } wear
                ? $", {ToGo(limit, wear, units)}"
                : "";
        string fine = reading.Resolution is { } step
            ? $"; a fraction counts as read to {SizeShown.Wear(step.Mm, units)} {unit}"
            : "";
        return $"{reading.Tool} {reading.Gauge}: {SizeShown.Caliper(reading.Size, units)} {unit}{worn}{fine}";
    }

    /// <summary>How much may still wear, or how far past its limit it is.</summary>
    public static string ToGo(double limitMm, double wornMm, LengthUnit units) =>
        wornMm > limitMm
            ? $"{WearIn(wornMm - limitMm, units)} past its limit of {WearIn(limitMm, units)}"
            : $"{WearIn(Math.Min(limitMm, limitMm - wornMm), units)} to go of {WearIn(limitMm, units)}";

    private static string WearIn(double mm, LengthUnit units) => $"{SizeShown.Wear(mm, units)} {SizeShown.Mark(units)}";

    /// <summary>A size that is unlikely is asked about once.</summary>
    public static string AskedOnce(string doubt) => $"{doubt} Press Enter again to save it.";

    /// <summary>Where the last size known is what a rework left; null where it was read or made.</summary>
    public static string? AfterRework(GaugeHistory history) =>
        history.LastRework is { } rework
            ? $", {ToolReworked.WhatWords.Word(rework.What)} {rework.On:yyyy-MM-dd}"
            : null;

    /// <summary>A day with its weekday.</summary>
    public static string Weekday(DateOnly day) => day.ToString("ddd yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>The parts of a cost that nobody ever noted.</summary>
    public static IEnumerable<string> Unknown(PlaceCost cost) =>
        new[]
        {
            cost.Steel is null ? "steel" : "",
            cost.HourRate is null ? "hour rate" : "",
            cost.ForgeHours is null ? "forge hours" : "",
            cost.GrindHours is null ? "grind hours" : "",
            cost.Treatment is null ? "treatment" : "",
        }.Where(part => part.Length > 0);

    /// <summary>Why there is no figure.</summary>
    public static string Missing(NotEnoughData missing) =>
        $"Not enough data: {missing.Why} ({missing.Has} of {missing.Needs}).";

    /// <summary>A chance for people.</summary>
    public static string Percent(double chance) =>
        chance > 0.999 ? "over 99.9 %"
        : chance is > 0 and < 0.001 ? "under 0.1 %"
        : (chance * 100).ToString("0.#", CultureInfo.InvariantCulture) + " %";

    /// <summary>A place of a series in words.</summary>
    public static string SeriesName(string? eye, Place place, string form) =>
        string.Join(
            ' ',
            new[] { eye, place == Place.None ? null : Places.Words.Word(place), form }.Where(word =>
                !string.IsNullOrEmpty(word)
            )
        );

    /// <summary>The wear history was written.</summary>
    public static string Exported(int readings, string path) => $"{readings} readings written to {path}";

    public static string HandOverPattern(string pattern) => $"Pattern {pattern}";

    public static string NoStages(string pattern) =>
        $"pattern {pattern} has no stage that names a form of tool: nothing to hand over";

    public static string CountOf(int number, string one) => number == 1 ? $"1 {one}" : $"{number} {one}s";

    public static string ToolEntered(string mark, int rows) => $"{mark} saved ({rows} so far).";

    /// <summary>Two marks can be mixed up.</summary>
    public static string MarksAlike(ToolMark given, ToolMark other) =>
        $"{given} and {other} differ only in capital letters and are two tools: re-mark one if they could be mixed up";

    public static string TrialsSilent(ShopTrialList trials) =>
        trials.Silent switch
        {
            0 when trials.All.IsEmpty => "No tools of one kind differ in steel, lubricant, cooling or hand yet.",
            0 => "These are all the comparisons that the records allow.",
            1 when trials.All.IsEmpty => "One comparison has too few tools yet.",
            int silent when trials.All.IsEmpty => $"{silent} comparisons have too few tools yet.",
            1 => "One more comparison has too few tools yet.",
            int silent => $"{silent} more comparisons have too few tools yet.",
        };

    /// <summary>A refusal.</summary>
    public static string Refusal(string sentence) =>
        $"toolwear: {FreeText.Shown(sentence.ReplaceLineEndings(" "), MostOfRefusal)}";

    /// <summary>The life that was guessed for a tool.</summary>
    public static string Guess(WearHistory wear, Estimated outlook) =>
        outlook is SisterForecast { Teachers: > 0 } taught
            ? $"one of these usually lasts about {About(taught.UsualHeats)} heats (learned from {taught.Teachers} {(taught.Teachers == 1 ? "tool" : "tools")})"
            : $"one of these usually lasts {Heats(wear.GuessHeats)} heats ({(wear.GuessIsAssumed ? "assumed" : "the smith's guess")})";

    /// <summary>What stands over a list for people.</summary>
    public static string ShopHeading(Shop shop, LengthUnit units) => $"{SheetSizes(units)}{DemoMark(shop)}\n\n";

    public static string SheetSizes(LengthUnit units) =>
        $"Sizes in {(units == LengthUnit.Inch ? "inches" : SizeShown.Mark(units))}, heats weighted by their work";

    /// <summary>The mark of the demo.</summary>
    public static string DemoMark(Shop shop) => shop.Settings.IsDemo ? "  [demo: an invented shop]" : "";

    /// <summary>Heats left in words.</summary>
    public static string HeatsLeft(HeatsLeft left)
    {
        string about = left.Q50 is { } middle
            ? $"about {About(middle)} {(About(middle) == "1" ? "heat" : "heats")} left"
            : "more than the readings can tell";
        string from = left.Q05 is { } low ? About(low) : "-";
        return left.Q95 is { } high
            ? $"{about}; nine times in ten between {from} and {About(high)}{(left.IsWide ? $"; {MeasureOnceMore}" : "")}"
            : $"{about}; nineteen times in twenty more than {from}, the readings set no upper bound; {MeasureOnceMore}";
    }

    /// <summary>Heats for people: halves only.</summary>
    public static string Heats(double heats) => heats.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Heats that are an estimate: no finer than one.</summary>
    public static string About(double heats) => heats.ToString("0", CultureInfo.InvariantCulture);
}
