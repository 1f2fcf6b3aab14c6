using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Core.Wear.Verdicts;
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
    public void A_crack_outlives_the_mending_of_what_else_was_found()
    {
        Add("4140");
        Find(Finding.Cracked, ToolPart.Body);
        Find(Finding.Soft, ToolPart.WorkingEnd);
        Rework(Core.Ledger.Rework.Rehardened);
        Find(Finding.Sound);
        Assert.Equal(Verdict.Out, Judged.Verdict);
        Assert.Contains("cracked at the body", Judged.Why, StringComparison.Ordinal);
        Assert.DoesNotContain("soft", Judged.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.19, Verdict.InsideItsLimit)]
    [InlineData(0.21, Verdict.NearItsLimit)]
    public void One_chance_in_five_for_the_next_session_is_near_the_limit(double chance, Verdict expected)
    {
        // the reading at which the next session of 6 heats takes it past its limit by that chance
        double worn = 15.3;
        double fresh = 15.95;
        for (int i = 0; i < 20; i++)
        {
            double mm = (worn + fresh) / 2;
            (worn, fresh) = Read(mm).Forecast.ChancePastLimit(6) > chance ? (mm, fresh) : (worn, mm);
        }

        (ToolForecast forecast, Judged judged) = Read(worn);
        Assert.Equal(chance, forecast.ChancePastLimit(6)!.Value, 0.005);
        Assert.Equal(expected, judged.Verdict);
        Assert.Equal(expected == Verdict.InsideItsLimit, forecast.EnoughToday >= 6);
    }

    [Fact]
    public void Of_twins_that_which_is_worn_most_by_its_own_limit_is_used_next()
    {
        Add("4140");
        Tool other = Story.Drift("S2") with { Steel = "4140" };
        story.Enter(new ToolAdded(other with { GaugeMarks = [other.GaugeMarks[0] with { Least = Story.Mm(12) }] }));
        story.Open("s");
        story.Enter(Story.Worked("s", "S1", 6));
        story.Enter(Story.Worked("s", "S2", 6));
        story.Close("s");
        // 0.3 of 0.8 mm, and 0.5 of 4 mm
        story.Enter(Story.Measured("S1", story.Today, "s", 15.7));
        story.Enter(Story.Measured("S2", story.Today, "s", 15.5));
        story.Enter(Story.LookedOver("S1", story.Today));
        story.Enter(Story.LookedOver("S2", story.Today));
        Assert.Equal([story.Tool("S1").Id], NextToTake.Of(Forecasts));
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

    [Fact]
    public void A_reading_is_due_where_as_many_heats_were_worked_since_as_are_left()
    {
        Add("4140");
        story.Open("s");
        story.Enter(Story.Worked("s", "S1", 2));
        story.Close("s");
        story.Enter(Story.Measured("S1", story.Today, "s", 15.95));
        story.Open("s2");
        story.Enter(Story.Worked("s2", "S1", 3));
        ToolForecast tool = Forecasts.Of(story.Tool("S1").Id);
        double left = tool.Deciding!.Forecast!.HeatsLeft.Q50!.Value;
        Assert.True(left > 6, $"{left} heats left");
        // 3 heats over half of those that were left at the reading
        Assert.Equal(3 / ((3 + left) / 2), ShopVerdicts.ReadingOverdue(tool), 1e-12);
    }

    private static (ToolForecast Forecast, Judged Judged) Read(double mm)
    {
        Story one = new();
        one.Add("S1");
        one.Open("s");
        one.Enter(Story.Worked("s", "S1", 6));
        one.Close("s");
        one.Enter(Story.Measured("S1", one.Today, "s", mm));
        one.Enter(Story.LookedOver("S1", one.Today));
        ShopForecasts all = ShopForecasts.Of(one.Shop);
        ToolForecast forecast = all.Of(one.Tool("S1").Id);
        return (forecast, all.VerdictOf(forecast));
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
