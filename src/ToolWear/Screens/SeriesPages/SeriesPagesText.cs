using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Results;
using ToolWear.Results.Eyes;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.SeriesPages;

/// <summary>The text of the series for an eye.</summary>
internal static class SeriesPagesText
{
    /// <summary>Draws it.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="plan">The series; null where there is none.</param>
    /// <param name="place">Where one is in the list.</param>
    /// <param name="units">The unit for people.</param>
    public static void Draw(Picture body, SeriesPlan? plan, ListPlace place, LengthUnit units)
    {
        if (plan is null)
        {
            body.Put(0, 0, Words.NoSeries, Ink.Quiet);
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
            yield return (Words.Proposed, Ink.Warn);
        }

        yield return (Words.StockSentence(plan.Tools[chosen], units), Ink.Plain);
        foreach ((string sentence, Ink ink) in Words.SlitSentences(plan, units))
        {
            yield return (sentence, ink);
        }

        foreach (Core.Eyes.NestingStep step in plan.Nesting)
        {
            yield return (step.Sentence(units), step.Spoils ? Ink.Warn : Ink.Plain);
        }

        yield return (Words.EyeCaution, Ink.Quiet);
    }
}
