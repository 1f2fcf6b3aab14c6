using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

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

    internal const string NoToolToTake = "none to take: look at the tool rack";
    internal const string StopNow = "0: near its limit";

    // common practice, no source: the caution at the hammer, tool by tool
    internal const string CoolInAirOnly = "air only, no water; warm it first";
    internal const string CoolUnknown = "air only, no water: steel unknown";

    internal static string HandOverPattern(string pattern) => $"Pattern {pattern}";

    internal static string NoStages(string pattern) =>
        $"pattern {pattern} has no stage that names a form of tool: nothing to hand over";

    internal static string CoolingOf(Tool tool, Cooling? cooling)
    {
        string usual = cooling is { } word ? Care.CoolingWords.Word(word) : "as usual";
        return IsAirHardening(tool.Steel) ? CoolInAirOnly
            : tool.Steel is null ? CoolUnknown
            : cooling is Cooling.DipWhenBlack or null ? $"{usual}; water only when black"
            : usual;
    }

    /// <summary>The size at which a tool is done, as a smith reads it off a rule and off a caliper.</summary>
    /// <param name="gauge">The gauge mark.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>For example "width under 12.80"; in inches "width under 1/2 (0.504)"; null where none is set.</returns>
    internal static string? ScrapAt(GaugeMark gauge, LengthUnit units)
    {
        if (gauge.ScrapSize is not { } scrap)
        {
            return null;
        }

        string size = SizeShown.Caliper(scrap, units);
        string fraction = units == LengthUnit.Inch ? $"{SizeShown.Eye(scrap, units)} ({size})" : size;
        return $"{gauge.Name} {(gauge.Wears == Wears.Smaller ? "under" : "over")} {fraction}";
    }

    internal static string DeeperMark(string mark, string deeper, double deeperMm) =>
        $"{mark} ({deeper} {(deeperMm < 0 ? "less" : "deeper")})";
}
