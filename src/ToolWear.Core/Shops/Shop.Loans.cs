using ToolWear.Core.Ledger;

namespace ToolWear.Core.Shops;

/// <content>Tools are lent out and come back, and are looked for at a stock-take.</content>
public sealed partial record Shop
{
    private Step Lend(Entered entered, ToolLent e) =>
        string.IsNullOrWhiteSpace(e.To)
            ? $"{e.Tool}: who has it is wanted"
            : ChangeState(entered, e.Tool, e.On, ToolState.InService, ToolState.SetAside, "lent");

    private Step TakeBack(Entered entered, ToolTakenBack e) =>
        TryFind(e.Tool, out ToolInShop? tool) && tool.State != ToolState.Scrapped && tool.Lent is null
            ? $"{e.Tool} is not lent out"
            : ChangeState(entered, e.Tool, e.On, ToolState.SetAside, ToolState.InService, "taken back");

    private Step LookFor(Entered entered, ToolLookedFor e) =>
        Refused(entered, e.Tool, e.On, out ToolInShop tool) is { } refusal ? refusal : With(tool.With(entered));
}
