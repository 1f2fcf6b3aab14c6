using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

public sealed class CostTests
{
    private static readonly ToolPlace Rough = new("hatchet", Place.Rough, "drift");

    [Fact]
    public void A_cost_is_steel_hours_and_treatment_and_the_rest_is_the_usual_of_its_place()
    {
        Story story = new();
        story.Enter(new SettingChanged("hour_rate", "40"));
        Add(story, "R1", new ToolCost(2, 0.5m, 0.25m, null));
        Add(story, "R2", new ToolCost(4, null, null, null));
        PlaceCost cost = PlaceCost.Of(story.Shop, story.Tool("R2"));
        Assert.Equal(4 + (0.75m * 40), cost.Total);
        Assert.Equal("forge hours, grind hours", string.Join(", ", cost.Assumed));
        Assert.Null(cost.Treatment);
        Assert.Equal(3 + (0.75m * 40), PlaceCost.Usual(story.Shop, Rough).Total);
        Assert.Null(PlaceCost.Usual(story.Shop, new ToolPlace(null, Place.None, "fuller")).Total);
    }

    [Fact]
    public void The_true_life_of_a_tool_that_came_in_used_has_its_heats_before_in_it()
    {
        Story story = new();
        story.Enter(
            new ToolAdded(
                Story.Drift("R1") with
                {
                    Start = new ToolStart(StartedAs.InUse, Heats.Of(30), HeatsBeforeHow.Estimated),
                }
            )
        );
        story.Open("s1");
        story.Enter(Story.Worked("s1", "R1", 20));
        story.Close("s1");
        story.Enter(Story.Scrapped("R1", Story.Day(1)));
        Assert.Equal(50, Assert.Single(Costs(story).Places).TrueLife);
    }

    [Fact]
    public void Scrapped_tools_give_the_true_cost_a_heat_with_their_reworks()
    {
        Story story = new();
        story.Enter(new SettingChanged("hour_rate", "40"));
        Add(story, "R1", new ToolCost(2, 0.5m, 0, 0));
        story.Open("s1");
        story.Enter(Story.Worked("s1", "R1", 20));
        story.Close("s1");
        story.Enter(
            new ToolReworked(Story.Mark("R1"), Story.Day(1), Rework.Reforged, null, null, null, 0.25m, 3, null)
        );
        story.Enter(Story.Scrapped("R1", Story.Day(1)));
        PlaceHeatCost cost = Assert.Single(Costs(story).Places);

        // 2 + 0.5 x 40 = 22 to make, 0.25 x 40 + 3 = 13 to re-forge, over 20 heats
        Assert.Equal((1, 20.0), (cost.Scrapped, cost.TrueLife!.Value));
        Assert.Equal(35.0 / 20, cost.TrueCostAHeat!.Value, 12);
        Estimate forecast = Assert.IsType<Estimate>(cost.CostAHeat);
        Assert.Equal(22 / cost.Life.Value, forecast.Value, 12);
        Assert.True(forecast.Low90 < forecast.Value && forecast.Value < forecast.High90);
    }

    [Fact]
    public void A_head_costs_its_heats_and_a_stage_without_cost_is_named()
    {
        Story story = new();
        Add(story, "R1", new ToolCost(12, 0, 0, 0));
        story.Enter(
            new PatternDescribed(
                "hatchet",
                [
                    new PatternStage("cheeks", "hatchet", Story.Form("drift"), Place.Rough, Work.Cheeks, 3, null),
                    new PatternStage("bit", null, Story.Form("fuller"), Place.None, Work.Fullering, 2, null),
                ]
            )
        );
        ToolingCosts costs = Costs(story);
        HeadCost head = Assert.Single(costs.Heads);
        Estimate aHeat = Assert.IsType<Estimate>(costs.Places[0].CostAHeat);
        Assert.Equal(3 * aHeat.Value, Assert.IsType<Estimate>(head.CostAHead).Value, 12);
        Assert.Equal("bit", Assert.Single(head.WithoutStages));
    }

    [Fact]
    public void A_cost_that_nobody_noted_is_not_made_up()
    {
        Assert.IsType<NotEnoughData>(ToolingCosts.AHeat(null, new Estimate(60, 40, 80)));
        Assert.IsType<NotEnoughData>(ToolingCosts.AHeat(10, new Estimate(0, 0, 5)));
    }

    private static ToolingCosts Costs(Story story) => ToolingCosts.Of(new ShopLives(ShopForecasts.Of(story.Shop)));

    private static void Add(Story story, string mark, ToolCost cost) =>
        story.Enter(new ToolAdded(Story.Drift(mark) with { Cost = cost }));
}
