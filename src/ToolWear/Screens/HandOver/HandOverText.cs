using System.Collections.Immutable;
using ToolWear.Results;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.HandOver;

/// <summary>The text of what a helper is handed: a few lines a step, the cautions below.</summary>
internal static class HandOverText
{
    private const int Indent = 4;

    /// <summary>Draws it.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="table">The rows, as the verb and the sheet have them.</param>
    /// <param name="cautions">What is said below.</param>
    /// <param name="pattern">The pattern.</param>
    /// <param name="first">The first line shown.</param>
    /// <returns>How many lines there are.</returns>
    public static int Draw(Picture body, Table table, ImmutableArray<string> cautions, string pattern, int first)
    {
        (int Column, string Text, Ink Ink)[] lines =
        [
            .. table.Rows.SelectMany(row => Step(table, row, Math.Max(20, body.Width - Indent))),
            .. table.Rows.IsEmpty ? [(0, Words.NoStages(pattern), Ink.Quiet)] : Array.Empty<(int, string, Ink)>(),
            (0, "", Ink.Plain),
            .. cautions
                .SelectMany(each => Picture.Wrap(each, Math.Max(20, body.Width)))
                .Select(line => (0, line, Ink.Warn)),
        ];
        for (int i = 0; i < body.Height && first + i < lines.Length; i++)
        {
            (int column, string text, Ink ink) = lines[first + i];
            body.Put(column, i, text, ink);
        }

        return lines.Length;
    }

    private static IEnumerable<(int Column, string Text, Ink Ink)> Step(
        Table table,
        ImmutableArray<Cell> row,
        int width
    )
    {
        string Of(string name) => row[table.IndexOf(name)].Shown;
        string what = row[table.IndexOfHeading("What")].Shown;
        string heading = Words.HandOverStep(Of("step"), Of("tool"), what, Of("stage"), Of("work"));
        foreach ((int i, string line) in Picture.Wrap(heading, width).Index())
        {
            yield return (i == 0 ? 0 : Indent, line, Ink.Strong);
        }

        if (row[table.IndexOf("tool")].Text is null)
        {
            yield break;
        }

        string[] rest =
        [
            Words.HandOverTake(Of("peg"), Of("steel"), Of("stop_after_heats"), Of("mark_mm")),
            Words.HandOverCool(Of("cooling")),
            Words.HandOverJudged(Of("verdict"), Of("looked_over_on"), Of("then_take")),
        ];
        foreach (string line in rest.SelectMany(each => Picture.Wrap(each, width)))
        {
            yield return (Indent, line, Ink.Plain);
        }
    }
}
