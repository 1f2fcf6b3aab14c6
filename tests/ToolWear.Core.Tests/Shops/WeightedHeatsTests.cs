using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using Xunit;
using static ToolWear.Core.Tests.Shops.Story;

namespace ToolWear.Core.Tests.Shops;

/// <summary>Heats of other work count by the shop's factors, times the pattern's load. Common practice, no source.</summary>
public sealed class WeightedHeatsTests
{
    private readonly Story story = new();

    [Theory]
    [InlineData(Place.Rough, Work.Cheeks, 1)]
    [InlineData(Place.Rough, Work.Opening, 0.25)]
    [InlineData(Place.Rough, Work.Sizing, 0.25)]
    [InlineData(Place.Rough, Work.Other, 1)]
    [InlineData(Place.Second, Work.Cheeks, 1)]
    [InlineData(Place.Second, Work.Opening, 0.25)]
    [InlineData(Place.Second, Work.Sizing, 0.25)]
    [InlineData(Place.Finish, Work.Sizing, 1)]
    [InlineData(Place.Finish, Work.Cheeks, 4)]
    [InlineData(Place.Finish, Work.Opening, 1)]
    [InlineData(Place.Opener, Work.Opening, 1)]
    [InlineData(Place.Opener, Work.Cheeks, 1)]
    [InlineData(Place.None, Work.Cheeks, 1)]
    public void The_usual_factors_are_those_of_the_product_page(Place place, Work work, double factor) =>
        Assert.Equal(3 * factor, Weighted(place, work));

    [Fact]
    public void The_shop_may_say_its_own_factor_and_take_it_back()
    {
        story.Enter(new SettingChanged("factor_rough_opening", "0.4"));
        Assert.Equal(1.2, Weighted(Place.Rough, Work.Opening), 12);
        story.Enter(new SettingChanged("factor_rough_opening", ""));
        Assert.Equal(0.75, story.Shop.Weighted(Drift("R1"), Worked("s1", "R1", 3, Work.Opening)));
    }

    [Fact]
    public void The_main_work_counts_one_for_one_whatever_a_factor_says()
    {
        story.Enter(new SettingChanged("factor_rough_cheeks", "7"));
        Assert.Equal(3, Weighted(Place.Rough, Work.Cheeks));
    }

    [Fact]
    public void A_half_heat_counts_half()
    {
        story.Open("s1");
        HeatsWorked half = Worked("s1", "R1") with { Heats = Core.Measure.Heats.Half };
        Assert.Equal(0.5, story.Shop.Weighted(Drift("R1"), half));
    }

    [Fact]
    public void The_load_of_the_patterns_stage_multiplies()
    {
        Pattern(
            Stage(Place.Rough, Work.Cheeks, 1.5),
            Stage(Place.Rough, Work.Opening, 2),
            Stage(Place.Finish, null, 9)
        );
        Assert.Equal(4.5, Weighted(Place.Rough, Work.Cheeks, "axe"));
        Assert.Equal(1.5, story.Shop.Weighted(Drift("R1"), Worked("s1", "R1", 3, Work.Opening)));
    }

    [Fact]
    public void Other_work_takes_the_load_of_the_first_stage_of_that_form_and_place()
    {
        Pattern(
            Stage(Place.Finish, null, 9),
            Stage(Place.Rough, Work.Cheeks, 1.5),
            Stage(Place.Rough, Work.Opening, 2)
        );
        Assert.Equal(3 * 1.5, Weighted(Place.Rough, Work.Other, "axe"));
    }

    [Fact]
    public void A_stage_that_names_no_load_counts_one()
    {
        Pattern(Stage(Place.Rough, Work.Cheeks, null));
        Assert.Equal(3, Weighted(Place.Rough, Work.Cheeks, "axe"));
    }

    [Fact]
    public void A_pattern_that_has_no_such_stage_or_is_not_known_counts_one()
    {
        Pattern(Stage(Place.Finish, null, 9));
        Assert.Equal(3, Weighted(Place.Rough, Work.Cheeks, "axe"));
        story.Close("s1");
        story.Open("s2", pattern: "unheard of");
        Assert.Equal(3, story.Shop.Weighted(Drift("R1"), Worked("s2", "R1", 3)));
    }

    private void Pattern(params PatternStage[] stages) => story.Enter(new PatternDescribed("axe", [.. stages]));

    private static PatternStage Stage(Place place, Work? work, double? load) =>
        new("stage", null, Form("drift"), place, work, null, load);

    private double Weighted(Place place, Work work, string? pattern = null)
    {
        story.Add("R1", place);
        story.Open("s1", pattern: pattern);
        story.Enter(Worked("s1", "R1", 3, work));
        ToolInShop tool = story.Tool("R1");
        return story.Shop.Weighted(tool.Tool, (HeatsWorked)tool.Events[0].What);
    }
}
