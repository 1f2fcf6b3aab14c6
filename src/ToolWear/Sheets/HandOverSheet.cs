using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Results.Tools;
using ToolWear.Wording;

namespace ToolWear.Sheets;

/// <summary>The sheet that a helper is handed.</summary>
internal static class HandOverSheet
{
    internal const string DriveMarkExplained =
        "Drive mark: how far from the shank mark the drift goes in; a new mark stands beside how much deeper that is.";
    private const string HandOverBasis =
        "By the records, in this order; what you see decides. Look each tool over before you use it, and leave it out if it is cracked, bent, chipped, loose or mushroomed. Stop at the number of heats at the latest: the tool is near its limit then, or is to be dressed. A tool that stands in more than one step has that many heats in one step or the other, not in both.";

    // When to stop before the count is reached. Common practice, no source.
    private const string StopAtOnce =
        "Stop at once, whatever the count: at a crack, a bend, a chip, a loose handle, a mushroomed struck end, a drift that sticks.";

    /// <summary>Makes the whole file.</summary>
    public static string Of(
        Shop shop,
        string pattern,
        ImmutableArray<HandOverStep> steps,
        DateOnly on,
        LengthUnit units
    )
    {
        string below = $"{Words.HandOverPattern(pattern)}; {Words.SheetSizes(units)}";
        Sheet sheet = new(Words.HandOverHeading, shop, on, below, isWide: true);
        sheet.Put(HandOverTable.Columns.Over(steps, units), isForTheWall: true);
        return sheet.Done([.. CautionsOf(steps)]);
    }

    /// <summary>What is said below the tools, on the sheet and by the verb.</summary>
    public static ImmutableArray<string> CautionsOf(ImmutableArray<HandOverStep> steps)
    {
        ImmutableArray<Tool> tools = HandOverTable.Tools(steps);
        bool isBlind = tools.Any(tool => tool.MainWork is Work.Slitting or Work.Opening);
        return
        [
            .. new[]
            {
                HandOverBasis,
                StopAtOnce,
                DriveMarkExplained,
                Cautions.SteelsTonight(tools),
                Cautions.HammerCaution,
                Cautions.SteelCaution(tools),
                isBlind ? Cautions.BlindHoleCaution : "",
                Cautions.ForecastCaution,
            }.Where(each => each.Trim().Length > 0),
        ];
    }
}
