using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Results;

namespace ToolWear.Sheets;

/// <summary>The sheet that a helper is handed.</summary>
internal static class HandOverSheet
{
    /// <summary>Makes the sheet.</summary>
    /// <param name="all">The shop with its forecasts.</param>
    /// <param name="pattern">The pattern.</param>
    /// <param name="table">The rows, as the verb shows them.</param>
    /// <param name="on">The day it is of.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>The whole file.</returns>
    public static string Of(ShopForecasts all, string pattern, Table table, DateOnly on, LengthUnit units)
    {
        string below = $"{Words.HandOverPattern(pattern)}; {Words.SheetSizes(units)}";
        Sheet sheet = new(Words.HandOverHeading, all.Shop, on, below, isWide: true);
        sheet.Put(
            table,
            isForTheWall: true,
            big: "Tool",
            small: "Looked over",
            "Peg",
            "What",
            "Cooling",
            "Verdict",
            "Then take"
        );
        return sheet.Done([.. Cautions(all, pattern)]);
    }

    /// <summary>What is said below the tools, on the sheet and by the verb.</summary>
    /// <param name="all">The shop with its forecasts.</param>
    /// <param name="pattern">The pattern.</param>
    /// <returns>Sentences.</returns>
    public static ImmutableArray<string> Cautions(ShopForecasts all, string pattern)
    {
        ImmutableArray<Tool> tools = HandOverTable.Tools(all, pattern);
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
