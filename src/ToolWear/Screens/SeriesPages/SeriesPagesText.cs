using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Eyes;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.SeriesPages;

/// <summary>The text of the series for an eye.</summary>
internal static class SeriesPagesText
{
    private const string NoSeries = "No series can be proposed for this eye: look at its figures.";
    private const string Proposed = "* is proposed and not saved yet: change what you like, then t saves it.";

    /// <summary>Draws it.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="plan">The series; null where there is none.</param>
    /// <param name="place">Where one is in the list.</param>
    /// <param name="units">The unit for people.</param>
    public static void Draw(Picture body, SeriesPlan? plan, ListPlace place, LengthUnit units)
    {
        if (plan is null)
        {
            body.Put(0, 0, NoSeries, Ink.Quiet);
            return;
        }

        Table table = SeriesTable.Columns.Over(plan.Tools, units);
        ListColumn proposed = new("", 1, row => plan.Tools[row].IsEntered ? "" : "*", _ => Ink.Warn);
        int y = body.PutList(
            0,
            1 + plan.Tools.Length,
            plan.Tools.Length,
            place,
            width => table.Columns(place, width - 2) is [var mark, .. var columns] ? [mark, proposed, .. columns] : []
        );
        foreach ((string sentence, Ink ink) in Below(plan, place.Chosen, units))
        {
            y = body.PutWrapped(y, sentence, ink);
        }
    }

    private static IEnumerable<(string Sentence, Ink Ink)> Below(SeriesPlan plan, int chosen, LengthUnit units)
    {
        yield return ("", Ink.Plain);
        if (plan.Tools.Any(tool => !tool.IsEntered))
        {
            yield return (Proposed, Ink.Warn);
        }

        yield return (EyeWords.StockSentence(plan.Tools[chosen], units), Ink.Plain);
        foreach ((string sentence, Ink ink) in QuoteText.SlitSentences(plan, units))
        {
            yield return (sentence, ink);
        }

        foreach (Core.Eyes.NestingStep step in plan.Nesting)
        {
            yield return (step.Sentence(units), step.Spoils ? Ink.Warn : Ink.Plain);
        }

        yield return (Cautions.EyeCaution, Ink.Quiet);
    }
}
