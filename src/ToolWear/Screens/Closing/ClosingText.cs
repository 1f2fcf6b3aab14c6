using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Hammer;

namespace ToolWear.Screens.Closing;

/// <summary>The end of a session: heads by stage, and heats that are estimated from them.</summary>
public static class ClosingText
{
    private const int HeadsEnd = 34;

    /// <summary>What is asked for: heads at each stage, or heads in all.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="board">What stood at the hammer.</param>
    /// <returns>The names of the rows.</returns>
    public static ImmutableArray<string> Rows(Shop shop, Board board)
    {
        ImmutableArray<PatternStage> stages = LastTime.Stages(shop, board.Pattern);
        return stages.IsEmpty ? [Words.HeadsFinished] : [.. stages.Select(stage => stage.Name)];
    }

    /// <summary>Reads a number of heads.</summary>
    /// <param name="text">What was typed; empty is not counted.</param>
    /// <returns>Heads from 0 to 10000, null for not counted.</returns>
    public static int? Heads(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int heads) && heads <= Shop.MostHeads
            ? heads
            : null;

    /// <summary>What makes the heads counted at each stage those that were typed at the end.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="session">The session.</param>
    /// <param name="board">What stood at the hammer.</param>
    /// <param name="heads">Heads by stage as typed; null where nobody counted.</param>
    /// <returns>Heads more, and heads counted too many crossed out, the last first.</returns>
    public static ImmutableArray<LedgerEntry> Counted(
        Shop shop,
        Session session,
        Board board,
        IReadOnlyList<int?> heads
    ) =>
        [
            .. LastTime
                .Stages(shop, board.Pattern)
                .Zip(heads)
                .DistinctBy(each => each.First.Name, StringComparer.Ordinal)
                .SelectMany(each => Corrected(shop, session, each.First.Name, each.Second ?? 0)),
        ];

    /// <summary>The heats to fill in where a stage had heads and none of its tools a tally.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="session">The session's name.</param>
    /// <param name="board">What stood at the hammer.</param>
    /// <param name="heads">Heads by stage.</param>
    /// <returns>One entry a tool, with the stage it is for.</returns>
    public static ImmutableArray<(int Stage, HeatsWorked Heats)> Estimated(
        Shop shop,
        string session,
        Board board,
        IReadOnlyList<int?> heads
    )
    {
        ImmutableArray<PatternStage> stages = LastTime.Stages(shop, board.Pattern);
        return
        [
            .. stages.SelectMany(
                (stage, i) => OfStage(shop, session, board, stage, heads[i]).Select(each => (i, each))
            ),
        ];
    }

    /// <summary>Draws the questions.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="session">The session's name.</param>
    /// <param name="board">What stood at the hammer.</param>
    /// <param name="typed">What is typed in each row.</param>
    /// <param name="at">The row that is asked for.</param>
    /// <param name="question">What is asked once all rows are answered; null before.</param>
    public static void Draw(
        Picture body,
        Shop shop,
        string session,
        Board board,
        ImmutableArray<string> typed,
        int at,
        string? question
    )
    {
        ImmutableArray<string> rows = Rows(shop, board);
        ILookup<int, HeatsWorked> estimated = Estimated(shop, session, board, [.. typed.Select(Heads)])
            .ToLookup(each => each.Stage, each => each.Heats);
        bool hasStages = !LastTime.Stages(shop, board.Pattern).IsEmpty;
        body.Put(0, 0, hasStages ? Words.ClosingQuestion : Words.ClosingQuestionWithoutPattern, Ink.Strong);
        for (int i = 0; i < rows.Length; i++)
        {
            int y = 2 + i;
            bool isAt = i == at && question is null;
            body.Put(0, y, isAt ? ">" : "");
            body.Put(2, y, rows[i], Ink.Plain, HeadsEnd - 10);
            body.PutRight(HeadsEnd, y, typed[i] + (isAt ? "_" : ""), Ink.Typed, 8);
            string filled = string.Join(
                ", ",
                estimated[i].Select(each => Words.WillEstimate(each.Tool.Text, each.Heats))
            );
            body.Put(HeadsEnd + 2, y, filled, Ink.Quiet);
        }

        int below = 3 + rows.Length;
        string legend = hasStages ? Words.ClosingLegend : Words.ClosingLegendWithoutPattern;
        foreach (string line in Picture.Wrap(question ?? legend, Math.Max(10, body.Width)))
        {
            body.Put(0, below++, line, question is null ? Ink.Quiet : Ink.Strong);
        }
    }

    private static IEnumerable<LedgerEntry> Corrected(Shop shop, Session session, string stage, int wanted)
    {
        int counted = session.HeadsByStage.GetValueOrDefault(stage);
        for (int i = shop.Ledger.Count - 1; counted > wanted; i--)
        {
            Entered entered = shop.Ledger[i];
            if (
                entered.What is HeadsDone done
                && (done.Session, done.Stage) == (session.Name, stage)
                && !shop.CrossedOut.ContainsKey(entered.Number)
            )
            {
                counted -= done.Heads;
                yield return new EntryCrossedOut(entered.Number, Words.CountedAtTheEnd);
            }
        }

        if (wanted > counted)
        {
            yield return new HeadsDone(session.Name, stage, wanted - counted);
        }
    }

    private static IEnumerable<HeatsWorked> OfStage(
        Shop shop,
        string session,
        Board board,
        PatternStage stage,
        int? heads
    )
    {
        if (heads is not > 0 || stage.HeatsAHead is not { } aHead)
        {
            yield break;
        }

        BoardTool[] tools =
        [
            .. board.Chosen.Where(each =>
                LastTime.Fits(stage, shop.Tools[each.Tool].Tool)
                && each.Work == (stage.Work ?? shop.Tools[each.Tool].Tool.MainWork)
            ),
        ];
        if (tools.Any(tool => HammerText.Tallied(shop, session, tool) > Heats.None))
        {
            yield break;
        }

        foreach (BoardTool tool in tools)
        {
            // twins shared the work evenly, as far as anybody knows; half heats are the finest that is kept
            int halves = Math.Clamp(
                (int)Math.Round(2 * aHead * heads.Value / tools.Length),
                1,
                Heats.MostAtOnce.Halves
            );
            yield return new HeatsWorked(
                session,
                shop.Tools[tool.Tool].Mark,
                tool.Work,
                Heats.OfHalves(halves),
                HeatsHow.Estimated
            );
        }
    }
}
