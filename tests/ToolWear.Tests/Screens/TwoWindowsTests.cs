using ToolWear.Core.Ledger;
using ToolWear.Keys;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>A window beside another window or command on the same shop.</summary>
public sealed class TwoWindowsTests
{
    [Fact]
    public void A_window_shows_what_a_command_entered_and_takes_back_its_own()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        evening.Press("h", "2", "2");
        Entered own = evening.Sitting.Shop.Ledger[^1];
        string tool = Assert.IsType<HeatsWorked>(own.What).Tool.Text;
        site.Done("look-over", tool, "mushroomed", "--store", site.Store);
        evening.Host.Look();
        Assert.Contains($"Added in another window: {tool}", evening.Text, StringComparison.Ordinal);
        Assert.Equal(own.Number + 1, evening.Sitting.Shop.Ledger.Count);
        evening.Press("Backspace");
        Assert.Equal(own.Number, Assert.IsType<EntryCrossedOut>(evening.Sitting.Shop.Ledger[^1].What).Entry);
    }

    [Fact]
    public void An_entry_made_before_the_other_was_seen_has_the_next_number_and_is_the_one_taken_back()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        evening.Press("h", "2");
        site.Done(
            "order",
            "fair",
            "--pattern",
            "hatchet",
            "--heads",
            "3",
            "--due",
            "2027-04-01",
            "--store",
            site.Store
        );
        evening.Press("2");
        Entered own = evening.Sitting.Shop.Ledger[^1];
        Assert.IsType<HeatsWorked>(own.What);
        evening.Press("Backspace");
        Assert.Equal(own.Number, Assert.IsType<EntryCrossedOut>(evening.Sitting.Shop.Ledger[^1].What).Entry);
        evening.Host.Look();
        Assert.Contains("Added in another window", evening.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_session_closed_elsewhere_ends_the_hammer_here_and_no_key_breaks()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        evening.Press("h", "2", "2");
        Assert.Equal(ScreenName.Hammer, evening.Host.Current.Name);
        site.Done("close-session", "--store", site.Store);
        evening.Press("2", "2", "s");
        Assert.NotEqual(ScreenName.Hammer, evening.Host.Current.Name);
        Assert.Null(evening.Sitting.Shop.OpenSession);
    }

    [Fact]
    public void A_second_window_does_not_take_back_what_the_first_tallied()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings first = new(site);
        first.Press("h", "2", "2");
        using Evenings second = new(site);
        int before = second.Sitting.Shop.Ledger.Count;
        second.Press("h", "Backspace");
        Assert.Equal(before, second.Sitting.Shop.Ledger.Count);
        first.Press("Backspace");
        Assert.IsType<EntryCrossedOut>(first.Sitting.Shop.Ledger[^1].What);
    }
}
