using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using Xunit;

namespace ToolWear.Core.Tests.Deeds;

/// <summary>Closing a session: what nobody counted is estimated, what was counted otherwise is put right.</summary>
public sealed class ClosingSessionTests
{
    private readonly Story story = new();

    public ClosingSessionTests()
    {
        story.Enter(
            new PatternDescribed(
                "axe",
                [
                    new("open", null, Story.Form("drift"), Place.Rough, Work.Opening, 1.5, null),
                    new("size", null, Story.Form("drift"), Place.Finish, Work.Sizing, 2, null),
                ]
            )
        );
        story.Add("R1");
        story.Add("F1", Place.Finish);
        story.Open("s", pattern: "axe");
    }

    private Session Open => story.Shop.OpenSession!;

    private Board Board =>
        new("axe", [new(story.Tool("R1").Id, Work.Opening), new(story.Tool("F1").Id, Work.Sizing)], []);

    [Fact]
    public void A_stage_without_a_tally_is_estimated_from_its_heads_and_the_last_stage_counts()
    {
        story.Enter(new HeatsWorked("s", Story.Mark("F1"), Work.Sizing, Heats.Of(5), HeatsHow.Counted));
        ClosingSession deed = ClosingSession.Of(story.Shop, Open, Board, [4, 3]);
        Assert.Equal(
            [
                new HeadsDone("s", "open", 4),
                new HeadsDone("s", "size", 3),
                new HeatsWorked("s", Story.Mark("R1"), Work.Opening, Heats.Of(6), HeatsHow.Estimated),
                new SessionClosed("s", 3),
            ],
            deed.Entries
        );
    }

    [Fact]
    public void Twins_share_what_is_estimated_in_halves()
    {
        story.Add("R2");
        Board twins = new("axe", [new(story.Tool("R1").Id, Work.Opening), new(story.Tool("R2").Id, Work.Opening)], []);
        ImmutableArray<(int Stage, HeatsWorked Heats)> estimated = ClosingSession.Estimated(
            story.Shop,
            "s",
            twins,
            [3, null]
        );
        Assert.Equal(["R1", "R2"], estimated.Select(each => each.Heats.Tool.Text));
        // 3 heads at 1.5 heats are 4.5, of which each has 2.25, to the nearest half
        Assert.All(estimated, each => Assert.Equal((0, Heats.Of(2)), (each.Stage, each.Heats.Heats)));
    }

    [Fact]
    public void Heads_counted_too_many_are_crossed_out_and_the_rest_counted_anew()
    {
        story.Enter(new HeadsDone("s", "open", 2));
        long last = story.Enter(new HeadsDone("s", "open", 2));
        ClosingSession deed = ClosingSession.Of(story.Shop, Open, Board, [3, null]);
        Assert.Equal([last, null], deed.Entries.Take(2).Select(each => (each as EntryCrossedOut)?.Entry));
        Assert.Equal(new HeadsDone("s", "open", 1), deed.Entries[1]);
        Assert.Equal(new SessionClosed("s", 3), deed.Entries[^1]);
    }

    [Fact]
    public void Orders_of_the_pattern_can_be_counted_down_and_are_not_unless_asked()
    {
        OrderDescribed order = new("o", "axe", 10, Story.Day(30), OrderState.Open);
        story.Enter(order);
        ClosingSession deed = ClosingSession.Of(story.Shop, Open, 4);
        Assert.Equal([(order, order with { Heads = 6 })], deed.Orders);
        Assert.Equal([new SessionClosed("s", 4)], deed.Entries);
        Assert.Equal([new SessionClosed("s", 4), order with { Heads = 6 }], deed.CountingOff);
    }

    [Fact]
    public void The_tools_that_worked_are_named_and_no_other()
    {
        story.Enter(Story.Worked("s", "R1"));
        Assert.Equal(["R1"], ClosingSession.Used(story.Shop, "s"));
    }
}
