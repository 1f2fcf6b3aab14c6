using System.Text;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Testing.Goldens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>A stock-take by keys.</summary>
public sealed class StockTakeTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void All_are_looked_for_and_one_is_lost(int width, int height)
    {
        using TestSite site = new();
        site.Demo();
        site.Done("lend", "XF1", "the smith at the far end of the long valley", "--on", "2026-11-09");
        StringBuilder record = new();
        using BareScreens screens = new(site, width, height);
        screens.Wait();
        Show("where one begins", "k");
        Show("three seen and one not", "s", "s", "s", "n");
        int tools = ToolPresence.All(screens.Sitting.Shop).Length;
        Assert.Single(Missing(screens));

        // stopped and taken up again: it goes on where it was
        screens.Press("Esc", "k");
        screens.Press([.. Enumerable.Repeat("s", tools - 5)]);
        Show("what was not seen", "n");
        Assert.Equal(2, Missing(screens).Length);
        Show("is it lost?", "x");
        screens.Press("Esc");
        Assert.Equal(2, Missing(screens).Length);
        Show("it is", "x", "Enter");
        Assert.Single(Missing(screens));
        Assert.Equal(ScrapCause.Lost, ((ToolScrapped)screens.Sitting.Shop.Ledger[^1].What).Cause);
        Show("the other turned up, asked once", "s", "s");
        Assert.Empty(Missing(screens));
        screens.Press("Backspace", "Backspace");
        Assert.Equal(2, Missing(screens).Length);
        Golden.Same($"screens/stock-take.{width}x{height}.txt", record.ToString());

        void Show(string caption, params string[] keys)
        {
            screens.Press(keys);
            record.Append($"== {caption}\n{screens.Text}\n");
        }
    }

    [Fact]
    public void A_tool_that_works_again_is_no_longer_missing()
    {
        using TestSite site = new();
        site.Demo();
        site.Done("stock-take", "H4", "--not-seen", "--by", "Ada", "--on", "2026-11-10");
        List<string> row = CsvCells.Of(site.Done("stock-take", "--as", "csv")).Single(each => each[0] == "H4");
        Assert.Equal(["2026-11-10", "no", "yes", "in service"], row[3..7]);
        site.Done("heats", "H4", "2", "--on", "2026-11-12");
        Assert.DoesNotContain(",no,yes,", site.Done("stock-take", "--as", "csv"), StringComparison.Ordinal);
        Assert.Contains("TOOL", site.Refused(2, "stock-take", "--not-seen"), StringComparison.Ordinal);
        Assert.Contains("NIX", site.Refused(1, "stock-take", "NIX"), StringComparison.Ordinal);
    }

    private static ToolPresence[] Missing(BareScreens screens) =>
        [.. ToolPresence.All(screens.Sitting.Shop).Where(each => each.IsMissing)];
}
