using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Doors;
using ToolWear.Keys;
using ToolWear.Screens.Hammer;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>A foot pedal and a bell at the hammer.</summary>
public sealed class PedalTests
{
    [Theory]
    [InlineData("P", "p")]
    [InlineData("Enter", "Enter")]
    [InlineData("F5", "F5")]
    public void The_pedal_adds_a_heat_to_the_set(string key, string press)
    {
        using TestSite site = new();
        site.Demo();
        site.Done("set", "pedal_key", key);
        using BareScreens screens = new(site);
        screens.Wait();
        screens.Press("h", "t", "Down", "t", "Enter");
        Assert.Equal(ScreenName.Hammer, screens.Current.Name);
        int set = screens.Host.Board.Together.Length;
        Assert.True(set > 1);
        Assert.Contains($"{press} pedal", screens.Text, StringComparison.Ordinal);
        int before = screens.Sitting.Shop.Ledger.Count;
        screens.Press(press);
        HeatsWorked[] heats =
        [
            .. screens.Sitting.Shop.Ledger.Skip(before).Select(each => each.What).Cast<HeatsWorked>(),
        ];
        Assert.Equal(
            screens.Host.Board.Together.Select(each => screens.Sitting.Shop.Tools[each.Tool].Mark),
            heats.Select(each => each.Tool)
        );
        screens.Press("Backspace");
        Assert.Equal(before + (2 * set), screens.Sitting.Shop.Ledger.Count);
    }

    [Theory]
    [InlineData("s", "close")]
    [InlineData("A", "head")]
    [InlineData("3", "heat")]
    [InlineData("?", "help")]
    public void A_key_that_acts_already_is_refused(string key, string does)
    {
        using TestSite site = new();
        site.Demo();
        Assert.Contains(does, site.Refused(1, "set", "pedal_key", key), StringComparison.Ordinal);
        using BareScreens screens = new(site);
        int before = screens.Sitting.Shop.Ledger.Count;
        screens.Press("s");
        for (int i = 0; i < 60 && !screens.Text.Contains("\n> pedal_key", StringComparison.Ordinal); i++)
        {
            screens.Press("Down");
        }

        screens.Press("Enter");
        screens.Type(key);
        screens.Press("Enter");
        Assert.Contains("choose a free key", screens.Text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(before, screens.Sitting.Shop.Ledger.Count);
    }

    [Fact]
    public void Without_a_set_the_pedal_says_what_is_missing()
    {
        using TestSite site = new();
        site.Demo();
        site.Done("set", "pedal_key", "p");
        using BareScreens screens = new(site);
        screens.Wait();
        screens.Press("h", "Enter");
        Assert.True(screens.Host.Board.Chosen.Length > 1 && screens.Host.Board.Together.IsEmpty);
        int before = screens.Sitting.Shop.Ledger.Count;
        Assert.DoesNotContain("p pedal", screens.Text, StringComparison.Ordinal);
        screens.Press("p");
        Assert.Contains("work together", screens.Text, StringComparison.Ordinal);
        Assert.Equal(before, screens.Sitting.Shop.Ledger.Count);
    }

    [Theory]
    [InlineData("yes", 1)]
    [InlineData("no", 0)]
    public void The_bell_rings_once_when_a_tool_has_done_what_it_should_today(string bell, int rings)
    {
        using TestSite site = new();
        site.Demo();
        site.Done("set", "bell", bell);
        List<byte> rung = [];
        Tty tty = new(true, "xterm", false, true, bytes => rung.AddRange(bytes.ToArray()), _ => { });
        using BareScreens screens = new(site, tty: tty);
        screens.Wait();
        screens.Press("h", "Enter");
        BoardTool tool = screens
            .Host.Board.Chosen.Where(each => More(screens, each) is > 0 and < 60)
            .OrderBy(each => More(screens, each))
            .First();
        string key = $"{screens.Host.Board.Chosen.IndexOf(tool) + 1}";
        int heats = 0;
        while (More(screens, tool) > 0 && heats < 300)
        {
            Assert.Empty(rung);
            screens.Press(key);
            heats++;
        }

        Assert.Equal(0, More(screens, tool));
        screens.Press(key, key);
        Assert.Equal(Enumerable.Repeat((byte)'\a', rings), rung);
    }

    private static int? More(BareScreens screens, BoardTool tool) =>
        HammerText.MoreToday(
            screens.Sitting.Shop,
            screens.Sitting.Forecasts,
            screens.Sitting.Shop.OpenSession?.Opened.Pattern,
            tool
        );
}
