using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Core.Wear.Sisters;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

public sealed class WholeToolTests
{
    private static readonly SisterForecast Slow = Of(Histories.One("A", 30, [(10, 0.1), (30, 0.3)]));
    private static readonly SisterForecast Fast = Of(Histories.One("A", 30, [(10, 0.2), (30, 0.6)]));
    private static readonly SisterForecast Past = Of(Histories.One("A", 30, [(10, 0.4), (30, 1.1)]));

    [Fact]
    public void The_earliest_gauge_mark_ends_the_tool()
    {
        Assert.Equal(Fast.ChancePastLimit(10), WholeTool.ChancePastLimit([Slow, Fast], 10));
        Assert.Equal(1, WholeTool.Deciding([Slow, Fast], WholeTool.HeatsLeft([Slow, Fast])));
        Assert.Equal(0, WholeTool.Deciding([Fast, Slow], WholeTool.HeatsLeft([Fast, Slow])));
        Assert.Equal(0, WholeTool.Deciding([Slow], WholeTool.HeatsLeft([Slow])));
        Near.Relative(Fast.HeatsLeft.Q50!.Value, WholeTool.HeatsLeft([Slow, Fast]).Q50, 1e-6, "left");
    }

    [Fact]
    public void The_cautious_bound_is_never_below()
    {
        double one = Slow.ChancePastLimit(30);
        double other = Fast.ChancePastLimit(30);
        Near.Relative(
            1 - ((1 - one) * (1 - other)),
            WholeTool.CautiousChancePastLimit([Slow, Fast], 30),
            1e-12,
            "bound"
        );
        Assert.True(WholeTool.CautiousChancePastLimit([Slow, Fast], 30) >= WholeTool.ChancePastLimit([Slow, Fast], 30));
    }

    [Fact]
    public void One_gauge_mark_past_its_limit_is_enough()
    {
        Assert.Equal(HeatsLeft.None, WholeTool.HeatsLeft([Slow, Past]));
        Assert.Equal(1, WholeTool.Deciding([Slow, Past], WholeTool.HeatsLeft([Slow, Past])));
    }

    [Fact]
    public void Harder_use_is_asked_for_as_more_heats()
    {
        Assert.True(Fast.ChancePastLimit(10) < Fast.ChancePastLimit(1.5 * 10));
        double F0 = Fast.ChancePastLimitNow;
        Near.Relative((Fast.ChancePastLimit(9) - F0) / (1 - F0), Fast.ChanceUsedUpWithin(9), 1e-12, "cdf");
        Near.Relative(0.5, Fast.ChanceUsedUpWithin(Fast.HeatsLeft.Q50!.Value), 1e-8, "median");
    }

    [Theory]
    [InlineData(0.01, 20)]
    [InlineData(0.0099, 20)]
    [InlineData(0.0101, 19)]
    [InlineData(0.3, 0)]
    [InlineData(0, 200)]
    public void Enough_for_today_is_where_the_chance_passes_one_in_five(double chanceAHeat, int heats) =>
        Assert.Equal(heats, EnoughToday.Of(k => chanceAHeat * k));

    [Fact]
    public void A_tool_that_is_near_its_limit_has_nothing_for_today_and_one_without_a_forecast_says_nothing()
    {
        Assert.Equal(-1, EnoughToday.Of(_ => 0.21));
        Assert.Null(EnoughToday.Of(_ => null));
    }

    [Fact]
    public void The_next_reading_is_at_half_the_median_or_before_the_run_out()
    {
        // new: half the median would be past 60 to 75 % of the limit only where the median is long
        WearHistory young = Histories.One("A", 10, [(10, 0.1)]);
        SisterForecast forecast = Of(young);
        MeasuringAdvice advice = MeasuringAdvice.Of(young, forecast);
        Assert.Equal(forecast.HeatsLeft.Q50!.Value / 2, advice.MoreHeats, 1e-9);
        Assert.False(advice.BecauseOfRunOut);

        // 62 % gone by the forecast and not read there: now
        WearHistory there = Histories.One("A", 44, [(10, 0.12), (30, 0.36)]);
        Assert.Equal(new MeasuringAdvice(0, true), MeasuringAdvice.Of(there, Of(there)));

        // read there already: half the median again
        WearHistory read = Histories.One("A", 44, [(10, 0.12), (30, 0.36), (44, 0.53)]);
        Assert.False(MeasuringAdvice.Of(read, Of(read)).BecauseOfRunOut);

        // 55 % gone: before half the median the middle of the stretch comes
        WearHistory near = Histories.One("A", 38, [(10, 0.12), (38, 0.45)]);
        SisterForecast nearForecast = Of(near);
        MeasuringAdvice soon = MeasuringAdvice.Of(near, nearForecast);
        Assert.True(soon.BecauseOfRunOut);
        Assert.Equal(0.675 * 0.8, nearForecast.Bands([38 + soon.MoreHeats])[0].FittedMm, 1e-6);
    }

    private static SisterForecast Of(WearHistory history) =>
        Assert.IsType<SisterForecast>(SisterForecasts.Of([history]).Tools[0]);
}
