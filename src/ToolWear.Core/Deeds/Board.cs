using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Deeds;

/// <summary>A tool at the hammer and the work that its heats are tallied as.</summary>
/// <param name="Tool">The tool's unchanging number.</param>
/// <param name="Work">The work.</param>
public readonly record struct BoardTool(long Tool, Work Work);

/// <summary>What a heat is counted for: one tool, or twins that share it.</summary>
/// <param name="Tools">The tools, one or two.</param>
public sealed record BoardRow(ImmutableArray<BoardTool> Tools)
{
    /// <summary>Whether the heat is shared: half to each.</summary>
    public bool IsShared => Tools.Length > 1;

    /// <summary>What each of the tools gets.</summary>
    public Heats Each => IsShared ? Heats.Half : Heats.Of(1);
}

/// <summary>What stands at the hammer tonight.</summary>
/// <param name="Pattern">The pattern's name, null for none.</param>
/// <param name="Chosen">The tools, in the order in which they were chosen.</param>
/// <param name="Together">Those of them that work together in one heat.</param>
public sealed record Board(string? Pattern, ImmutableArray<BoardTool> Chosen, ImmutableArray<BoardTool> Together)
{
    /// <summary>How many rows can be counted for at once.</summary>
    public const int MostRows = 9;

    /// <summary>Nothing chosen.</summary>
    public static Board Empty { get; } = new(null, [], []);

    /// <summary>The rows: the tools, then pairs of twins.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>At most nine.</returns>
    public ImmutableArray<BoardRow> Rows(Shop shop) =>
        [
            .. Chosen
                .Select(each => new BoardRow([each]))
                .Concat(
                    from i in Enumerable.Range(0, Chosen.Length)
                    from j in Enumerable.Range(i + 1, Chosen.Length - i - 1)
                    where AreTwins(shop, Chosen[i], Chosen[j])
                    select new BoardRow([Chosen[i], Chosen[j]])
                )
                .Take(MostRows),
        ];

    /// <summary>The tools as the opening of a session keeps them.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>Each with its mark, in the order of the keys.</returns>
    public ImmutableArray<ToolAtHammer> AtHammer(Shop shop) =>
        [.. Chosen.Select(each => new ToolAtHammer(shop.Tools[each.Tool].Mark, each.Work, Together.Contains(each)))];

    /// <summary>The board with a tool more, or without it.</summary>
    /// <param name="tool">The tool.</param>
    /// <returns>The board.</returns>
    public Board Toggled(BoardTool tool) =>
        Chosen.Contains(tool)
            ? this with
            {
                Chosen = Chosen.Remove(tool),
                Together = Together.Remove(tool),
            }
            : this with
            {
                Chosen = Chosen.Add(tool),
            };

    /// <summary>The board with a tool put into the set that works together, or taken out of it.</summary>
    /// <param name="tool">The tool; it is chosen where it was not.</param>
    /// <returns>The board.</returns>
    public Board ToggledTogether(BoardTool tool) =>
        (Chosen.Contains(tool) ? this : Toggled(tool)) with
        {
            Together = Together.Contains(tool) ? Together.Remove(tool) : Together.Add(tool),
        };

    /// <summary>The board without some tools.</summary>
    /// <param name="isGone">Whether a tool, by its number, is left out.</param>
    /// <returns>The board.</returns>
    public Board Without(Func<long, bool> isGone) =>
        this with
        {
            Chosen = Chosen.RemoveAll(each => isGone(each.Tool)),
            Together = Together.RemoveAll(each => isGone(each.Tool)),
        };

    /// <summary>The entries of one heat for a row.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="session">The session's name.</param>
    /// <param name="tools">The tools.</param>
    /// <param name="each">Heats for each.</param>
    /// <returns>One entry a tool.</returns>
    public static ImmutableArray<LedgerEntry> Heat(
        Shop shop,
        string session,
        ImmutableArray<BoardTool> tools,
        Heats each
    ) =>
        [
            .. tools.Select(tool => new HeatsWorked(
                session,
                shop.Tools[tool.Tool].Mark,
                tool.Work,
                each,
                HeatsHow.Counted
            )),
        ];

    /// <summary>Heats of a tool and work in a session, as worked.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="session">The session's name.</param>
    /// <param name="tool">The tool and work.</param>
    /// <returns>The sum.</returns>
    public static Heats Tallied(Shop shop, string session, BoardTool tool) =>
        shop.Tools[tool.Tool]
            .Events.Select(entered => entered.What)
            .OfType<HeatsWorked>()
            .Where(heats => heats.Session == session && heats.Work == tool.Work)
            .Aggregate(Heats.None, (sum, heats) => sum + heats.Heats);

    private static bool AreTwins(Shop shop, BoardTool one, BoardTool other)
    {
        Tool a = shop.Tools[one.Tool].Tool;
        Tool b = shop.Tools[other.Tool].Tool;
        return one.Work == other.Work && (a.Form, a.Place, a.Eye) == (b.Form, b.Place, b.Eye);
    }
}
