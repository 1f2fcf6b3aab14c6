using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;
using ToolWear.Sheets;
using ToolWear.Wording;

namespace ToolWear.Screens.HandOver;

/// <summary>The text of what a helper is handed: a few lines a step, the cautions below.</summary>
internal static class HandOverText
{
    private const int Indent = 4;

    /// <summary>Draws it from some line on, and says how many lines there are.</summary>
    public static int Draw(
        Picture body,
        ImmutableArray<HandOverStep> steps,
        string pattern,
        int first,
        LengthUnit units
    )
    {
        (int Column, string Text, Ink Ink)[] lines =
        [
            .. steps.SelectMany(step => Lines(step, Math.Max(20, body.Width - Indent), units)),
            .. steps.IsEmpty ? [(0, Words.NoStages(pattern), Ink.Quiet)] : Array.Empty<(int, string, Ink)>(),
            (0, "", Ink.Plain),
            .. HandOverSheet
                .CautionsOf(steps)
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

    private static IEnumerable<(int Column, string Text, Ink Ink)> Lines(HandOverStep step, int width, LengthUnit units)
    {
        string Of(Column<HandOverStep> column) => column.Of(step, units).Shown;
        string work = Works.Words.Word(step.Work);
        string heading =
            $"{step.Number}  {Of(HandOverTable.Tool)}  {step.What}: {step.Stage.Name}{(step.Stage.Name == work ? "" : $", {work}")}";
        foreach ((int i, string line) in Picture.Wrap(heading, width).Index())
        {
            yield return (i == 0 ? 0 : Indent, line, Ink.Strong);
        }

        if (step.Tool is not { } tool)
        {
            yield break;
        }

        string mark = Of(HandOverTable.Mark);
        string then = Of(HandOverTable.ThenTake);
        string dress = step.Dressing is { } dressing ? $"; {FindingWords.DressAfter(dressing)}" : "";
        string[] rest =
        [
            $"from {tool.Peg ?? "no peg noted"}, {tool.Steel ?? Cautions.UnknownSteel}; stop at heats: {Of(HandOverTable.Stop)}{dress}{(mark == "-" ? "" : $"; drive to: {mark}")}",
            $"cooling: {Of(HandOverTable.Cooling)}",
            $"{Of(HandOverTable.Verdict)}; looked over: {Of(HandOverTable.LookedOver)}{(then == "-" ? "" : $"; then use: {then}")}",
        ];
        foreach (string line in rest.SelectMany(each => Picture.Wrap(each, width)))
        {
            yield return (Indent, line, Ink.Plain);
        }
    }
}
