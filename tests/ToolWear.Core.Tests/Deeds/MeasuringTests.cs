using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using Xunit;

namespace ToolWear.Core.Tests.Deeds;

/// <summary>A reading: the session it counts after, and the doubt it raises.</summary>
public sealed class MeasuringTests
{
    private readonly Story story = new();

    public MeasuringTests()
    {
        story.Add("R1");
        story.Open("s");
        story.Enter(Story.Worked("s", "R1", 20));
        story.Close("s");
    }

    [Fact]
    public void It_counts_after_the_last_session_unless_the_tool_was_reworked_since()
    {
        Assert.Equal("s", Read(15.8).Entry.Session);
        Assert.Equal("named", Read(15.8, "named").Entry.Session);
        story.Today = Story.Day(2);
        story.Enter(Story.Reworked("R1", Story.Day(2)));
        Assert.Null(Read(15.8).Entry.Session);
    }

    [Fact]
    public void A_session_of_a_later_day_is_none_of_its_own()
    {
        story.Today = Story.Day(5);
        story.Open("later");
        story.Enter(Story.Worked("later", "R1"));
        Assert.Equal("s", Read(15.8).Entry.Session);
    }

    [Fact]
    public void What_lies_outside_the_expected_range_is_doubted_and_nothing_is_without_a_forecast()
    {
        ToolInShop tool = story.Tool("R1");
        ToolForecast before = ShopForecasts.Of(story.Shop).Of(tool.Id);
        ExpectedReading expected = Measuring.Expected(story.Shop, tool, before, "width")!;
        Assert.True(expected.Least < expected.Greatest);
        Assert.Null(Read(expected.Least.Mm, before: before).Doubt);
        Assert.Null(Read(expected.Greatest.Mm, before: before).Doubt);
        Assert.Equal(expected, Read(expected.Least.Mm - 0.01, before: before).Doubt);
        Assert.Equal(expected, Read(expected.Greatest.Mm + 0.01, before: before).Doubt);
        Assert.Null(Read(1).Doubt);
        Assert.Null(Measuring.Expected(story.Shop, tool, before, "nose"));
    }

    [Fact]
    public void Forty_nine_sound_readings_in_fifty_are_expected()
    {
        ToolInShop tool = story.Tool("R1");
        ToolForecast before = ShopForecasts.Of(story.Shop).Of(tool.Id);
        ExpectedReading expected = Measuring.Expected(story.Shop, tool, before, "width")!;
        // what was asked of the forecast itself: one in a hundred above, one below
        Core.Wear.Figures.Limits wear = before.Deciding!.Forecast!.NextReading(20, 0.98);
        Assert.Equal(16 - wear.High!.Value, expected.Least.Mm, 1e-5);
        Assert.Equal(16 - wear.Low, expected.Greatest.Mm, 1e-5);
    }

    [Fact]
    public void The_tools_of_the_last_session_are_measured_first_and_those_that_did_not_work_last()
    {
        story.Add("R0");
        story.Add("R2");
        story.Open("last");
        story.Enter(Story.Worked("last", "R2"));
        (System.Collections.Immutable.ImmutableArray<long> tools, int wanting) = ToMeasure.List(story.Shop);
        Assert.Equal(["R2", "R1", "R0"], tools.Select(id => story.Shop.Tools[id].Mark.Text));
        Assert.Equal(2, wanting);
        story.Enter(Story.Measured("R2", Story.Day(1), "last"));
        Assert.Equal(0, ToMeasure.HeatsSince(story.Shop, story.Tool("R2")));
        Assert.Equal(1, ToMeasure.List(story.Shop).Wanting);
    }

    private Measuring Read(double mm, string? session = null, ToolForecast? before = null) =>
        Measuring.Of(story.Shop, story.Tool("R1"), before, Story.Measured("R1", Story.Day(2), session, mm));
}
