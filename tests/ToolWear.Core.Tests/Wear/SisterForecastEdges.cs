using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

public sealed class SisterForecastEdges
{
    [Fact]
    public void No_tools_give_no_forecasts()
    {
        Assert.Empty(SisterForecasts.Of([]).Tools);
        Assert.False(SisterForecasts.Of([]).FollowedToItsLimit);
        Assert.Empty(SisterForecasts.OfAll([], TestContext.Current.CancellationToken));
    }

    [Fact]
    public void What_cannot_be_forecast_says_why()
    {
        ImmutableArray<Estimated> tools = SisterForecasts
            .Of([
                Histories.One("A", 9, [(9, 0.2)], limitMm: null),
                Histories.Of("B", 9, [Histories.Segment(0, [(20, 0.5)]), new WearSegment(null, [])]),
                Histories.One("C", 9, [(9, 0.2)]),
            ])
            .Tools;
        Assert.Equal(new NotEnoughData(0, 1, "no size is set at which it is worn out"), tools[0]);
        Assert.Equal(new NotEnoughData(0, 1, "its size after the last rework is not known"), tools[1]);
        Assert.IsType<SisterForecast>(tools[2]);
        Assert.IsType<NotEnoughData>(SisterForecasts.Of([Histories.One("A", 9, [], limitMm: null)]).Tools[0]);
    }

    [Fact]
    public void What_a_dressed_tool_showed_before_still_teaches_its_sisters()
    {
        WearHistory target = Histories.One("A", 0, []);
        WearHistory dressed = Histories.Of("B", 3, [Histories.Segment(0, [(10, 0.4), (20, 0.8)]), new(null, [])]);
        Assert.True(Life(Of(target, dressed)) < 0.8 * Life(Of(target)));
    }

    [Fact]
    public void All_readings_zero_mean_a_long_life()
    {
        SisterForecast forecast = Of(Histories.One("A", 40, [(10, 0), (20, 0), (30, 0), (40, 0)]));
        Assert.True(Life(forecast) > 60);
        Assert.InRange(forecast.WearNowMm, -0.02, 0.05);
    }

    [Fact]
    public void Negative_wear_is_no_fault()
    {
        SisterForecast forecast = Of(Histories.One("A", 12, [(4, -0.1), (8, -0.05), (12, 0.02)]));
        Assert.True(forecast.HeatsLeft.Q05 > 0);
        Assert.True(forecast.ChancePastLimitNow < 0.01);
    }

    [Fact]
    public void A_tool_past_its_limit_has_no_heats_left()
    {
        SisterForecast forecast = Of(Histories.One("A", 60, [(20, 0.4), (40, 0.75), (60, 1.1)]));
        Assert.True(forecast.AtOrPastLimit);
        Assert.Equal(HeatsLeft.None, forecast.HeatsLeft);
        Assert.True(forecast.ChancePastLimitNow > 0.99);
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(50)]
    public void The_limit_may_be_very_small_or_very_large(double limitMm)
    {
        WearHistory history = Histories.One(
            "A",
            30,
            [(10, 0.16 * limitMm), (20, 0.34 * limitMm), (30, 0.5 * limitMm)],
            limitMm,
            0.01 * limitMm
        );
        SisterForecast same = Of(Histories.One("A", 30, [(10, 0.16), (20, 0.34), (30, 0.5)], 1, 0.01));
        SisterForecast forecast = Of(history);
        Near.Relative(same.HeatsLeft.Q50!.Value, forecast.HeatsLeft.Q50, 1e-9, "left");
        Near.Relative(limitMm * same.WearNowMm, forecast.WearNowMm, 1e-9, "wear");
    }

    [Fact]
    public void Five_hundred_readings_pin_the_life_down()
    {
        // to nine tenths of the limit: the last part cannot be known before it is seen
        SisterForecast forecast = Of(
            Histories.One("A", 90, Enumerable.Range(1, 500).Select(j => (0.18 * j, 0.008 * 0.18 * j)))
        );
        Estimate life = Assert.IsType<Estimate>(forecast.LifeHeats);
        Assert.InRange(life.Value, 90, 110);
        Assert.True(life.High90 / life.Low90 < 1.5);
    }

    [Fact]
    public void Two_hundred_sisters_do_not_run_out_of_numbers()
    {
        List<WearHistory> kind =
        [
            .. Enumerable.Range(0, 200).Select(i => Histories.One($"T{i}", 40, [(20 + (i % 7), 0.3), (40, 0.55)])),
        ];
        SisterForecast forecast = Assert.IsType<SisterForecast>(SisterForecasts.Of(kind).Tools[100]);
        Assert.InRange(Life(forecast), 50, 70);
    }

    [Fact]
    public void Tools_that_contradict_each_other_are_still_forecast()
    {
        SisterForecast forecast = Of(
            Histories.One("A", 5, [(5, 0.7)], guessHeats: 300),
            Histories.One("B", 900, [(300, 0.1), (600, 0.2), (900, 0.3)])
        );
        Assert.True(double.IsFinite(Life(forecast)));
        Assert.NotNull(forecast.HeatsLeftIfNotPast.Q95);
    }

    [Fact]
    public void Eleven_tools_take_less_than_twenty_megabytes()
    {
        List<WearHistory> kind = SimulatedKind.Of(3, 11, mostReadings: 8);
        _ = SisterForecasts.Of(kind);
        long before = GC.GetAllocatedBytesForCurrentThread();
        _ = SisterForecasts.Of(kind);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 20_000_000);
    }

    [Fact]
    public void A_gross_error_is_flagged_and_not_deleted()
    {
        ImmutableArray<Estimated> tools = SisterForecasts.Of(Histories.Case("s05")).Tools;
        SuspectReading suspect = Assert.Single(Assert.IsType<SisterForecast>(tools[0]).Suspect);
        Assert.Equal((0, 2), (suspect.Segment, suspect.Reading));
        Assert.True(suspect.Chance > 0.9);
        Assert.Empty(Assert.IsType<SisterForecast>(tools[1]).Suspect);
    }

    [Fact]
    public void A_kind_is_followed_to_its_limit_by_a_reading_in_the_last_two_fifths()
    {
        Assert.False(SisterForecasts.Of([Histories.One("A", 9, [(9, 0.47)])]).FollowedToItsLimit);
        Assert.True(SisterForecasts.Of([Histories.One("A", 9, [(9, 0.481)])]).FollowedToItsLimit);
        Assert.True(SisterForecasts.Of([Histories.One("A", 9, [(9, 0.8)])]).FollowedToItsLimit);
        Assert.False(SisterForecasts.Of([Histories.One("A", 9, [(9, 0.9)])]).FollowedToItsLimit);
    }

    private static SisterForecast Of(params WearHistory[] kind) =>
        Assert.IsType<SisterForecast>(SisterForecasts.Of(kind).Tools[0]);

    private static double Life(SisterForecast forecast) => Assert.IsType<Estimate>(forecast.LifeHeats).Value;
}
