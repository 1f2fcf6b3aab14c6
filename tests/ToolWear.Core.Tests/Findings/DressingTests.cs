using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using Xunit;

namespace ToolWear.Core.Tests.Findings;

/// <summary>A slitter that gets 1.5 mm shorter every 12 heats and is held by its last 183 mm: its edge is hardly worn, and
/// yet it has only the heats up to a dressing that it has no length for.</summary>
public sealed class DressingTests
{
    private readonly Story story = new();

    public DressingTests()
    {
        story.Enter(
            new ToolAdded(
                Story.Drift("S1") with
                {
                    Form = Story.Form("slitter"),
                    Place = Place.None,
                    Steel = "H13",
                    GuessHeats = 4000,
                    GaugeMarks =
                    [
                        new("width", Wears.Smaller, Measures.Width, null, Story.Mm(34), Story.Mm(32), null, null),
                        new("overall", Wears.Smaller, Measures.Overall, null, Story.Mm(190), Story.Mm(183), null, null),
                    ],
                }
            )
        );
        for (int i = 1; i <= 4; i++)
        {
            Work(i, 12);
            story.Enter(Story.Measured("S1", story.Today, $"s{i}", mm: 34 - (0.1 * i)));
            story.Enter(
                new ToolReworked(
                    Story.Mark("S1"),
                    story.Today,
                    Rework.Dressed,
                    "overall",
                    null,
                    Story.Mm(190 - (1.5 * i)),
                    null,
                    null,
                    null
                )
            );
        }

        Work(5, 6);
        story.Enter(Story.LookedOver("S1", story.Today));
    }

    [Fact]
    public void The_shop_s_own_dressings_say_after_how_many_heats_and_what_they_take()
    {
        Dressing dressing = Dressing.Of(story.Shop, story.Tool("S1"))!;
        Assert.Equal((12, 6, 4), (dressing.After, dressing.Gone, dressing.Learned));
        Assert.Equal(6, dressing.Until);
        DressingHistory takes = Assert.Single(dressing.Takes).Value;
        Assert.Equal(1.5, takes.LossMm, 9);
        // one whole dressing more, then 12 heats, and the 6 until then; less than one is none
        Assert.Equal(18, takes.Heats(1.5));
        Assert.Equal(6, takes.Heats(1.4));
    }

    [Fact]
    public void A_dressing_that_it_has_no_length_for_ends_the_forecast_and_gives_the_verdict()
    {
        ShopForecasts all = ShopForecasts.Of(story.Shop);
        ToolForecast slitter = all.Of(story.Tool("S1").Id);
        Assert.Equal("overall", slitter.Deciding!.History.Gauge.Name);
        Assert.Equal(6, slitter.Deciding.Forecast!.HeatsLeft.Q95);
        Assert.Equal(6, slitter.HeatsLeft!.Q50!.Value, 1e-6);
        Assert.Equal(6, slitter.HeatsLeft.Q95!.Value, 1e-6);
        Assert.True(slitter.ChancePastLimit(6) < 0.05);
        Assert.Equal(1, slitter.ChancePastLimit(7));
        Assert.Equal(6, slitter.EnoughToday);
        Judged judged = all.VerdictOf(slitter);
        Assert.Equal(Verdict.NearItsLimit, judged.Verdict);
        Assert.Contains("overall", judged.Why, StringComparison.Ordinal);
        Assert.False(judged.MayBeNext);
    }

    [Fact]
    public void A_plan_counts_on_it_and_on_a_new_one_no_further_than_it_can_be_dressed()
    {
        PlaceLives lives = new ShopLives(ShopForecasts.Of(story.Shop)).At(ToolPlace.Of(story.Tool("S1").Tool));
        Assert.Equal(0, Planning.Lives.Needs(lives.Needs(6, 0.9)).Needed);
        Assert.Equal(1, Planning.Lives.Needs(lives.Needs(7, 0.9)).Needed);
        // 7 mm are four dressings: 48 heats, and 12 before the first
        Assert.Equal(60, lives.NewLife.Value);
    }

    [Fact]
    public void Two_dressings_say_nothing_yet_and_common_practice_counts()
    {
        Story young = new();
        young.Enter(new ToolAdded(story.Tool("S1").Tool));
        young.Open("a");
        young.Enter(Story.Worked("a", "S1", 5, Core.Tools.Work.Slitting));
        Dressing dressing = Dressing.Of(young.Shop, young.Tool("S1"))!;
        Assert.Equal((12, 5, 0), (dressing.After, dressing.Gone, dressing.Learned));
        Assert.Empty(dressing.Takes);
    }

    private void Work(int day, int heats)
    {
        story.Today = Story.Day(day);
        story.Open($"s{day}");
        story.Enter(Story.Worked($"s{day}", "S1", heats, Core.Tools.Work.Slitting));
        story.Close($"s{day}");
    }
}
