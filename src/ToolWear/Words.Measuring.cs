using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Histories;

namespace ToolWear;

/// <content>What is said with the caliper in the hand.</content>
public static partial class Words
{
    internal const string RoundHeading = "To measure: the caliper round";
    internal const string RoundEnded = "The caliper round is done";
    internal const string ToMeasureHeading = "To measure       heats since";
    internal const string NothingToMeasure = "Nothing worked since";
    internal const string VerdictsHeading = "What came of it. Enter goes to the rack.";
    internal const string SizeRead = "Size:";
    internal const string NoScrapSize = "no size set";
    internal const string NotKnown = "not known";
    internal const string NoExpectation = "not enough data";
    internal const string NoGaugeMark = "It has no gauge mark to read.";
    internal const string FoundOn = "Found, before a size is typed:";

    internal static string Of(int which, int all) => $"{which} of {all}";

    internal static string LookedBy(string by) => $"looked over by {by}";

    internal static string Improbable(string expected) =>
        $"Expected {expected}. End ground back? Jaw on scale? Enter once more takes it.";

    internal static string ReadingTaken(ToolMeasured reading, GaugeHistory history, LengthUnit units)
    {
        string unit = SizeShown.Mark(units);
        string worn =
            history.Wear.LimitMm is { } limit && history.LastKnownWearMm is { } wear
                ? $", {SizeShown.Wear(limit - wear, units)} to go of {SizeShown.Wear(limit, units)}"
                : "";
        string fine = reading.Resolution is { } step
            ? $"; taken to {SizeShown.Wear(step.Mm, units)} {unit}, as fine as the fraction"
            : "";
        return $"{reading.Tool} {reading.Gauge}: {SizeShown.Caliper(reading.Size, units)} {unit}{worn}{fine}";
    }

    internal static string Found(string mark, Finding finding)
    {
        string found = $"{mark}: {ToolLookedOver.FindingWords.Word(finding)}.";
        return finding == Finding.Sound ? found
            : LookingOver.MayBeOverheated(finding) ? $"{found} {OneLine(OverheatedCaution)}"
            : $"{found} {FindingCaution}";
    }
}
