using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Plans;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Patterns;

/// <summary>The text of the patterns: a row a stage.</summary>
public static class PatternsText
{
    private const int Stage = 17;
    private const int Tool = 33;
    private const int Work = 52;
    private const int GuessEnd = 68;
    private const int LearnedEnd = 79;
    private const int Below = 3;

    /// <summary>How many stages fit.</summary>
    /// <param name="room">Rows of the body.</param>
    /// <returns>Rows, at least one.</returns>
    public static int RowsFor(int room) => Math.Max(1, room - 1 - Below);

    /// <summary>Draws the stages.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="stages">The stages of all patterns.</param>
    /// <param name="place">Where one is in the list.</param>
    public static void Draw(Picture body, ImmutableArray<HeatsAHead> stages, ListPlace place)
    {
        if (stages.IsEmpty)
        {
            body.Put(0, 0, Words.NoPatterns, Ink.Quiet);
            return;
        }

        int rows = RowsFor(body.Height);
        int first = place.Show(stages.Length, rows);
        body.Put(2, 0, "Pattern", Ink.Strong);
        body.Put(Stage, 0, "Stage", Ink.Strong);
        body.Put(Tool, 0, "Tool", Ink.Strong);
        body.Put(Work, 0, "Work", Ink.Strong);
        body.PutRight(GuessEnd, 0, "Guess", Ink.Strong);
        body.PutRight(LearnedEnd, 0, "Records", Ink.Strong);
        for (int i = first; i < Math.Min(stages.Length, first + rows); i++)
        {
            bool isSame = i > first && stages[i - 1].Pattern == stages[i].Pattern;
            DrawStage(body, 1 + i - first, stages[i], isSame, i == place.Chosen);
        }

        int y = 2 + Math.Min(rows, stages.Length);
        foreach (string line in Picture.Wrap(Words.PatternsLegend, Math.Max(20, body.Width)))
        {
            body.Put(0, y++, line, Ink.Quiet);
        }
    }

    private static void DrawStage(Picture body, int y, HeatsAHead stage, bool isSame, bool isChosen)
    {
        Cell Of(Column<HeatsAHead> column) => column.Of(stage, LengthUnit.Mm);
        Cell learned = Of(PatternTable.Learned);
        body.Put(0, y, isChosen ? ">" : "", Ink.Strong);
        body.Put(2, y, isSame ? "" : stage.Pattern, Ink.Strong, Stage - 3);
        body.Put(Stage, y, stage.Stage.Name, Ink.Plain, Tool - Stage - 1);
        string tool = Shortened.In(Of(PatternTable.Tool).Shown, Work - Tool - 1);
        body.Put(Tool, y, tool);
        body.Put(Work, y, Of(PatternTable.Work).Shown, Ink.Plain, GuessEnd - Work - 6);
        body.PutRight(GuessEnd, y, Of(PatternTable.FirstGuess).Shown, Ink.Plain, 6);
        body.PutRight(
            LearnedEnd,
            y,
            Words.LearnedOf(learned, Of(PatternTable.Sessions)),
            learned.IsNumber ? Ink.Strong : Ink.Plain,
            10
        );
        if (isChosen)
        {
            body.Tint(y, Ink.Chosen);
        }
    }
}
