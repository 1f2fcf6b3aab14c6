using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Results.Tools;

namespace ToolWear.Sheets;

/// <summary>The sheet that a helper is handed.</summary>
internal static class HandOverSheet
{
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
        return sheet.Done([.. Cautions(steps)]);
    }

    /// <summary>What is said below the tools, on the sheet and by the verb.</summary>
    public static ImmutableArray<string> Cautions(ImmutableArray<HandOverStep> steps)
    {
        ImmutableArray<Tool> tools = HandOverTable.Tools(steps);
        bool isBlind = tools.Any(tool => tool.MainWork is Work.Slitting or Work.Opening);
        return
        [
            .. new[]
            {
                Words.HandOverBasis,
                Words.StopAtOnce,
                Words.DriveMarkExplained,
                Words.SteelsTonight(tools),
                Words.HammerCaution,
                Words.SteelCaution(tools),
                isBlind ? Words.BlindHoleCaution : "",
                Words.ForecastCaution,
            }
                .Select(Words.OneLine)
                .Where(each => each.Trim().Length > 0),
        ];
    }
}
