using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Screens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Keys: how few it takes, and that foot and help tell the truth.</summary>
public sealed class KeyTests
{
    [Fact]
    public void A_heat_takes_two_keys_from_the_rack_and_one_at_the_hammer()
    {
        using TestSite site = new();
        site.Done("demo", "--no-screens", "--store", site.Store);
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
        site.Done("demo", "--no-screens", "--store", site.Store);
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
        site.Done("demo", "--no-screens", "--store", site.Store);
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
        site.Done("demo", "--no-screens", "--store", site.Store);
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
        site.Done("demo", "--no-screens", "--store", site.Store);
        using Evenings evening = new(site);
        evening.Press("H");
        Assert.Equal(ScreenName.Choosing, evening.Host.Current.Name);
    }

    [Fact]
    public void Every_key_that_acts_stands_at_the_foot_or_in_help()
    {
        using TestSite site = new();
        site.Done("demo", "--no-screens", "--store", site.Store);
        using Evenings evening = new(site);
        evening.WaitForForecasts();
        foreach ((ScreenName screen, string[] way) in Ways)
        {
            evening.Press(way);
            evening.WaitForPlans();
            Assert.Equal(screen, evening.Host.Current.Name);
            ImmutableArray<string> known = [.. Keys.Of(screen).SelectMany(row => row.Names)];
            string[] idle =
            [
                .. Enumerable
                    .Range(33, 94)
                    .Select(each => char.ToLowerInvariant((char)each).ToString())
                    .Where(key => !known.Contains(key, StringComparer.Ordinal))
                    .Where(key => evening.Host.Current.Line?.WouldTake(key) != true),
            ];
            string before = evening.Text;
            evening.Press(idle);
            Assert.Equal(before, evening.Text);
            evening.Press("Esc");
        }
    }

    [Fact]
    public void Every_key_at_the_foot_is_drawn_and_every_row_has_its_help()
    {
        using TestSite site = new();
        site.Done("demo", "--no-screens", "--store", site.Store);
        using Evenings evening = new(site);
        evening.WaitForForecasts();
        foreach ((ScreenName screen, string[] way) in Ways)
        {
            evening.Press(way);
            evening.WaitForPlans();
            Screen current = evening.Host.Current;
            foreach (KeyRow row in ScreenFrame.Foot(current, 80, 24).SelectMany(line => line))
            {
                Assert.True(ScreenFrame.Works(current, row), $"{screen}: {row.Shown}");
                Assert.Contains($"{row.Shown} {row.Words}", evening.Text, StringComparison.Ordinal);
            }

            evening.Press("F1");
            string help = Pages(evening);
            foreach (KeyRow row in Keys.Of(screen))
            {
                Assert.Contains(row.Does[..Math.Min(30, row.Does.Length)], help, StringComparison.Ordinal);
            }

            evening.Press("Esc", "Esc");
        }
    }

    [Fact]
    public void No_key_means_two_things_on_one_screen()
    {
        foreach (ScreenName screen in Enum.GetValues<ScreenName>())
        {
            string[] names = [.. Keys.Of(screen).SelectMany(row => row.Names)];
            Assert.Equal(names.Distinct(StringComparer.Ordinal), names);
        }
    }

    private static string Pages(Evenings evening)
    {
        string first = evening.Text;
        evening.Press("PageDown");
        string second = evening.Text;
        evening.Press("PageUp");
        return first + second;
    }

    private static (ScreenName, string[])[] Ways =>
        [
            (ScreenName.ToolRack, []),
            (ScreenName.Choosing, ["h"]),
            (ScreenName.CaliperRound, ["m"]),
            (ScreenName.WearCard, ["Enter"]),
            (ScreenName.ForgeList, ["f"]),
            (ScreenName.Eyes, ["y"]),
            (ScreenName.StockRack, ["b"]),
            (ScreenName.Orders, ["o"]),
            (ScreenName.Costs, ["c"]),
            (ScreenName.LedgerPages, ["l"]),
            (ScreenName.ShopPage, ["s"]),
            (ScreenName.NewTool, ["a"]),
            (ScreenName.ToolTable, ["t"]),
        ];
}
