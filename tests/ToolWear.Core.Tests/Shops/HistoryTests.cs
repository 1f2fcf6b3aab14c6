using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using Xunit;
using static ToolWear.Core.Tests.Shops.Story;

namespace ToolWear.Core.Tests.Shops;

/// <summary>The order of a tool's history, product page, section 1.</summary>
public sealed class HistoryTests
{
    private readonly Story story = new();

    public HistoryTests() => story.Add("R1");

    [Fact]
    public void Heats_remembered_late_fall_before_the_readings_taken_after_their_session()
    {
        story.Open("s1");
        long heats = story.Enter(Worked("s1", "R1"));
        story.Close("s1");
        story.Today = Day(2);
        long reading = story.Enter(Measured("R1", Day(2), "s1"));
        long late = story.Enter(Worked("s1", "R1", 2));
        Assert.Equal([heats, late, reading], story.History("R1"));
    }

    [Fact]
    public void Late_heats_fall_before_a_reading_of_that_day_that_names_no_session()
    {
        story.Open("s1");
        long heats = story.Enter(Worked("s1", "R1"));
        long reading = story.Enter(Measured("R1", Day(1)));
        long late = story.Enter(Worked("s1", "R1", 2));
        Assert.Equal([heats, late, reading], story.History("R1"));
    }

    [Fact]
    public void What_was_read_before_the_first_session_of_a_tool_is_what_that_session_began_with()
    {
        long first = story.Enter(Measured("R1", Day(1)));
        story.Open("s1");
        long heats = story.Enter(Worked("s1", "R1"));
        story.Close("s1");
        long after = story.Enter(Measured("R1", Day(1), "s1"));
        Assert.Equal([first, heats, after], story.History("R1"));
    }

    [Fact]
    public void A_reading_without_a_session_counts_all_heats_of_its_day_where_the_tool_had_worked()
    {
        story.Open("s1");
        long heats = story.Enter(Worked("s1", "R1"));
        story.Close("s1");
        long reading = story.Enter(Measured("R1", Day(1)));
        story.Open("s2");
        long more = story.Enter(Worked("s2", "R1"));
        Assert.Equal([heats, more, reading], story.History("R1"));
    }

    [Fact]
    public void A_session_over_midnight_belongs_to_its_opening_day()
    {
        story.Open("night");
        story.Today = Day(2);
        long past = story.Enter(Worked("night", "R1"));
        story.Close("night");
        long morning = story.Enter(Measured("R1", Day(2), "night"));
        story.Open("day");
        long day = story.Enter(Worked("day", "R1"));
        Assert.Equal([past, morning, day], story.History("R1"));
        Assert.All(story.Shop.HistoryOf(story.Tool("R1"))[..2], each => Assert.Equal(Day(1), each.Place.Day));
    }

    [Fact]
    public void A_session_entered_late_takes_its_place_by_its_day()
    {
        story.Today = Day(3);
        story.Open("new", Day(3));
        long later = story.Enter(Worked("new", "R1"));
        story.Close("new");
        story.Open("old", Day(2));
        long earlier = story.Enter(Worked("old", "R1"));
        Assert.Equal([earlier, later], story.History("R1"));
    }

    [Fact]
    public void Two_sessions_of_a_day_follow_their_opening_and_their_readings_stay_with_them()
    {
        story.Open("s1");
        long first = story.Enter(Worked("s1", "R1"));
        story.Close("s1");
        story.Open("s2");
        long second = story.Enter(Worked("s2", "R1"));
        long afterFirst = story.Enter(Measured("R1", Day(1), "s1"));
        long afterSecond = story.Enter(Measured("R1", Day(1), "s2"));
        long late = story.Enter(Worked("s1", "R1"));
        Assert.Equal([first, late, afterFirst, second, afterSecond], story.History("R1"));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_is_done_in_the_morning_stands_before_the_session_of_the_day(bool isRework)
    {
        long morning = story.Enter(Loose(isRework));
        story.Open("s1");
        long heats = story.Enter(Worked("s1", "R1"));
        Assert.Equal([morning, heats], story.History("R1"));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_is_done_between_two_sessions_stands_between_them(bool isRework)
    {
        story.Open("s1");
        long first = story.Enter(Worked("s1", "R1"));
        story.Close("s1");
        long noon = story.Enter(Loose(isRework));
        story.Open("s2");
        long second = story.Enter(Worked("s2", "R1"));
        long late = story.Enter(Worked("s1", "R1"));
        Assert.Equal([first, late, noon, second], story.History("R1"));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_is_done_between_two_heats_stands_between_them(bool isRework)
    {
        story.Open("s1");
        long first = story.Enter(Worked("s1", "R1"));
        long between = story.Enter(Loose(isRework));
        long second = story.Enter(Worked("s1", "R1"));
        Assert.Equal([first, between, second], story.History("R1"));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_is_done_in_the_evening_stands_after_the_readings_of_the_session(bool isRework)
    {
        story.Open("s1");
        long heats = story.Enter(Worked("s1", "R1"));
        long evening = story.Enter(Loose(isRework));
        story.Close("s1");
        story.Today = Day(2);
        long reading = story.Enter(Measured("R1", Day(2), "s1"));
        Assert.Equal([heats, reading, evening], story.History("R1"));
    }

    [Fact]
    public void Heats_of_another_tool_do_not_draw_a_rework_into_the_session()
    {
        story.Add("R2");
        story.Open("s1");
        long heats = story.Enter(Worked("s1", "R1"));
        long rework = story.Enter(Reworked("R1", Day(1)));
        story.Enter(Worked("s1", "R2"));
        long reading = story.Enter(Measured("R1", Day(1), "s1"));
        Assert.Equal([heats, reading, rework], story.History("R1"));
    }

    [Fact]
    public void A_rework_of_another_day_keeps_its_day_whenever_it_is_entered()
    {
        story.Today = Day(3);
        story.Open("s3", Day(3));
        long third = story.Enter(Worked("s3", "R1"));
        long second = story.Enter(Reworked("R1", Day(2)));
        Assert.Equal([second, third], story.History("R1"));
    }

    [Fact]
    public void Changes_of_state_stand_after_the_sessions_of_their_day()
    {
        long aside = story.Enter(new ToolSetAside(Mark("R1"), Day(1), null));
        story.Open("s1");
        long heats = story.Enter(Worked("s1", "R1"));
        long back = story.Enter(new ToolBroughtBack(Mark("R1"), Day(1), null));
        long scrapped = story.Enter(Scrapped("R1", Day(1)));
        Assert.Equal([heats, aside, back, scrapped], story.History("R1"));
    }

    [Fact]
    public void After_a_start_anew_the_next_morning_counts_from_the_reading_of_the_last_session()
    {
        story.Open("s1");
        long heats = story.Enter(Worked("s1", "R1", 4));
        story.Enter(Measured("R1", Day(1)));
        story.Close("s1");
        story.Today = Day(2);
        long start = story.Enter(new ToolStartedHere(Mark("R1"), "the scale is off"));
        long reading = story.Enter(Measured("R1", Day(2), "s1"));
        story.Open("s2");
        long more = story.Enter(Worked("s2", "R1", 4));
        Assert.Equal([heats, start, reading, more], story.History("R1"));
        Assert.Equal(ToolStart.Unknown, story.Tool("R1").Tool.Start);
    }

    [Fact]
    public void A_start_anew_of_a_tool_that_never_worked_stands_before_the_sessions_of_its_day()
    {
        story.Open("s1");
        long start = story.Enter(new ToolStartedHere(Mark("R1"), null));
        long heats = story.Enter(Worked("s1", "R1"));
        long reading = story.Enter(Measured("R1", Day(1), "s1"));
        Assert.Equal([start, heats, reading], story.History("R1"));
    }

    [Fact]
    public void After_a_start_anew_readings_from_before_are_refused()
    {
        story.Today = Day(3);
        story.Open("s1", Day(1));
        story.Enter(Worked("s1", "R1"));
        story.Close("s1");
        story.Open("s2", Day(2));
        story.Enter(Worked("s2", "R1"));
        story.Enter(new ToolStartedHere(Mark("R1"), null));
        Assert.Equal(
            "R1 was started anew after 2026-05-02: an earlier reading no longer counts",
            story.Refused(Measured("R1", Day(2)))
        );
        Assert.Equal(
            "R1 was started anew after session s1: an earlier reading no longer counts",
            story.Refused(Measured("R1", Day(3), "s1"))
        );
    }

    [Fact]
    public void A_start_anew_takes_the_sizes_out_of_earlier_reworks_but_keeps_them()
    {
        ToolReworked rework = Reworked("R1", Day(1), "width") with { Before = Mm(15.5), After = Mm(15.9) };
        story.Enter(rework);
        story.Enter(new ToolStartedHere(Mark("R1"), null));
        Assert.Equal(rework with { Gauge = null, Before = null, After = null }, story.Tool("R1").Events[0].What);
    }

    [Fact]
    public void Every_event_of_a_tool_follows_its_new_mark()
    {
        story.Open("s1");
        long before = story.Enter(Worked("s1", "R1"));
        story.Enter(new ToolRemarked(Mark("R1"), Mark("R7")));
        long after = story.Enter(Worked("s1", "R7"));
        Assert.Equal([before, after], story.History("R7"));
        Assert.StartsWith("No tool \"R1\". ", story.Refused(Worked("s1", "R1")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mark_may_be_used_again_once_its_tool_is_scrapped()
    {
        long old = story.Enter(Scrapped("R1", Day(1)));
        long added = story.Add("R1");
        long found = story.Enter(LookedOver("R1", Day(1)));
        Assert.Equal([found], story.History("R1"));
        Assert.Equal(added, story.Tool("R1").Id);
        Assert.Equal(old, story.Shop.Tools[1].Events[0].Number);
        Assert.Equal(ToolState.Scrapped, story.Shop.Tools[1].State);
    }

    private static LedgerEntry Loose(bool isRework) => isRework ? Reworked("R1", Day(1)) : LookedOver("R1", Day(1));
}
