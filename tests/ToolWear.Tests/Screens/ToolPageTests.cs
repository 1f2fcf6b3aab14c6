using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Keys;
using ToolWear.Screens.ToolPage;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Every deed on one tool, by keys from rack, card and stock-take.</summary>
public sealed class ToolPageTests : IDisposable
{
    private readonly TestSite site = new();
    private readonly BareScreens screens;

    public ToolPageTests()
    {
        site.Demo();
        screens = new BareScreens(site);
        screens.Wait();
    }

    [Fact]
    public void What_a_finding_asks_for_stands_first_and_ends_it()
    {
        ToolInShop tool = Find(each =>
            LookedOver.Of(Shop, each).Forbids is { Next: { Shortens: false, By: [Rework.Dressed] } }
        );
        GoTo(tool.Mark.Text);
        Assert.Contains("> dress ", screens.Text, StringComparison.Ordinal);
        // on the gauge mark stands the cursor: sizes, hours, cost and day are there to be typed
        screens.Press("Enter");
        Answer();
        ToolReworked done = Assert.IsType<ToolReworked>(Shop.Ledger[^1].What);
        Assert.Equal((tool.Mark, Rework.Dressed), (done.Tool, done.What));
        Assert.Null(LookedOver.Of(Shop, Shop.Tools[tool.Id]).Forbids);
        Assert.Equal(ScreenName.ToolPage, screens.Current.Name);
        screens.Press("Backspace");
        Assert.NotNull(LookedOver.Of(Shop, Shop.Tools[tool.Id]).Forbids);
    }

    [Fact]
    public void A_cracked_tool_past_its_limit_is_offered_the_scrap_and_nothing_that_its_wear_asks_for()
    {
        GoTo("A2ND");
        Assert.Contains("> re-forge ", screens.Text, StringComparison.Ordinal);
        Choose("look over");
        screens.Type("crack");
        screens.Press("Enter");
        screens.Type("w");
        screens.Press("Enter", "Enter", "Enter");
        Assert.Contains("> scrap ", screens.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("> re-forge ", screens.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("> make into ", screens.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tool_is_set_aside_from_the_card_and_brought_back_from_the_stock_take()
    {
        screens.Press("Enter", "d");
        long id = screens.Host.ToolInHand!.Value;
        Choose("set aside");
        screens.Type("waits");
        screens.Press("Enter");
        Assert.Equal(ToolState.SetAside, Shop.Tools[id].State);
        screens.Press("Esc", "Esc", "k");
        int at = ToolPresence.All(Shop).ToList().FindIndex(each => each.Tool.Id == id);
        screens.Press("PageUp", "PageUp");
        screens.Current.List.Choose(at, 1000);
        screens.Press("d");
        Choose("bring back");
        screens.Press("Enter");
        Assert.Equal(ToolState.InService, Shop.Tools[id].State);
    }

    [Fact]
    public void A_tool_is_lent_re_marked_started_here_and_looked_over()
    {
        GoTo("H5");
        long id = screens.Host.ToolInHand!.Value;
        Choose("re-mark");
        screens.Type("H5A");
        screens.Press("Enter");
        Assert.Equal("H5A", Shop.Tools[id].Mark.Text);
        Choose("start here");
        screens.Press("Enter");
        Assert.IsType<ToolStartedHere>(Shop.Ledger[^1].What);
        Choose("look over");
        screens.Type("chip");
        screens.Press("Enter");
        screens.Type("w");
        screens.Press("Enter", "Enter", "Enter");
        ToolLookedOver found = Assert.IsType<ToolLookedOver>(Shop.Ledger[^1].What);
        Assert.Equal((Finding.Chipped, ToolPart.WorkingEnd), (found.Finding, found.Part));
        Choose("lend");
        screens.Type("Ada");
        screens.Press("Enter", "Enter");
        Assert.Equal("Ada", Shop.Tools[id].Lent?.To);
        Choose("take back");
        screens.Press("Enter");
        Assert.Equal(ToolState.InService, Shop.Tools[id].State);
    }

    [Fact]
    public void A_hand_me_down_is_one_entry_and_one_undo()
    {
        GoTo("H5");
        long id = screens.Host.ToolInHand!.Value;
        ToolInShop before = Shop.Tools[id];
        int entries = Shop.Ledger.Count;
        Choose("make into");
        screens.Type("NEW1");
        Answer();
        Assert.Equal(ToolState.Scrapped, Shop.Tools[id].State);
        Assert.Equal("NEW1", Shop.Tools[id].Scrapped!.Into?.Text);
        Assert.True(Shop.TryFind(Testing.Generators.Texts.MarkOf("NEW1"), out ToolInShop? made));
        Assert.Equal((before.Tool.Steel, before.Tool.Lot), (made.Tool.Steel, made.Tool.Lot));
        Assert.Equal(entries + 2, Shop.Ledger.Count);
        screens.Press("Backspace");
        Assert.Equal(ToolState.InService, Shop.Tools[id].State);
        Assert.False(Shop.Tools.ContainsKey(made.Id));
    }

    [Fact]
    public void A_wrong_scrap_size_steel_and_distance_are_corrected_and_stay_readable()
    {
        GoTo("H5");
        long id = screens.Host.ToolInHand!.Value;
        GaugeMark old = Shop.Tools[id].Tool.Gauge("width")!;
        Choose("mark width");
        Fill("From the mark", "61");
        Fill("Least", "12.345");
        Fill("Why", "the wrong row");
        GaugeMark now = Shop.Tools[id].Tool.Gauge("width")!;
        Assert.Equal(old with { FromMark = Length.FromMm(61m), Least = Length.FromMm(12.345m) }, now);
        Choose("correct");
        Fill("Steel", "4350");
        Answer();
        Assert.Equal("4350", Shop.Tools[id].Tool.Steel);
        Choose("costs, peg");
        Fill("Forge hours", "1.5");
        Fill("Peg", "A4");
        Answer();
        Assert.Equal((1.5m, "A4"), (Shop.Tools[id].Tool.Cost.ForgeHours, Shop.Tools[id].Tool.Peg));
        string ledger = site.Done("ledger", "H5", "--as", "csv");
        Assert.Contains($"width least 12.345, was {old.Least!.Value.Mm:0.##}", ledger, StringComparison.Ordinal);
        Assert.Contains("the wrong row", ledger, StringComparison.Ordinal);
        Assert.Contains("steel 4350, was 4140", ledger, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tool_without_a_scrap_size_gets_one_on_a_gauge_mark_more()
    {
        GoTo("H5");
        long id = screens.Host.ToolInHand!.Value;
        Choose("another mark");
        Fill("Wears", "smaller");
        Fill("Least", "20");
        Fill("Gauge mark", "tip");
        Assert.Equal(Length.FromMm(20m), Shop.Tools[id].Tool.Gauge("tip")!.Least);
    }

    public void Dispose()
    {
        screens.Dispose();
        site.Dispose();
    }

    private Shop Shop => screens.Sitting.Shop;

    private ToolInShop Find(Func<ToolInShop, bool> isSuch) =>
        Shop.Tools.Values.First(tool => tool.State == ToolState.InService && isSuch(tool));

    // down the rack to the tool, and its page
    private void GoTo(string mark)
    {
        int at = Rack().FindIndex(each => each.Mark.Text == mark);
        screens.Press([.. Enumerable.Repeat("Down", at), "d"]);
        Assert.Contains($"{mark}: what do you do to it?", screens.Text, StringComparison.Ordinal);
    }

    private List<ToolInShop> Rack() => [.. ToolWear.Screens.ToolRack.ToolRackText.InService(Shop)];

    private void Choose(string deed)
    {
        screens.Wait();
        int at = ToolDeeds
            .Of(screens.Sitting, Shop.Tools[screens.Host.ToolInHand!.Value])
            .ToList()
            .FindIndex(each => each.Words == deed);
        Assert.True(at >= 0, deed);
        screens.Press([.. Enumerable.Repeat("Up", 40), .. Enumerable.Repeat("Down", at), "Enter"]);
        Assert.NotNull(screens.Current.Line);
    }

    // Enter down to the question, and its answer
    private void Fill(string question, string answer)
    {
        for (int i = 0; i < 30 && !screens.Text.Contains($"> {question}", StringComparison.Ordinal); i++)
        {
            screens.Press("Enter");
        }

        Assert.Contains($"> {question}", screens.Text, StringComparison.Ordinal);
        screens.Type(answer);
        screens.Press("Enter");
    }

    // Enter through all that is offered, until it is recorded
    private void Answer()
    {
        int entries = Shop.Ledger.Count;
        for (int i = 0; i < 30 && screens.Current.Line is not null && Shop.Ledger.Count == entries; i++)
        {
            screens.Press("Enter");
        }

        Assert.True(Shop.Ledger.Count > entries, screens.Text);
    }
}
