using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using Xunit;
using Kind = ToolWear.Core.Findings.Verdict;

namespace ToolWear.Core.Tests.Shops;

/// <summary>Tools that are lent out and come back.</summary>
public sealed class LoanTests
{
    [Fact]
    public void A_lent_tool_is_out_of_service_until_it_is_taken_back_and_then_wants_looking_over()
    {
        Story story = new();
        story.Add("R1");
        story.Enter(Story.LookedOver("R1", Story.Day(1)));
        ToolLent lent = new(Story.Mark("R1"), Story.Day(1), "a smith near by", null);
        story.Enter(lent);
        Assert.Equal((ToolState.SetAside, lent), (story.Tool("R1").State, story.Tool("R1").Lent));
        story.Today = Story.Day(9);
        story.Enter(new ToolTakenBack(Story.Mark("R1"), Story.Day(9), null));
        Assert.Equal(ToolState.InService, story.Tool("R1").State);
        Assert.Null(story.Tool("R1").Lent);
        Judged judged = VerdictOf(story);
        Assert.Equal(
            new Reason(Kind.LookItOver, "back from a loan on 2026-05-09 and not found sound since"),
            judged.Reasons[0]
        );
        story.Enter(Story.LookedOver("R1", Story.Day(9)));
        Assert.NotEqual(Kind.LookItOver, VerdictOf(story).Verdict);

        // a session of that day, opened later, does not put the return behind the finding
        story.Open("later");
        Assert.NotEqual(Kind.LookItOver, VerdictOf(story).Verdict);
    }

    [Fact]
    public void What_a_crack_says_outweighs_a_loan()
    {
        Story story = new();
        story.Add("R1");
        story.Enter(Story.LookedOver("R1", Story.Day(1), Finding.Cracked));
        story.Enter(new ToolLent(Story.Mark("R1"), Story.Day(1), "x", null));
        story.Enter(new ToolTakenBack(Story.Mark("R1"), Story.Day(1), null));
        Assert.Equal(Kind.Out, VerdictOf(story).Verdict);
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        Story story = new();
        story.Add("R1");
        Assert.Equal("R1: say who has it", story.Refused(new ToolLent(Story.Mark("R1"), Story.Day(1), " ", null)));
        Assert.Equal("R1 is not lent out", story.Refused(new ToolTakenBack(Story.Mark("R1"), Story.Day(1), null)));
        story.Enter(new ToolSetAside(Story.Mark("R1"), Story.Day(1), null));
        Assert.Equal("R1 is not lent out", story.Refused(new ToolTakenBack(Story.Mark("R1"), Story.Day(1), null)));
        Assert.Equal(
            "R1 is set aside, so it cannot be lent",
            story.Refused(new ToolLent(Story.Mark("R1"), Story.Day(1), "Ada", null))
        );
        story.Enter(new ToolBroughtBack(Story.Mark("R1"), Story.Day(1), null));
        long lent = story.Enter(new ToolLent(Story.Mark("R1"), Story.Day(1), "Ada", null));
        Assert.Equal(
            "R1 is lent to Ada: take it back instead",
            story.Refused(new ToolBroughtBack(Story.Mark("R1"), Story.Day(1), null))
        );
        story.Open("s", Story.Day(1));
        story.Today = Story.Day(2);
        story.Close("s");
        story.Open("t");
        // heats on a lent tool happened; they are told, not refused
        story.CrossOut(story.Enter(Story.Worked("t", "R1")));
        // a loan can be taken back while nothing rests on it
        story.CrossOut(lent);
        Assert.Equal(ToolState.InService, story.Tool("R1").State);
        story.Enter(Story.Worked("t", "R1"));
    }

    [Fact]
    public void A_lost_tool_is_lent_no_more()
    {
        Story story = new();
        story.Add("R1");
        story.Enter(new ToolLent(Story.Mark("R1"), Story.Day(1), "x", null));
        story.Enter(new ToolLookedFor(Story.Mark("R1"), Story.Day(1), Seen: false, null));
        Assert.NotNull(story.Tool("R1").Lent);
        story.Enter(new ToolScrapped(Story.Mark("R1"), Story.Day(1), ScrapCause.Lost, null, null));
        Assert.Null(story.Tool("R1").Lent);
        story.Refused(new ToolLookedFor(Story.Mark("R1"), Story.Day(2), Seen: true, null));
    }

    private static Judged VerdictOf(Story story) => ShopForecasts.Of(story.Shop).VerdictOf(story.Tool("R1").Id)!;
}
