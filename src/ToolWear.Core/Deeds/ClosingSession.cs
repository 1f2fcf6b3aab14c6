using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Deeds;

/// <summary>Closing the open session: heads finished, heats that nobody counted, orders that come nearer.</summary>
/// <param name="Entries">What is recorded, all of it or nothing; no order among it.</param>
/// <param name="Orders">The orders that the heads could be counted off, before and after.</param>
public sealed record ClosingSession(
    ImmutableArray<LedgerEntry> Entries,
    ImmutableArray<(OrderDescribed Before, OrderDescribed After)> Orders
)
{
    // stands in the ledger as the reason of a crossing out
    private const string CountedAtTheEnd = "counted again at the end";

    /// <summary>The deed with the orders counted down.</summary>
    public ImmutableArray<LedgerEntry> CountingOff => [.. Entries, .. Orders.Select(order => order.After)];

    /// <summary>Closes a session of which only the heads in all are said.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="open">The open session.</param>
    /// <param name="heads">Heads finished; null where nobody counted.</param>
    /// <returns>The deed.</returns>
    public static ClosingSession Of(Shop shop, Session open, int? heads) =>
        new(
            [new SessionClosed(open.Name, heads)],
            [.. OrderCountOff.Of(shop, open.Opened.Pattern, heads).Select(after => (shop.Orders[after.Order], after))]
        );

    /// <summary>Closes a session of which the heads at each stage are said.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="open">The open session.</param>
    /// <param name="board">What stood at the hammer.</param>
    /// <param name="heads">Heads by stage of the board's pattern, or the heads in all where it has none; null where
    /// nobody counted.</param>
    /// <returns>The deed; the last stage that was counted is as far as heads came.</returns>
    public static ClosingSession Of(Shop shop, Session open, Board board, IReadOnlyList<int?> heads)
    {
        ClosingSession closing = Of(shop, open, heads.LastOrDefault(each => each is not null));
        return closing with
        {
            Entries =
            [
                .. LastTime
                    .Stages(shop, board.Pattern)
                    .Zip(heads)
                    .DistinctBy(each => each.First.Name, StringComparer.Ordinal)
                    .SelectMany(each => Corrected(shop, open, each.First.Name, each.Second ?? 0)),
                .. Estimated(shop, open.Name, board, heads).Select(each => each.Heats),
                .. closing.Entries,
            ],
        };
    }

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
    ) =>
        [
            .. LastTime
                .Stages(shop, board.Pattern)
                .SelectMany((stage, i) => OfStage(shop, session, board, stage, heads[i]).Select(each => (i, each))),
        ];

    /// <summary>The tools that worked in a session: to look over, and to measure once cold.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="session">The session's name.</param>
    /// <returns>Their marks.</returns>
    public static ImmutableArray<string> Used(Shop shop, string session) =>
        [.. shop.Tools.Values.Where(tool => tool.WorkedIn(session)).Select(tool => tool.Mark.Text)];

    /// <summary>What makes the heads counted at a stage those that were said at the end: heads more, or heads counted too
    /// many crossed out, the last first.</summary>
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
                yield return new EntryCrossedOut(entered.Number, CountedAtTheEnd);
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
        if (tools.Any(tool => Board.Tallied(shop, session, tool) > Heats.None))
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
