using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.Closing;

/// <summary>The end of a session: heads by stage, and heats that are estimated from them.</summary>
internal static class ClosingText
{
    private const string HeadsFinished = "heads finished";
    private const string ClosingQuestion = "How many heads went through each stage tonight?";
    private const string ClosingQuestionWithoutPattern = "How many heads were finished tonight?";
    private const string ClosingLegendWithoutPattern = "Empty: nobody counted.";
    private const string ClosingLegend =
        "Empty: nobody counted. Where a stage has heads but none of its tools has a tally, its heats are estimated from the pattern and marked as estimated.";

    private const int HeadsEnd = 34;

    /// <summary>What is asked for: heads at each stage, or heads in all.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="board">What stood at the hammer.</param>
    /// <returns>The names of the rows.</returns>
    public static ImmutableArray<string> Rows(Shop shop, Board board)
    {
        ImmutableArray<PatternStage> stages = LastTime.Stages(shop, board.Pattern);
        return stages.IsEmpty ? [HeadsFinished] : [.. stages.Select(stage => stage.Name)];
    }

    /// <summary>Reads a number of heads.</summary>
    /// <param name="text">What was typed; empty is not counted.</param>
    /// <returns>Heads from 0 to 10000, null for not counted.</returns>
    public static int? Heads(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int heads) && heads <= Shop.MostHeads
            ? heads
            : null;

    /// <summary>Draws the questions.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="session">The session's name.</param>
    /// <param name="board">What stood at the hammer.</param>
    /// <param name="typed">What is typed in each row.</param>
    /// <param name="at">The row that is asked for.</param>
    /// <param name="question">What is asked once all rows are answered; null before.</param>
    /// <param name="misused">The tools that worked though they should not have, a sentence each.</param>
    public static void Draw(
        Picture body,
        Shop shop,
        string session,
        Board board,
        ImmutableArray<string> typed,
        int at,
        string? question,
        ImmutableArray<string> misused
    )
    {
        ImmutableArray<string> rows = Rows(shop, board);
        ILookup<int, HeatsWorked> estimated = ClosingSession
            .Estimated(shop, session, board, [.. typed.Select(Heads)])
            .ToLookup(each => each.Stage, each => each.Heats);
        bool hasStages = !LastTime.Stages(shop, board.Pattern).IsEmpty;
        body.Put(0, 0, hasStages ? ClosingQuestion : ClosingQuestionWithoutPattern, Ink.Strong);
        for (int i = 0; i < rows.Length; i++)
        {
            int y = 2 + i;
            bool isAt = i == at && question is null;
            body.Put(0, y, isAt ? ">" : "");
            body.Put(2, y, rows[i], Ink.Plain, HeadsEnd - 10);
            body.PutRight(HeadsEnd, y, typed[i] + (isAt ? "_" : ""), Ink.Typed, 8);
            string filled = string.Join(", ", estimated[i].Select(each => WillEstimate(each.Tool.Text, each.Heats)));
            body.Put(HeadsEnd + 2, y, filled, Ink.Quiet);
        }

        int below = 3 + rows.Length;
        string legend = hasStages ? ClosingLegend : ClosingLegendWithoutPattern;
        foreach (string line in Picture.Wrap(question ?? legend, Math.Max(10, body.Width)))
        {
            body.Put(0, below++, line, question is null ? Ink.Quiet : Ink.Strong);
        }

        foreach (string line in misused.SelectMany(each => Picture.Wrap(each, Math.Max(10, body.Width))))
        {
            body.Put(0, below++, line, Ink.Warn);
        }
    }

    private static string WillEstimate(string mark, Heats heats) => $"{mark} {Words.HeatsOf(heats)}, estimated";
}
