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

    /// <summary>The stages whose tally says less than half of what their heads and the pattern say, or nothing at all for
    /// want of a tool.</summary>
    public ImmutableArray<ShortTally> Short { get; private init; } = [];

    /// <summary>The deed with the heats that are missing filled in as estimated.</summary>
    public ClosingSession Filled => this with { Entries = [.. Short.SelectMany(each => each.Missing), .. Entries] };

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
            Short = ShortOf(shop, open.Name, board, heads),
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

    /// <summary>The stages whose tally falls short.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="session">The session's name.</param>
    /// <param name="board">What stood at the hammer.</param>
    /// <param name="heads">Heads by stage.</param>
    /// <returns>In the order of the stages; those that share tools and work count together, by their first.</returns>
    public static ImmutableArray<ShortTally> ShortOf(
        Shop shop,
        string session,
        Board board,
        IReadOnlyList<int?> heads
    ) =>
        [
            .. LastTime
                .Stages(shop, board.Pattern)
                .Zip(heads)
                .Where(each => each.Second > 0 && each.First is { Form: not null, HeatsAHead: > 0 })
                .GroupBy(each => (each.First.Eye, each.First.Form, each.First.Place, each.First.Work))
                .Select(group =>
                {
                    BoardTool[] tools = ToolsOf(shop, board, group.First().First);
                    Heats tallied = tools.Aggregate(
                        Heats.None,
                        (sum, tool) => sum + Board.Tallied(shop, session, tool)
                    );
                    double says = group.Sum(each => each.First.HeatsAHead!.Value * each.Second!.Value);
                    return new ShortTally(
                        group.First().First.Name,
                        group.Sum(each => each.Second!.Value),
                        says,
                        tallied,
                        [.. Spread(shop, session, tools, says - tallied.Count)]
                    );
                })
                .Where(each =>
                    each.Missing.IsEmpty || (each.Tallied > Heats.None && each.Tallied.Count < each.Says / 2)
                ),
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
            return [];
        }

        BoardTool[] tools = ToolsOf(shop, board, stage);
        return tools.Any(tool => Board.Tallied(shop, session, tool) > Heats.None)
            ? []
            : Spread(shop, session, tools, aHead * heads.Value);
    }

    private static BoardTool[] ToolsOf(Shop shop, Board board, PatternStage stage) =>
        [
            .. board.Chosen.Where(each =>
                LastTime.Fits(stage, shop.Tools[each.Tool].Tool)
                && each.Work == (stage.Work ?? shop.Tools[each.Tool].Tool.MainWork)
            ),
        ];

    // twins shared the work evenly, as far as anybody knows; half heats are the finest that is kept
    private static IEnumerable<HeatsWorked> Spread(Shop shop, string session, BoardTool[] tools, double heats)
    {
        foreach (BoardTool tool in tools)
        {
            int halves = Math.Clamp((int)Math.Round(2 * heats / tools.Length), 1, Heats.MostAtOnce.Halves);
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

/// <summary>A stage whose tally says less than its heads.</summary>
/// <param name="Stage">Its name.</param>
/// <param name="Heads">The heads done at it.</param>
/// <param name="Says">The heats that heads and pattern say.</param>
/// <param name="Tallied">The heats tallied.</param>
/// <param name="Missing">The heats that would fill it up; none where no tool for it stood at the hammer.</param>
public sealed record ShortTally(
    string Stage,
    int Heads,
    double Says,
    Heats Tallied,
    ImmutableArray<HeatsWorked> Missing
);
