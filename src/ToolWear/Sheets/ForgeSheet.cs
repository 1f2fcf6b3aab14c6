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
    /// <param name="notes">What has to be said of this list.</param>
    /// <returns>The whole file.</returns>
    public static string Of(ForgeList list, Shop shop, DateOnly on, LengthUnit units, IEnumerable<string> notes)
    {
        Sheet sheet = new(Words.ForgeHeading, shop, on, Words.SheetSizes(units), isWide: true);
        if (list.Batches.IsEmpty)
        {
            sheet.Say(Words.NothingToForge);
        }
        else
        {
            sheet.Put(ForgeTable.Of(list, units), isForTheWall: true, big: "What", null, "Stock");
            sheet.Head(Words.WhyHeading);
            foreach (ForgeBatch batch in list.Batches)
            {
                sheet.Say(Words.BatchReason(batch));
            }

            sheet.Head(Words.CutsHeading);
            foreach (BarUse bar in list.Cuts.Bars)
            {
                sheet.Say(Words.CutOf(bar));
            }

            foreach (BarsToBuy buy in list.Cuts.Buy)
            {
                sheet.Say(Words.ToBuy(buy));
            }
        }

        foreach (string note in notes)
        {
            sheet.Say(note);
        }

        return sheet.Done(
            Words.PlanBasis,
            Words.CracksNotPlanned,
            Words.StruckEndCaution,
            Words.GrindingCaution,
            Words.ForecastCaution
        );
    }
}
