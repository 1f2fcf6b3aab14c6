using ToolWear.Core.Ledger;
using ToolWear.Keys;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Help;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Keys: how few it takes, and that foot and help tell the truth.</summary>
[Collection(ScreenLibrary.Name)]
public sealed class KeyTests
{
    [Fact]
    public void A_heat_takes_two_keys_from_the_rack_and_one_at_the_hammer()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        evening.Press("h", "2");
        Assert.Equal(2, evening.Pressed);
        HeatsWorked first = Assert.IsType<HeatsWorked>(evening.Sitting.Shop.Ledger[^1].What);
        Assert.Equal("1", first.Heats.ToString());
        evening.Press("2");
        Assert.Equal(first, evening.Sitting.Shop.Ledger[^1].What);
    }

    [Fact]
    public void Both_gauge_marks_of_a_drift_take_their_digits_and_Enter()
    {
        using TestSite site = new();
        site.Demo();
        site.Done("heats", "H5", "3");
        site.Done("close-session");
        using Evenings evening = new(site);
        evening.Press("m");
        int before = evening.Sitting.Shop.Ledger.Count;
        int pressed = evening.Pressed;
        foreach (string size in (string[])["13.2", "33.9"])
        {
            evening.Type(size);
            evening.Press("Enter");
        }

        Assert.Equal(before + 2, evening.Sitting.Shop.Ledger.Count);
        Assert.Equal("13.2".Length + "33.9".Length + 2, evening.Pressed - pressed);
        Assert.All(
            evening.Sitting.Shop.Ledger.TakeLast(2),
            entered => Assert.Equal("H5", Assert.IsType<ToolMeasured>(entered.What).Tool.Text)
        );
    }

    [Fact]
    public void The_forge_list_takes_one_key_and_the_export_two()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        evening.WaitForForecasts();
        evening.Press("f");
        Assert.Equal(ScreenName.ForgeList, evening.Host.Current.Name);
        evening.Press("Esc", "e");
        Assert.Contains("wear-2026-11-12.csv", evening.Text, StringComparison.Ordinal);
        evening.Press("Esc");
        Assert.Equal(ScreenName.ToolRack, evening.Host.Current.Name);
    }

    [Fact]
    public void One_key_takes_the_last_heat_back_also_after_a_crash()
    {
        using TestSite site = new();
        site.Demo();
        using (Evenings evening = new(site))
        {
            evening.Press("h", "2", "2");
        }

        using Evenings again = new(site);
        Assert.Contains("is still open", again.Text, StringComparison.Ordinal);
        again.Press("h", "Backspace");
        Entered last = again.Sitting.Shop.Ledger[^1];
        Assert.IsType<HeatsWorked>(
            again.Sitting.Shop.Ledger[(int)Assert.IsType<EntryCrossedOut>(last.What).Entry - 1].What
        );
    }

    [Fact]
    public void Caps_Lock_does_not_matter()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        evening.Press("H");
        Assert.Equal(ScreenName.Choosing, evening.Host.Current.Name);
    }

    [Fact]
    public void Every_key_of_every_screen_has_its_help()
    {
        foreach (ScreenName screen in Enum.GetValues<ScreenName>())
        {
            Picture help = new(80, 100);
            HelpText.Draw(help, screen, 0);
            Assert.Empty(help.Overlaps);
            Assert.Empty(help.LeftOut);
            foreach (KeyRow row in KeyTable.Of(screen))
            {
                Assert.Contains(row.Does[..Math.Min(30, row.Does.Length)], help.ToString(), StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void No_key_means_two_things_on_one_screen()
    {
        foreach (ScreenName screen in Enum.GetValues<ScreenName>())
        {
            string[] names = [.. KeyTable.Of(screen).SelectMany(row => row.Names)];
            Assert.Equal(names.Distinct(StringComparer.Ordinal), names);
        }
    }
}
