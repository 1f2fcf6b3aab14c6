using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Plans;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.Patterns;

/// <summary>The text of the patterns: a row a stage.</summary>
internal static class PatternsText
{
    private const string NoPatterns = "No pattern yet. Press a to add one, stage by stage.";

    /// <summary>Draws the stages.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="stages">The stages of all patterns.</param>
    /// <param name="place">Where one is in the list.</param>
    public static void Draw(Picture body, ImmutableArray<HeatsAHead> stages, ListPlace place)
    {
        if (stages.IsEmpty)
        {
            body.Put(0, 0, NoPatterns, Ink.Quiet);
            return;
        }

        string[] below = [.. Picture.Wrap(Words.PatternsLegend, Math.Max(20, body.Width))];
        int height = body.Height - 1 - below.Length;
        int y = body.PutList(0, height, stages.Length, place, width => Columns(stages, place, width));
        foreach (string line in below)
        {
            body.Put(0, ++y, line, Ink.Quiet);
        }
    }

    private static IReadOnlyList<ListColumn> Columns(ImmutableArray<HeatsAHead> stages, ListPlace place, int width)
    {
        Cell Cell(Column<HeatsAHead> column, int row) => column.Of(stages[row], LengthUnit.Mm);
        ListColumn Of(string heading, int columns, Column<HeatsAHead> column) =>
            new(heading, columns, row => Shortened.In(Cell(column, row).Shown, columns));
        return
        [
            ListColumn.Mark(place),
            new("Pattern", 14, row => stages[row].Pattern, _ => Ink.Strong),
            new("Stage", 15, row => stages[row].Stage.Name),
            Of("Tool", 18, PatternTable.Tool),
            Of("Work", 10, PatternTable.Work),
            Of("Guess", 5, PatternTable.FirstGuess) with
            {
                IsRight = true,
            },
            new(
                "Records",
                Math.Clamp(width - 69, 0, 10),
                row => LearnedOf(Cell(PatternTable.Learned, row), Cell(PatternTable.Sessions, row)),
                row => Cell(PatternTable.Learned, row).IsNumber ? Ink.Strong : Ink.Plain,
                IsRight: true
            ),
        ];
    }

    private static string LearnedOf(Cell heats, Cell sessions) =>
        heats.IsNumber ? $"{heats.Shown} by {sessions.Shown}" : "-";
}
