using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.OneTool;
using Xunit;

namespace ToolWear.Core.Tests.Findings;

/// <summary>What brings a tool back, finding by finding, and what it takes until then.</summary>
public sealed class LookedOverTests
{
    private readonly Story story = new();

    [Fact]
    public void A_cracked_struck_end_comes_back_once_it_is_cut_back_read_and_found_sound()
    {
        Add("4140");
        Find(Finding.Cracked, ToolPart.StruckEnd);
        Assert.Equal(Verdict.DressFirst, Judged.Verdict);
        Assert.Equal("cut back first", Judged.Shown);
        Find(Finding.Sound);
        Assert.Equal(Verdict.DressFirst, Judged.Verdict);
        // a dressed edge is no cut back end
        Rework(Core.Ledger.Rework.Dressed);
        Assert.Equal(Verdict.DressFirst, Judged.Verdict);
        Rework(Core.Ledger.Rework.Dressed, ToolForm.Overall, 180);
        Assert.Equal(Verdict.LookItOver, Judged.Verdict);
        Assert.False(Judged.MayBeNext);
        Find(Finding.Sound);
        Assert.True(Judged.MayBeNext);
    }

    [Theory]
    [InlineData(ToolPart.WorkingEnd)]
    [InlineData(ToolPart.Body)]
    [InlineData(null)]
    public void Nothing_brings_back_a_crack_elsewhere(ToolPart? part)
    {
        Add("mild");
        Find(Finding.Cracked, part);
        foreach (Rework what in Enum.GetValues<Rework>())
        {
            Rework(what, ToolForm.Overall, 170);
        }

        Find(Finding.Sound);
        Assert.Equal(Verdict.Out, Judged.Verdict);
        ToolForecast forecast = Forecasts.Of(story.Tool("S1").Id);
        Assert.Null(forecast.HeatsLeft);
        Assert.Null(forecast.EnoughToday);
        Assert.DoesNotContain(Judged.Reasons, each => each.Verdict == Verdict.MeasureIt);
    }

    [Fact]
    public void Nothing_is_left_of_a_tool_that_is_scrapped()
    {
        Add("4140");
        Assert.NotNull(Forecasts.Of(story.Tool("S1").Id).HeatsLeft);
        story.Enter(Story.Scrapped("S1", story.Today));
        Assert.Null(Forecasts.Of(story.Tool("S1").Id).HeatsLeft);
    }

    [Theory]
    [InlineData("H13", Core.Ledger.Rework.Tempered, true)]
    [InlineData(null, Core.Ledger.Rework.Tempered, true)]
    [InlineData("H13", Core.Ledger.Rework.Dressed, false)]
    [InlineData("4140", Core.Ledger.Rework.Rehardened, true)]
    [InlineData("4140", Core.Ledger.Rework.Dressed, false)]
    public void A_stuck_tool_of_steel_that_hardens_wants_more_than_a_look(string? steel, Rework rework, bool helps)
    {
        Add(steel);
        Find(Finding.Stuck);
        Find(Finding.Sound);
        Assert.Equal(Verdict.DressFirst, Judged.Verdict);
        Rework(rework);
        Find(Finding.Sound);
        Assert.Equal(helps, Judged.MayBeNext);
    }

    [Fact]
    public void A_stuck_tool_of_mild_steel_wants_a_sound_look()
    {
        Add("mild");
        Find(Finding.Stuck);
        Assert.Equal(Verdict.LookItOver, Judged.Verdict);
        Find(Finding.Sound);
        Assert.True(Judged.MayBeNext);
    }

    [Fact]
    public void A_bent_tool_that_hardens_is_straightened_and_tempered_in_this_order()
    {
        Add("4140");
        Find(Finding.Bent);
        Assert.Equal("straighten first", Judged.Shown);
        Rework(Core.Ledger.Rework.Tempered);
        Assert.Equal("straighten first", Judged.Shown);
        Rework(Core.Ledger.Rework.Straightened);
        Assert.Equal("temper first", Judged.Shown);
        Rework(Core.Ledger.Rework.Tempered);
        Assert.Equal(Verdict.LookItOver, Judged.Verdict);
    }

    [Fact]
    public void What_was_ground_out_counts_again_from_the_next_reading()
    {
        Add("4140");
        Find(Finding.HeatChecked);
        Rework(Core.Ledger.Rework.Dressed);
        Find(Finding.Sound);
        Assert.Equal(Verdict.MeasureIt, Judged.Verdict);
        Assert.False(Judged.MayBeNext);
        story.Enter(Story.Measured("S1", story.Today));
        Assert.True(Judged.MayBeNext);
    }

    [Fact]
    public void No_finding_is_hidden_by_another()
    {
        Add("4140");
        Find(Finding.Mushroomed);
        Find(Finding.Soft, ToolPart.WorkingEnd);
        Find(Finding.Cracked, ToolPart.Body);
        Find(Finding.Blunt);
        Assert.Equal(
            [Verdict.Out, Verdict.Out, Verdict.DressFirst, Verdict.DressFirst],
            Judged.Reasons.Take(4).Select(each => each.Verdict)
        );
        Assert.All(
            ["mushroomed", "soft", "cracked", "blunt"],
            word => Assert.Contains(word, Judged.Why, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_loose_handle_is_no_work_for_the_grinder()
    {
        Add("4140");
        Find(Finding.LooseHandle);
        Rework(Core.Ledger.Rework.Dressed);
        Assert.Equal("re-handle first", Judged.Shown);
        Rework(Core.Ledger.Rework.Rehandled);
        Find(Finding.Sound);
        Assert.True(Judged.MayBeNext);
    }

    [Fact]
    public void A_tool_that_came_in_past_its_scrap_size_is_past_its_limit_and_one_without_has_no_limit_known()
    {
        Tool drift = Story.Drift("S1");
        GaugeMark width = drift.GaugeMarks[0];
        story.Enter(
            new ToolAdded(drift with { Start = ToolStart.Unknown, GaugeMarks = [width with { Start = null }] })
        );
        story.Enter(Story.Measured("S1", story.Today, mm: 15));
        Find(Finding.Sound);
        Assert.Equal(Verdict.PastItsLimit, Judged.Verdict);
        story.Enter(
            new ToolAdded(Story.Drift("S2") with { GaugeMarks = [width with { Least = null, Greatest = null }] })
        );
        Assert.Equal(Verdict.NoLimitKnown, Forecasts.VerdictOf(story.Tool("S2").Id)!.Verdict);
        Assert.Empty(NextToTake.Of(Forecasts));
    }

    [Theory]
    [InlineData(Finding.Mushroomed, false)]
    [InlineData(Finding.Cracked, false)]
    [InlineData(Finding.Sound, true)]
    public void A_plan_counts_on_no_tool_that_may_not_be_used(Finding finding, bool counts)
    {
        Add("4140");
        Find(finding);
        ShopLives lives = new(Forecasts);
        Assert.Equal(counts, lives.InService(ToolPlace.Of(story.Tool("S1").Tool))[0].WhyNot is null);
        Assert.Equal(counts, NextToTake.Of(Forecasts).Contains(story.Tool("S1").Id));
    }

    private ShopForecasts Forecasts => ShopForecasts.Of(story.Shop);

    private Judged Judged => Forecasts.VerdictOf(story.Tool("S1").Id)!;

    private void Add(string? steel) => story.Enter(new ToolAdded(Story.Drift("S1") with { Steel = steel }));

    private void Find(Finding finding, ToolPart? part = null) =>
        story.Enter(new ToolLookedOver(Story.Mark("S1"), story.Today, finding, null, null, part));

    private void Rework(Rework what, string? gauge = null, double? after = null) =>
        story.Enter(
            new ToolReworked(
                Story.Mark("S1"),
                story.Today,
                what,
                gauge,
                null,
                after is { } mm ? Story.Mm(mm) : null,
                null,
                null,
                null
            )
        );
}
