using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>A key that is held down to clear a line never goes on to what was recorded.</summary>
public sealed class HeldKeyTests
{
    private static readonly string[][] Lines =
    [
        ["e"],
        ["m", "1", "3"],
        ["a", "R"],
        ["l", "/", "H"],
    ];

    [Fact]
    public void A_size_that_was_refused_or_asked_about_is_replaced_by_the_next_digit()
    {
        using TestSite site = new();
        site.Demo();
        using BareScreens screens = new(site);
        screens.Wait();
        int entries = screens.Sitting.Shop.Ledger.Count;
        screens.Press("m");
        screens.Type("13.4.1");
        screens.Press("Enter");
        Assert.Equal("13.4.1", screens.Current.Line!.Text);
        screens.Type("99");
        Assert.Equal("99", screens.Current.Line!.Text);
        // asked once, and it is still there for the Enter that insists
        screens.Press("Enter");
        Assert.Equal("99", screens.Current.Line!.Text);
        Assert.Equal(entries, screens.Sitting.Shop.Ledger.Count);
        screens.Type("13.4");
        Assert.Equal("13.4", screens.Current.Line!.Text);
    }

    [Fact]
    public void Clearing_a_line_takes_nothing_back()
    {
        using TestSite site = new();
        site.Demo();
        using BareScreens screens = new(site);
        foreach (string[] keys in Lines)
        {
            screens.Host.Go(screens.Host.Home);
            screens.Press("m", "Enter", "Enter", "s", "Esc", "Enter");
            int entries = screens.Sitting.Shop.Ledger.Count;
            screens.Press(keys);
            screens.Press([.. Enumerable.Repeat("Backspace", 60)]);
            Assert.Equal(entries, screens.Sitting.Shop.Ledger.Count);
            Assert.DoesNotContain("Bksp undo", screens.Text, StringComparison.Ordinal);
            screens.Press("F12", "Backspace");
            Assert.Equal(entries + 1, screens.Sitting.Shop.Ledger.Count);
        }
    }
}
