using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Testing.NaiveShop;

/// <summary>Tells the present of a shop line by line: tools with state, history and weighted heats, sessions, the rest.</summary>
public static class ShopTold
{
    /// <summary>The present of the real shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>Lines.</returns>
    public static string Of(Shop shop)
    {
        IEnumerable<string> tools = shop.Tools.Values.Select(tool =>
            Tool(tool.Id, tool.Mark.Text, tool.State, tool.StateOn, IsStartedAnew(tool), History(shop, tool))
        );
        IEnumerable<string> sessions = shop.Sessions.Values.Select(each =>
            Session(
                each.Opened,
                each.IsOpen,
                each.Heads,
                string.Join(", ", each.HeadsByStage.Select(stage => $"{stage.Key} {stage.Value}"))
            )
        );
        IEnumerable<string> described =
        [
            .. All(shop.Eyes.Values),
            .. All(shop.Handles.Values),
            .. All(shop.Patterns.Values),
            .. All(shop.Bars.Values),
            .. All(shop.Orders.Values),
            .. All(shop.Series.Values),
            .. shop.Settings.Said.Select(said => said.Key + "=" + said.Value),
        ];
        return string.Join('\n', [.. tools, .. sessions, .. described, .. shop.EyesMeasured.Select(Told.Of)]);
    }

    internal static string Tool(
        long id,
        string mark,
        ToolState state,
        DateOnly on,
        bool startedAnew,
        IEnumerable<string> history
    ) => $"#{id} {mark} {state} {on:yyyy-MM-dd} {(startedAnew ? "anew" : "")}: {string.Join(", ", history)}";

    internal static string Session(SessionOpened opened, bool isOpen, int? heads, string byStage) =>
        $"{Told.Of(opened)} {(isOpen ? "open" : "closed")} {heads} ({byStage})";

    internal static string Event(Entered entered, double? weighted) =>
        $"{entered.Number} {Told.Of(entered.What)}"
        + (weighted is { } heats ? " " + heats.ToString("R", CultureInfo.InvariantCulture) : "");

    private static bool IsStartedAnew(ToolInShop tool) =>
        tool.Events.Exists(each => each.What is ToolStartedHere) && tool.Tool.Start == ToolStart.Unknown;

    private static IEnumerable<string> History(Shop shop, ToolInShop tool) =>
        shop.HistoryOf(tool)
            .Select(each =>
                Event(each.Entered, each.Entered.What is HeatsWorked heats ? shop.Weighted(tool.Tool, heats) : null)
            );

    private static IEnumerable<string> All<T>(IEnumerable<T> described) =>
        described.Select(each => Told.Of(each)).Order(StringComparer.Ordinal);
}
