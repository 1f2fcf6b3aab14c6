using System.Collections.Immutable;
using CsCheck;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

public sealed class CalendarTests
{
    // 1 May 2026 is a Friday
    private static readonly DateOnly Friday = Story.Day(1);

    [Fact]
    public void Orders_fill_the_hammer_days_first_due_first()
    {
        Story story = Shop();
        story.Enter(Order("later", "hatchet", 5, due: 20));
        story.Enter(Order("sooner", "hatchet", 8, due: 6));
        SessionCalendar calendar = SessionCalendar.Of(story.Shop, Friday);

        // 6 a day where no session taught better; Saturday and Sunday are free
        Assert.Equal("1 sooner 6; 4 sooner 2 later 4; 5 later 1", Said(calendar));
        Assert.Empty(calendar.Late);
        Assert.Equal(0, Assert.Single(calendar.Capacities).Sessions);
    }

    [Fact]
    public void What_cannot_be_done_in_time_is_said()
    {
        Story story = Shop();
        story.Enter(Order("fair", "hatchet", 20, due: 4));
        LateOrder late = Assert.Single(SessionCalendar.Of(story.Shop, Friday).Late);
        Assert.Equal(8, late.HeadsLate);
        Assert.Equal(Story.Day(6), late.DoneOn);
    }

    [Fact]
    public void Hammer_days_and_closed_sessions_are_kept_to()
    {
        Story story = Shop();
        story.Enter(new SettingChanged("hammer_days", "tue fri"));
        Forge(story, "s1", heads: 4, heats: 12);
        story.Enter(Order("fair", "hatchet", 9, due: 20));
        // what was forged on Friday took that day already
        Assert.Equal("5 fair 4; 8 fair 4; 12 fair 1", Said(SessionCalendar.Of(story.Shop, Friday)));
    }

    [Fact]
    public void The_last_small_day_of_an_order_does_not_slow_the_calendar_down()
    {
        Story story = Shop();
        foreach ((string session, int heads) in ((string, int)[])[("s1", 6), ("s2", 2), ("s3", 6), ("s4", 1)])
        {
            Forge(story, session, heads, heats: 3 * heads);
        }

        story.Enter(Order("fair", "hatchet", 12, due: 20));
        SessionCalendar calendar = SessionCalendar.Of(story.Shop, Friday);
        Assert.Equal("4 fair 6; 5 fair 6", Said(calendar));
        Assert.Equal(4, Assert.Single(calendar.Capacities).Sessions);
    }

    [Fact]
    public void Heads_are_neither_lost_nor_made_up() =>
        Gen.Select(Gen.Int[1, 30], Gen.Int[1, 30], Gen.Int[1, 40], Gen.Int[1, 28])
            .Sample(
                (a, b, c, due) =>
                {
                    Story story = Shop();
                    story.Enter(Order("a", "hatchet", a, due));
                    story.Enter(Order("b", "hatchet", b, 29 - due));
                    story.Enter(Order("c", "hatchet", c, 15));
                    SessionCalendar calendar = SessionCalendar.Of(story.Shop, Friday);
                    ILookup<string, int> heads = calendar
                        .Days.SelectMany(day => day.Heads)
                        .ToLookup(each => each.Order.Order, each => each.Heads, StringComparer.Ordinal);
                    Assert.Equal((a, b, c), (heads["a"].Sum(), heads["b"].Sum(), heads["c"].Sum()));
                    Assert.True(calendar.Days.All(day => day.Heads.Sum(each => each.Heads) is > 0 and <= 6));
                    Assert.True(calendar.Days.Zip(calendar.Days.Skip(1)).All(pair => pair.First.On < pair.Second.On));
                },
                iter: 100
            );

    [Fact]
    public void Closed_sessions_teach_the_heats_a_head()
    {
        Story story = Shop();
        HeatsAHead guess = Cheeks(story);
        Assert.Equal((3.0, null, 0), (guess.Heats, guess.Spread, guess.Sessions));

        Forge(story, "s1", heads: 4, heats: 16);
        Assert.Equal(3, Cheeks(story).Heats);

        // 4 and 6 heats a head: mean 5, standard deviation sqrt 2
        Forge(story, "s2", heads: 2, heats: 12);
        HeatsAHead learned = Cheeks(story);
        Assert.Equal(5, learned.Heats, 12);
        Assert.Equal(Math.Sqrt(2), learned.Spread!.Value, 12);
        Assert.Equal(2, learned.Sessions);
        Assert.True(learned.IsLearned);
    }

    [Fact]
    public void Heads_counted_at_the_stage_itself_teach_more_than_heads_finished()
    {
        Story story = Shop();
        foreach (string session in (string[])["s1", "s2"])
        {
            Forge(story, session, heads: 2, heats: 12);
            story.Enter(new HeadsDone(session, "cheeks", 4));
        }

        // 12 heats for the 4 heads that went through the cheeks, not for the 2 that were finished
        Assert.Equal(3, Cheeks(story).Heats, 12);
        Assert.True(Cheeks(story).IsLearned);
    }

    [Fact]
    public void Weighted_heats_count_the_work_and_the_load()
    {
        Story story = Shop();
        ImmutableArray<HeatsAHead> stages = HeatsAHead.Of(story.Shop)["hatchet"];

        // opening with a rough drift counts a quarter; the cheeks bear a load of 1.5
        Assert.Equal(0.25, stages[0].Weighted);
        Assert.Equal(4.5, stages[1].Weighted);
        story.Enter(Order("fair", "hatchet", 8, due: 20));
        SessionCalendar calendar = SessionCalendar.Of(story.Shop, Friday);
        PlaceDemand demand = Assert.Single(PlaceDemand.Of(story.Shop, calendar, null));
        Assert.Equal(new ToolPlace("hatchet", Place.Rough, "drift"), demand.Tools);
        Assert.Equal([6 * 4.75, 2 * 4.75], demand.Days.Select(day => day.Heats));
        Assert.Equal(6 * 4.75, demand.Through(Story.Day(3)));
        Assert.False(demand.IsLearned);
        Assert.Equal(6 * 4.75, Assert.Single(PlaceDemand.Of(story.Shop, calendar, Story.Day(2))).Heats);
    }

    private static Story Shop()
    {
        Story story = new() { Today = Friday };
        story.Enter(
            new PatternDescribed(
                "hatchet",
                [
                    new PatternStage("open", "hatchet", Story.Form("drift"), Place.Rough, Work.Opening, 1, null),
                    new PatternStage("cheeks", "hatchet", Story.Form("drift"), Place.Rough, Work.Cheeks, 3, 1.5),
                ]
            )
        );
        return story;
    }

    private static void Forge(Story story, string session, int heads, int heats)
    {
        if (story.Shop.Tools.IsEmpty)
        {
            story.Add("R1");
        }

        story.Open(session, pattern: "hatchet");
        story.Enter(Story.Worked(session, "R1", heats));
        story.Enter(new SessionClosed(session, heads));
    }

    private static HeatsAHead Cheeks(Story story) => HeatsAHead.Of(story.Shop)["hatchet"][1];

    private static OrderDescribed Order(string name, string pattern, int heads, int due) =>
        new(name, pattern, heads, Story.Day(due), OrderState.Open);

    private static string Said(SessionCalendar calendar) =>
        string.Join(
            "; ",
            calendar.Days.Select(day =>
                $"{day.On.Day} {string.Join(' ', day.Heads.Select(each => $"{each.Order.Order} {each.Heads}"))}"
            )
        );
}
