using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using Xunit;
using static ToolWear.Core.Tests.Shops.Story;

namespace ToolWear.Core.Tests.Shops;

public sealed class CrossingOutTests
{
    private readonly Story story = new();

    [Fact]
    public void A_crossed_out_entry_counts_no_more_and_stays_visible()
    {
        story.Add("R1");
        story.Open("s1");
        story.Enter(Worked("s1", "R1", 3));
        long slip = story.Enter(Worked("s1", "R1", 30));
        long crossing = story.CrossOut(slip);
        Assert.Equal([3], story.History("R1"));
        Assert.Equal(slip, story.Shop.Ledger[(int)slip - 1].Number);
        Assert.Equal(crossing, story.Shop.CrossedOut[slip].Number);
        Assert.Equal(crossing + 1, story.Shop.NextNumber);
    }

    [Fact]
    public void What_was_crossed_out_can_be_entered_again()
    {
        story.Add("R1");
        story.CrossOut(1);
        story.Add("R1");
        Assert.Equal(3, story.Tool("R1").Id);
        Assert.Single(story.Shop.Tools);
    }

    [Fact]
    public void An_entry_that_others_rest_on_is_refused_and_they_are_named()
    {
        story.Add("R1");
        story.Open("s1");
        story.Enter(Worked("s1", "R1"));
        story.Enter(Measured("R1", Day(1)));
        Assert.Equal(
            "entry 1 cannot be crossed out: entries 3, 4 rest on it; cross out the last of them first",
            story.Refused(new EntryCrossedOut(1, "a slip"))
        );
        Assert.Equal(
            "entry 2 cannot be crossed out: entry 3 rests on it; cross out the last of them first",
            story.Refused(new EntryCrossedOut(2, "a slip"))
        );
        story.CrossOut(4);
        story.CrossOut(3);
        story.CrossOut(2);
        story.CrossOut(1);
        Assert.Empty(story.Shop.Tools);
        Assert.Empty(story.Shop.Sessions);
    }

    [Fact]
    public void Entries_that_rest_on_what_rests_are_named_too()
    {
        story.Add("R1");
        story.Enter(new ToolRemarked(Mark("R1"), Mark("R7")));
        story.Enter(LookedOver("R7", Day(1)));
        Assert.StartsWith(
            "entry 1 cannot be crossed out: entries 2, 3 rest",
            story.Refused(new EntryCrossedOut(1, "a slip")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void At_most_ten_are_named()
    {
        story.Add("R1");
        for (int i = 0; i < 12; i++)
        {
            story.Enter(LookedOver("R1", Day(1)));
        }

        Assert.Contains(
            "entries 2, 3, 4, 5, 6, 7, 8, 9, 10, 11 and 2 more rest",
            story.Refused(new EntryCrossedOut(1, "a slip")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_entry_rests_on_another_where_its_mark_would_mean_another_tool()
    {
        story.Add("R1");
        story.Enter(Scrapped("R1", Day(1)));
        long second = story.Add("R1");
        story.Enter(Measured("R1", Day(1)));
        Assert.Equal(
            "entry 3 cannot be crossed out: entry 4 rests on it; cross out the last of them first",
            story.Refused(new EntryCrossedOut(second, "a slip"))
        );
        Assert.Equal([4], story.History("R1"));
    }

    [Fact]
    public void A_session_that_was_closed_stays_closed_where_another_was_opened_since()
    {
        story.Open("s1");
        long closing = story.Close("s1");
        story.Open("s2");
        Assert.StartsWith(
            $"entry {closing} cannot be crossed out: entry 3 rests",
            story.Refused(new EntryCrossedOut(closing, "a slip")),
            StringComparison.Ordinal
        );
        story.CrossOut(3);
        story.CrossOut(closing);
        Assert.Equal("s1", story.Shop.OpenSession?.Name);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(2)]
    [InlineData(99)]
    public void An_entry_that_is_not_there_cannot_be_crossed_out(long number)
    {
        story.Add("R1");
        Assert.Equal(
            $"there is no entry {number}: the ledger holds 1 to 1",
            story.Refused(new EntryCrossedOut(number, "a slip"))
        );
    }

    [Fact]
    public void In_an_empty_ledger_there_is_nothing_to_cross_out() =>
        Assert.Equal("there is no entry 1: the ledger is empty", story.Refused(new EntryCrossedOut(1, "a slip")));

    [Fact]
    public void Nothing_is_crossed_out_twice()
    {
        story.Add("R1");
        story.CrossOut(1);
        Assert.Equal("entry 1 is crossed out already", story.Refused(new EntryCrossedOut(1, "again")));
    }

    [Fact]
    public void A_crossing_out_is_not_crossed_out_and_the_way_out_is_named()
    {
        story.Add("R1");
        long crossing = story.CrossOut(1);
        Assert.Equal(
            $"entry {crossing} is itself a crossing out: say that entry 1 counts again instead",
            story.Refused(new EntryCrossedOut(crossing, "a slip"))
        );
    }

    [Fact]
    public void A_start_anew_that_is_crossed_out_gives_the_readings_back()
    {
        story.Add("R1");
        story.Enter(Measured("R1", Day(1)));
        long start = story.Enter(new ToolStartedHere(Mark("R1"), "scale off"));
        Assert.Equal([start], story.History("R1"));
        story.CrossOut(start);
        Assert.Equal([2], story.History("R1"));
        Assert.Equal(Core.Tools.ToolStart.New, story.Tool("R1").Tool.Start);
    }

    [Fact]
    public void Settings_go_back_to_what_was_said_before()
    {
        story.Enter(new SettingChanged("units", "in"));
        long second = story.Enter(new SettingChanged("units", "mm"));
        story.CrossOut(second);
        Assert.Equal("in", story.Shop.Settings.Get(ShopSetting.Units));
        story.CrossOut(1);
        Assert.Equal("mm", story.Shop.Settings.Get(ShopSetting.Units));
    }
}
