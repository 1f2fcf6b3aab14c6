using System.Text;
using ToolWear.Core.Ledger;
using ToolWear.Testing.Goldens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Orders, forge list and costs by keys.</summary>
[Collection(ScreenLibrary.Name)]
public sealed class PlanningScreenTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Orders_forge_list_and_costs(int width, int height)
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site, width: width, height: height);
        evening.WaitForForecasts();
        StringBuilder record = new();
        Orders(evening, Show);
        Forging(evening, Show);
        Costs(evening, Show);
        Golden.Same($"screens/planning.{width}x{height}.txt", record.ToString());
        void Show(string caption) => record.Append($"== {caption}\n{evening.Text}\n");
    }

    private static void Orders(Evenings evening, Action<string> show)
    {
        evening.Press("o");
        show("the orders");
        evening.Press("a");
        evening.Type("cross");
        evening.Press("Enter");
        evening.Type("90");
        evening.Press("Enter");
        evening.Type("+7");
        evening.Press("Enter");
        show("an order is being added");
        evening.Press("Enter");
        evening.WaitForPlans();
        show("it cannot be done in time, and that is said");
        evening.Press("Esc");
    }

    private static void Forging(Evenings evening, Action<string> show)
    {
        evening.Press("f");
        evening.WaitForPlans();
        show("the forge list with it");
        evening.Press("-");
        show("one fewer");
        evening.Press([.. Enumerable.Repeat("Down", 30)]);
        show("what to mind");
        evening.Press("Up");
        show("the cut list");
        evening.Press("s");
        evening.Type("0.99");
        evening.Press("Enter", "l");
        evening.Type("H5");
        evening.Press("Enter");
        evening.WaitForPlans();
        show("another certainty and a drift lost, beside the plan as it is");
        evening.Press("Esc", "Esc");
    }

    private static void Costs(Evenings evening, Action<string> show)
    {
        evening.Press("c");
        evening.WaitForPlans();
        show("the costs");
        evening.Press([.. Enumerable.Repeat("Down", 6)]);
        show("a tool's cost");
        evening.Press("r");
        evening.Type("0.4");
        evening.Press("Enter", "Enter");
        evening.Type("20");
        show("re-forge or scrap?");
        evening.Press("Enter");
        show("the answer");
    }

    [Fact]
    public void An_order_is_added_changed_dropped_and_taken_back()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        evening.Press("o", "a");
        evening.Type("hat");
        evening.Press("Enter");
        evening.Type("6");
        evening.Press("Enter");
        evening.Type("someday");
        evening.Press("Enter", "Enter");
        Assert.Contains("\"someday\" is no day", evening.Text, StringComparison.Ordinal);
        evening.Type("+5");
        evening.Press("Enter", "Enter");
        OrderDescribed added = new("hatchet", "hatchet", 6, new DateOnly(2026, 11, 17), OrderState.Open);
        Assert.Equal(added, evening.Sitting.Shop.Orders["hatchet"]);

        // it is the chosen one, the first due; heads are changed, the rest is taken as it is
        evening.Press("Enter", "Enter");
        evening.Type("8");
        evening.Press("Enter", "Enter");
        Assert.Equal(added with { Heads = 8 }, evening.Sitting.Shop.Orders["hatchet"]);
        evening.Press("d");
        Assert.Equal(OrderState.Dropped, evening.Sitting.Shop.Orders["hatchet"].State);
        Assert.DoesNotContain("hatchet          ", evening.Text, StringComparison.Ordinal);
        evening.Press("Backspace");
        Assert.Equal(added with { Heads = 8 }, evening.Sitting.Shop.Orders["hatchet"]);
        evening.Press("Backspace", "Backspace");
        Assert.False(evening.Sitting.Shop.Orders.ContainsKey("hatchet"));
    }

    [Theory]
    [InlineData("Enter", 12)]
    [InlineData("n", 18)]
    public void Closing_asks_once_whether_the_open_order_is_counted_down(string answer, int left)
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        evening.Press("h", "Enter", "3", "s", "Down", "Down", "Down", "Down", "Down");
        evening.Type("6");
        evening.Press("Enter");
        Assert.Contains("6 heads off, 12 to go", evening.Text, StringComparison.Ordinal);
        Assert.Equal(18, evening.Sitting.Shop.Orders["hatchets"].Heads);
        Assert.NotNull(evening.Sitting.Shop.OpenSession);
        evening.Press(answer);
        Assert.Null(evening.Sitting.Shop.OpenSession);
        Assert.Equal(left, evening.Sitting.Shop.Orders["hatchets"].Heads);

        // one key takes the closing back, and the order with it
        evening.Press("Backspace");
        Assert.NotNull(evening.Sitting.Shop.OpenSession);
        Assert.Equal(18, evening.Sitting.Shop.Orders["hatchets"].Heads);
    }

    [Fact]
    public void What_is_only_supposed_never_reaches_the_ledger()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        int before = evening.Sitting.Shop.Ledger.Count;
        evening.Press("f");
        evening.WaitForPlans();
        evening.Press("h");
        evening.Type("hammers");
        evening.Press("Enter");
        evening.Type("60");
        evening.Press("Enter");
        evening.WaitForPlans();
        Assert.Contains("If 60 heads more of hammers", evening.Text, StringComparison.Ordinal);
        string row = Assert.Single(
            evening.Text.Split('\n'),
            line => line.Contains("X rough", StringComparison.Ordinal)
        );
        Assert.StartsWith("*", row, StringComparison.Ordinal);
        Assert.Equal(before, evening.Sitting.Shop.Ledger.Count);
        Assert.Equal(24, evening.Sitting.Shop.Orders["hammers"].Heads);
        evening.Press("l");
        evening.Type("no such");
        evening.Press("Enter");
        Assert.Contains("name a tool in service", evening.Text, StringComparison.Ordinal);
        evening.Press("Esc", "s");
        evening.Type("95");
        evening.Press("Enter");
        Assert.Contains("a share above 0 and below 1", evening.Text, StringComparison.Ordinal);
        evening.Press("Esc", "Esc");
        Assert.Contains("Forge by", evening.Text, StringComparison.Ordinal);
    }
}
