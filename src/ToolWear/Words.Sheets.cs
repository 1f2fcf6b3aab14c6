namespace ToolWear;

/// <content>What stands on printed sheets.</content>
public static partial class Words
{
    internal const string LegendReading = "read";
    internal const string LegendMade = "made";
    internal const string LegendFitted = "to be expected";
    internal const string LegendBand = "8 times in 10";
    internal const string LegendScrap = "limit";
    internal const string ReadingsHeading = "Readings";
    internal const string OutlineHeading = "Outline at its mark, true size at 100 %: as made dashed, now solid";
    internal const string OutlineInSvg = "Outline at its mark: as made dashed, now solid";
    internal const string RackSheetHeading = "Tool rack";
    internal const string HandOverHeading = "For the helper";

    internal const string DriveMarkExplained =
        "Drive mark: how far from the shank mark the drift goes in; a new mark stands beside how much deeper that is.";

    internal const string HandOverBasis =
        "Take the tools in this order. Stop at the number of heats, whatever the tool looks like: it is near its limit then. A tool that stands in more than one step has so many heats in the one or in the other, not in both.";

    /// <summary>When to stop before the count is reached. Common practice, no source.</summary>
    internal const string StopAtOnce =
        "Stop at once, whatever the count: at a crack, a bend, a chip, a loose handle, a mushroomed struck end, a drift that sticks.";

    internal static string HandOverPattern(string pattern) => $"Pattern {pattern}";

    internal static string NoStages(string pattern) =>
        $"pattern {pattern} has no stage that names a form of tool: nothing to hand over";
}
