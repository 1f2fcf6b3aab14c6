using ToolWear.Core.Measure;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Core.Wear.Sisters;
using ToolWear.Testing.Wear;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

/// <summary>Tools that were thrown out as worn teach their sisters, whether anybody measured them or not.</summary>
public sealed class LivesTeachTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Six_drifts_thrown_out_after_some_thirty_heats_say_how_long_the_seventh_lasts(bool haveSizes)
    {
        Story story = new();
        for (int i = 0; i < 6; i++)
        {
            Work(story, $"R{i}", 30 + i, haveSizes);
            story.Enter(Story.Scrapped($"R{i}", story.Today));
        }

        Work(story, "R6", 1, haveSizes);
        GaugeForecast gauge = ShopForecasts.Of(story.Shop).Of(story.Tool("R6").Id).Gauges[0];
        SisterForecast forecast = Assert.IsType<SisterForecast>(gauge.Outlook);
        Estimate life = Assert.IsType<Estimate>(forecast.LifeHeats);
        Assert.InRange(life.Value, 28, 36);
        Assert.True(life.High90 < 70, $"{life}");
        Assert.InRange(forecast.UsualHeats, 26, 38);
        Assert.Equal(6, forecast.Teachers);
        Assert.Equal(haveSizes, gauge.WearNowMm is not null);
        Assert.False(gauge.FollowedToItsLimit);
        Assert.Equal(haveSizes, gauge.SizeNowMm is not null);
    }

    [Fact]
    public void A_tool_that_was_measured_last_counts_by_that_size_alone()
    {
        Story story = new();
        Work(story, "R0", 30, haveSizes: true);
        story.Enter(Story.Measured("R0", story.Today, mm: 15.5));
        story.Enter(Story.Scrapped("R0", story.Today));
        Assert.False(ShopForecasts.Of(story.Shop).Of(story.Tool("R0").Id).Gauges[0].History.Wear.IsThrownOut);
    }

    [Fact]
    public void What_is_thrown_out_counts_as_a_reading_near_the_limit()
    {
        WearHistory target = Histories.One("A", 5, []);
        WearHistory thrown = Histories.One("B", 33, [(12, 0.3)]) with { IsThrownOut = true };
        // the plain form: a reading at the limit, whose variance has .15^2 beside sigma^2 and rounding
        PlainForecast plain = new([target, thrown], 0);
        SisterForecast forecast = Assert.IsType<SisterForecast>(SisterForecasts.Of([target, thrown]).Tools[0]);
        Assert.Equal(plain.F(20), forecast.ChancePastLimit(20), 1e-5);
        Assert.Equal(plain.F(60), forecast.ChancePastLimit(60), 1e-5);
        Assert.NotEqual(target with { IsThrownOut = true }, target);
    }

    private static void Work(Story story, string mark, int heats, bool haveSizes)
    {
        Tool drift = Story.Drift(mark);
        GaugeMark unsized = drift.GaugeMarks[0] with { Start = null, Least = null };
        story.Enter(new Core.Ledger.ToolAdded(haveSizes ? drift : drift with { GaugeMarks = [unsized] }));
        story.Open("s" + mark);
        story.Enter(Story.Worked("s" + mark, mark, heats));
        story.Close("s" + mark);
    }
}
