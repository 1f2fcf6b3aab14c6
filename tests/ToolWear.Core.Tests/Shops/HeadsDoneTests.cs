using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using Xunit;
using static ToolWear.Core.Tests.Shops.Story;

namespace ToolWear.Core.Tests.Shops;

public sealed class HeadsDoneTests
{
    private readonly Story story = new();

    public HeadsDoneTests()
    {
        story.Enter(new PatternDescribed("hatchet", [Stage("open"), Stage("cheeks")]));
        story.Open("s1", pattern: "hatchet");
    }

    [Fact]
    public void Heads_at_a_stage_add_up_and_are_taken_off_where_they_are_crossed_out()
    {
        story.Enter(new HeadsDone("s1", "cheeks", 1));
        long second = story.Enter(new HeadsDone("s1", "cheeks", 4));
        story.Enter(new HeadsDone("s1", "open", 1));
        Assert.Equal(5, story.Shop.OpenSession!.HeadsByStage["cheeks"]);
        story.CrossOut(second);
        Assert.Equal(1, story.Shop.OpenSession!.HeadsByStage["cheeks"]);
        Assert.Equal(1, story.Shop.Sessions["s1"].HeadsByStage["open"]);
    }

    [Fact]
    public void They_stay_with_the_session_when_it_is_closed_and_may_come_late()
    {
        story.Enter(new HeadsDone("s1", "open", 2));
        story.Close("s1");
        story.Enter(new HeadsDone("s1", "open", 1));
        Assert.Equal(3, story.Shop.Sessions["s1"].HeadsByStage["open"]);
        Assert.Null(story.Shop.OpenSession);
    }

    [Fact]
    public void A_stage_that_the_pattern_has_not_is_refused_and_its_stages_are_named()
    {
        Assert.Equal(
            "pattern hatchet has no stage finish: it has open, cheeks",
            story.Refused(new HeadsDone("s1", "finish", 1))
        );
        story.Close("s1");
        story.Open("s2");
        Assert.Equal(
            "session s2 has no pattern, so it has no stages to count heads at",
            story.Refused(new HeadsDone("s2", "open", 1))
        );
        Assert.Equal("there is no session s3", story.Refused(new HeadsDone("s3", "open", 1)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(9_999)]
    public void Heads_are_one_to_ten_thousand_at_a_stage(int heads)
    {
        story.Enter(new HeadsDone("s1", "open", 2));
        Assert.StartsWith(
            $"heads {heads}: a number from 1 to 10000",
            story.Refused(new HeadsDone("s1", "open", heads)),
            StringComparison.Ordinal
        );
        story.Enter(new HeadsDone("s1", "open", 9_998));
    }

    [Fact]
    public void The_pattern_that_has_the_stage_cannot_be_crossed_out_under_them()
    {
        story.Enter(new HeadsDone("s1", "open", 1));
        Assert.Equal(
            "entry 1 cannot be crossed out: entry 3 rests on it; cross out the last of them first",
            story.Refused(new EntryCrossedOut(1, "a slip"))
        );
    }

    private static PatternStage Stage(string name) =>
        new(name, "hatchet", Form("drift"), Place.Rough, Work.Cheeks, 3, null);
}
