using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Lifetimes;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Core.Wear.Verdicts;
using Xunit;
using static ToolWear.Core.Tests.Shops.Story;

namespace ToolWear.Core.Tests.Wear;

/// <summary>Cracks and breaks gathered from a ledger, and what they take from a tool's next session.</summary>
public sealed class ShopFailuresTests
{
    private readonly Story story = new();

    public ShopFailuresTests() => story.Open("s1");

    [Fact]
    public void A_tool_fails_at_its_weighted_heats_when_first_found_cracked()
    {
        Make("R1", 12);
        // opening counts a quarter for a rough drift
        story.Enter(Worked("s1", "R1", 8, Work.Opening));
        Find("R1", Finding.Cracked);
        story.Enter(Scrap("R1", ScrapCause.Cracked));
        Assert.Equal([new WatchedLife(14, true)], Gathered().Lives);
    }

    [Theory]
    [InlineData(Finding.Broken, true)]
    [InlineData(Finding.Cracked, true)]
    [InlineData(Finding.HeatChecked, false)]
    [InlineData(Finding.Soft, false)]
    public void Only_a_crack_and_a_break_are_failures(Finding finding, bool isFailure)
    {
        Make("R1", 5);
        Find("R1", finding);
        Assert.Equal([new WatchedLife(5, isFailure)], Gathered().Lives);
    }

    [Theory]
    [InlineData(ScrapCause.Broken, true)]
    [InlineData(ScrapCause.Cracked, true)]
    [InlineData(ScrapCause.Worn, false)]
    [InlineData(ScrapCause.Lost, false)]
    public void A_scrapped_tool_failed_only_where_it_cracked_or_broke(ScrapCause cause, bool isFailure)
    {
        Make("R1", 5);
        story.Enter(Scrap("R1", cause));
        Assert.Equal([new WatchedLife(5, isFailure)], Gathered().Lives);
    }

    [Fact]
    public void A_tool_that_was_made_into_another_did_not_fail()
    {
        Make("R1", 5);
        Make("R2", 0);
        story.Enter(Scrap("R1", ScrapCause.MadeInto) with { Into = Mark("R2") });
        Assert.Equal([new WatchedLife(5, false), new WatchedLife(0, false)], Gathered().Lives);
    }

    [Fact]
    public void Heats_worked_after_the_crack_are_no_life()
    {
        Make("R1", 5);
        Find("R1", Finding.Cracked);
        story.Close("s1");
        story.Today = Day(2);
        story.Open("s2");
        story.Enter(Worked("s2", "R1", 7));
        Assert.Equal([new WatchedLife(5, true)], Gathered().Lives);
    }

    [Fact]
    public void A_tool_in_use_enters_late_or_is_left_out()
    {
        Make("R1", 4, new ToolStart(StartedAs.InUse, Heats.Of(20), HeatsBeforeHow.Estimated));
        Make("R2", 4, ToolStart.Unknown);
        Find("R2", Finding.Cracked);
        ShopFailures gathered = Gathered();
        Assert.Equal([new WatchedLife(24, false, 20)], gathered.Lives);
        Assert.Equal(1, gathered.LeftOut);
        Assert.Equal(0, gathered.Failures);
        Assert.Equal(24, ShopFailures.HeatsFromNew(story.Shop, story.Tool("R1")));
        Assert.Null(ShopFailures.HeatsFromNew(story.Shop, story.Tool("R2")));
    }

    [Fact]
    public void A_crack_before_the_first_heat_has_no_place_on_a_scale_of_heats()
    {
        Make("R1", 0);
        Find("R1", Finding.Cracked);
        Assert.Empty(Gathered().Lives);
        Assert.Equal(1, Gathered().LeftOut);
    }

    [Fact]
    public void Another_place_or_form_is_another_sort()
    {
        Make("R1", 5);
        story.Add("F1", Place.Finish);
        story.Enter(new ToolAdded(Drift("P1") with { Form = Form("punch") }));
        Assert.Single(Gathered().Lives);
    }

    [Fact]
    public void A_steel_stands_alone_from_eight_of_its_failures_on()
    {
        for (int i = 0; i < 8; i++)
        {
            Make($"H{i}", 10 + i, steel: "H13");
            Make($"M{i}", 30, steel: "mild");
        }

        for (int i = 0; i < 7; i++)
        {
            Find($"H{i}", Finding.Cracked);
        }

        ShopFailures pooled = ShopFailures.Of(story.Shop, story.Tool("H0").Tool);
        Assert.Equal((16, 7), (pooled.Lives.Length, pooled.Failures));
        Find("H7", Finding.Broken);
        ShopFailures apart = ShopFailures.Of(story.Shop, story.Tool("H0").Tool);
        Assert.Equal((8, 8), (apart.Lives.Length, apart.Failures));
        Assert.Equal(16, ShopFailures.Of(story.Shop, story.Tool("M0").Tool).Lives.Length);
    }

    [Fact]
    public void Without_a_crack_on_record_nothing_is_said_of_cracks()
    {
        Make("R1", 5);
        SessionOutlook outlook = Outlook("R1")!;
        Assert.Null(outlook.WithCracks);
        Assert.Equal(5, outlook.Heats);
        Assert.Equal(1 - Forecast("R1").ChancePastLimit(5), outlook.ByWear);
    }

    [Fact]
    public void A_crack_on_record_takes_from_every_sister()
    {
        Make("R1", 6);
        Make("R2", 9);
        Find("R2", Finding.Cracked);
        SessionOutlook outlook = Outlook("R1")!;
        SuddenFailures cracks = SuddenFailures.Of([new WatchedLife(6, false), new WatchedLife(9, true)], 60);
        double expected = outlook.ByWear * cracks.Surviving(12) / cracks.Surviving(6);
        Near.Relative(expected, outlook.WithCracks, 1e-12, "with cracks");
        Assert.InRange(outlook.WithCracks!.Value, 0.3, outlook.ByWear - 0.01);
    }

    [Fact]
    public void A_tool_whose_heats_nobody_knows_has_no_chance_with_cracks()
    {
        story.Enter(new ToolAdded(Drift("R1") with { Start = ToolStart.Unknown }));
        story.Enter(Measured("R1", Day(1), mm: 15.9));
        Make("R2", 9);
        Find("R2", Finding.Cracked);
        SessionOutlook outlook = Outlook("R1")!;
        Assert.Equal((1, 1), (outlook.OnRecord.Failures, outlook.OnRecord.LeftOut));
        Assert.Null(outlook.WithCracks);
    }

    [Fact]
    public void A_tool_that_is_out_lasts_no_session()
    {
        Make("R1", 5);
        Find("R1", Finding.Cracked);
        Make("R2", 5);
        story.Enter(Scrap("R2", ScrapCause.Worn));
        // no size, and nobody knows for how many heats it had been worked before
        story.Enter(new ToolAdded(Drift("R3") with { GaugeMarks = [], Start = ToolStart.Unknown }));
        Assert.Null(Outlook("R1"));
        Assert.Null(Outlook("R2"));
        Assert.Null(Outlook("R3"));
    }

    private static ToolScrapped Scrap(string mark, ScrapCause cause) => new(Mark(mark), Day(1), cause, null, null);

    private void Make(string mark, int heats, ToolStart? start = null, string? steel = null)
    {
        story.Enter(new ToolAdded(Drift(mark) with { Start = start ?? ToolStart.New, Steel = steel }));
        if (heats > 0)
        {
            story.Enter(Worked("s1", mark, heats));
        }
    }

    private void Find(string mark, Finding finding) => story.Enter(LookedOver(mark, story.Today, finding));

    private ShopFailures Gathered() => ShopFailures.Of(story.Shop, Drift("R0"));

    private ToolForecast Forecast(string mark) => ShopForecasts.Of(story.Shop).Of(story.Tool(mark).Id);

    private SessionOutlook? Outlook(string mark) => SessionOutlook.Of(story.Shop, Forecast(mark));
}
