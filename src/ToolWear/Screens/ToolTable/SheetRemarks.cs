using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Core.Wear;

namespace ToolWear.Screens.ToolTable;

/// <summary>What the shop says to a tool that is being entered: a scrap size, and how a drift nests in its series.</summary>
internal static class SheetRemarks
{
    /// <summary>The scrap size that is proposed.</summary>
    /// <param name="sheet">The answers so far.</param>
    /// <param name="sitting">The sitting.</param>
    /// <returns>The proposal; null where nothing speaks for a size.</returns>
    public static ScrapProposal? Scrap(ToolSheet sheet, Sitting sitting) =>
        ToolForms.TryFind(sheet[Asked.Form], out ToolForm form, out string _)
            ? ScrapProposal.Of(
                sitting.Shop,
                sitting.Forecasts?.Eyes,
                sheet[Asked.Eye].Trim() is { Length: > 0 } eye ? eye : null,
                PlaceOf(sheet),
                form,
                form.UsualGaugeMarks[0].Measures
            )
            : null;

    /// <summary>What is to be said.</summary>
    /// <param name="sheet">The answers so far.</param>
    /// <param name="sitting">The sitting.</param>
    /// <returns>Sentences.</returns>
    public static IEnumerable<string> Of(ToolSheet sheet, Sitting sitting)
    {
        if (Scrap(sheet, sitting) is { } scrap)
        {
            yield return ScrapComesFrom(scrap);
        }

        if (
            sheet[Asked.Form] == ToolForms.Drift
            && SizeText.TryParse(sheet[Asked.Size], sitting.Units, out TypedSize size, out string _)
        )
        {
            string eye = sheet[Asked.Eye].Trim();
            foreach (NestingStep step in NestingAround.Of(sitting.Shop, eye, PlaceOf(sheet), size.Length))
            {
                yield return step.Sentence(sitting.Units);
            }
        }
    }

    private static Place PlaceOf(ToolSheet sheet) =>
        Places.Words.TryParse(sheet[Asked.Place], out Place place, out string _) ? place : Place.None;

    private static string ScrapComesFrom(ScrapProposal scrap) =>
        scrap.Like is { } like
            ? $"The scrap size proposed is that of {like.Mark}."
            : "The scrap size proposed follows from the eye's tolerance.";
}
