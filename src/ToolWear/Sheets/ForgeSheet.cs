using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Pens;
using ToolWear.Results.Plans;
using ToolWear.Wording;

namespace ToolWear.Sheets;

/// <summary>The forge list for the shop's wall; its sentences are those of the text.</summary>
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
        Sheet sheet = new(PlanWords.WallHeading(list), shop, on, PlanWords.PlannedSure(list.Sure));
        if (list.Batches.IsEmpty)
        {
            sheet.Say(PlanWords.NothingToForge);
        }

        foreach (ForgeBatch batch in list.Batches)
        {
            sheet.ToDo(PlanWords.WallSentence(batch, units), PlanWords.WallDetails(batch, units));
        }

        Part(sheet, PlanWords.CutListHeading, list.Cuts.Bars.Select(bar => PlanWords.CutOf(bar, units)));
        Part(sheet, PlanWords.BuyHeading, list.Cuts.Buy.Select(buy => PlanWords.BarsOf(buy, units)));
        Part(sheet, PlanWords.MindHeading, WallText.Mind(list, units));
        return sheet.Done(Cautions.ForecastCaution);
    }

    private static void Part(Sheet sheet, string heading, IEnumerable<string> sentences)
    {
        string[] all = [.. sentences];
        if (all.Length > 0)
        {
            sheet.Head(heading);
            Array.ForEach(all, sheet.Say);
        }
    }
}
