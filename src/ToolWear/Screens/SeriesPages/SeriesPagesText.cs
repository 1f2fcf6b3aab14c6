using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Pens;
using ToolWear.Results.Eyes;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.SeriesPages;

/// <summary>The text of the series for an eye.</summary>
public static class SeriesPagesText
{
    /// <summary>Draws it.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="plan">The series; null where there is none.</param>
    /// <param name="chosen">The chosen row, from 0.</param>
    /// <param name="units">The unit for people.</param>
    public static void Draw(Picture body, SeriesPlan? plan, int chosen, LengthUnit units)
    {
        if (plan is null)
        {
            body.Put(0, 0, Words.NoSeries, Ink.Quiet);
            return;
        }

        string[] lines = SeriesTable.Columns.Over(plan.Tools, units).ToText().TrimEnd('\n').Split('\n');
        body.Put(3, 0, lines[0], Ink.Strong);
        int y = 1;
        for (int i = 0; i < plan.Tools.Length; i++, y++)
        {
            body.Put(0, y, i == chosen ? ">" : "", Ink.Strong);
            body.Put(1, y, plan.Tools[i].IsEntered ? "" : "*", Ink.Warn);
            body.Put(3, y, lines[1 + i]);
            if (i == chosen)
            {
                body.Tint(y, Ink.Chosen);
            }
        }

        foreach ((string sentence, Ink ink) in Below(plan, chosen, units))
        {
            foreach (string line in Picture.Wrap(sentence, Math.Max(20, body.Width)))
            {
                body.Put(0, y++, line, ink);
            }
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
