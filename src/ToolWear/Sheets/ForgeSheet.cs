using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Results;

namespace ToolWear.Sheets;

/// <summary>The forge list for the shop's wall.</summary>
internal static class ForgeSheet
{
    /// <summary>Makes the sheet.</summary>
    /// <param name="list">The list.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="on">The day it is of.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>The whole file.</returns>
    public static string Of(ForgeList list, Shop shop, DateOnly on, LengthUnit units)
    {
        Sheet sheet = new(Words.ForgeHeading, shop, on, Words.SheetSizes(units));
        sheet.Lines(WallText.Of(list, units, ""));
        return sheet.Done(Words.PlanBasis, Words.StruckEndCaution, Words.GrindingCaution, Words.ForecastCaution);
    }
}
