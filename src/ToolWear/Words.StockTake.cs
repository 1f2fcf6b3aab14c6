using ToolWear.Core.Shops;

namespace ToolWear;

/// <content>What is said at a stock-take.</content>
public static partial class Words
{
    internal const string StockTakeHeading = "Stock-take";
    internal const string MissingHeading = "Stock-take: not seen";
    internal const string NothingMissing = "No tool that was looked for is missing.";
    internal const string StockTakeLegend =
        "Last seen: the last day on which the ledger shows that it was there, and what shows it.";
    internal const string AboutStockTake =
        "Every tool that is not scrapped, with the last day on which the ledger shows that it was there: a stock-take, heats, a reading, a finding. s for seen, n for not seen; at the end stands what was not seen. A tool that does not turn up is scrapped as lost.";
    internal const string AllAgain = "all tools";
    internal const string KeepIt = "keep it";

    internal static string StockTaken(int seen, int missing) =>
        $"All tools were looked for: {seen} seen, {missing} not seen.";

    internal static string SeenNow(string mark, bool seen) => seen ? $"{mark}: seen." : $"{mark}: not seen.";

    internal static string LostAsked(string mark) => $"Scrap {mark} as lost?";

    internal static string WhereItIs(ToolInShop tool) =>
        tool.Lent is { } lent ? $"lent to {lent.To}"
        : tool.State == ToolState.SetAside ? "set aside"
        : tool.Tool.Peg ?? "in service";
}
