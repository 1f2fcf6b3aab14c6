using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using Row = ToolWear.Results.Column<ToolWear.Core.Shops.ToolPresence>;

namespace ToolWear.Results.Tools;

/// <summary>Where the tools are, and which were looked for and not seen.</summary>
internal static class StockTakeTable
{
    public static Columns<ToolPresence> Columns { get; } =
    [
        Row.Text("tool", "Tool", seen => seen.Tool.Mark.Text),
        Row.Text(null, "What", seen => ToolPlace.Of(seen.Tool.Tool).ToString()).Ranked(2),
        Row.Day("seen_on", "Last seen", seen => seen.SeenOn)
            .Means("the last day on which the ledger shows that the tool was there"),
        Row.Text("seen_as", "By", seen => ToolPresence.SightingWords.Word(seen.SeenAs))
            .Means("what shows it: stock-take, heats, reading, finding, rework, moved, entered")
            .Ranked(1),
        Row.Day("looked_for_on", "Looked for", seen => seen.LookedFor?.On)
            .Means("the day of the last stock-take that asked for the tool"),
        Row.YesNo("seen", "Seen then", seen => seen.LookedFor?.Seen)
            .Means("whether a tool was there at a stock-take: yes, no"),
        Row.YesNo("missing", null, seen => seen.IsMissing)
            .Means("yes where the tool was not seen then and nothing shows it since"),
        Row.Text("state", null, seen => ToolStates.Words.Word(seen.Tool.State)),
        Row.Text("who", null, seen => seen.Tool.Lent?.To),
        Row.Text("peg", null, seen => seen.Tool.Tool.Peg),
        Row.Text(null, "Where", seen => WhereItIs(seen.Tool)),
    ];

    private static string WhereItIs(ToolInShop tool) =>
        tool.Lent is { } lent ? $"lent to {lent.To}"
        : tool.State == ToolState.SetAside ? "set aside"
        : tool.Tool.Peg ?? "in service";
}
