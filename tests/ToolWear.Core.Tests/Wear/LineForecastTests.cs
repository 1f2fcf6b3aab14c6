using CsCheck;
using MathNet.Numerics.Distributions;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Alone;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

public sealed class LineForecastTests
{
    private static readonly Gen<WearHistory> Tools = Gen.Select(
        Gen.Double[1, 60].Array[2, 8],
        Gen.Double[-0.1, 0.9].Array[8],
        Gen.Double[0, 20],
        (heats, wear, since) =>
            Histories.One("A", heats.Max() + since, heats.Order().Zip(wear).Select(pair => (pair.First, pair.Second)))
    );

    [Fact]
    public void The_chance_is_that_of_a_slope_spread_by_t()
    {
        // by hand: heats 10 and 20, wear 0.1 and 0.3: b = 7/500, e = -0.04 and 0.02, s^2 = 0.002, se = sqrt(0.002/500)
        Forecast forecast = ForecastOf(Histories.One("A", 20, [(10, 0.1), (20, 0.3)]));
        double se = Math.Sqrt(0.002 / 500);
        Assert.Equal(0.28, forecast.WearNowMm, 12);
        Assert.Equal(StudentT.CDF(0, 1, 1, (0.014 - (0.8 / 20)) / se), forecast.ChancePastLimitNow, 12);
        Assert.Equal(StudentT.CDF(0, 1, 1, (0.014 - (0.8 / 50)) / se), forecast.ChancePastLimit(30), 12);
    }

    [Fact]
    public void Two_readings_on_one_line_have_the_width_of_the_calipers_step()
    {
        Forecast forecast = ForecastOf(Histories.One("A", 20, [(10, 0.1), (20, 0.2)], resolutionMm: 0.05));
        Estimate rate = Assert.IsType<Estimate>(forecast.RateMmPerHeat);
        double se = 0.05 / Math.Sqrt(12) / Math.Sqrt(500);
        // t(0.95; 1) = 6.313752 (R qt)
        Near.Relative(6.313752 * se, rate.Value - rate.Low90, 1e-6, "half width");
        Assert.True(forecast.HeatsLeft.Q05 < forecast.HeatsLeft.Q95);
    }

    [Fact]
    public void The_quantiles_are_those_of_the_chance_given_not_yet_past() =>
        Tools.Sample(
            history =>
            {
                Forecast forecast = ForecastOf(history);
                HeatsLeft left = forecast.HeatsLeft;
                if (forecast.AtOrPastLimit)
                {
                    Assert.Equal(HeatsLeft.None, left);
                    return;
                }

                foreach ((double p, double? k) in Quantiles(left))
                {
                    double within = forecast.ChanceUsedUpWithin(k ?? HeatsLeft.Most);
                    Assert.True(k is null ? within < p : Math.Abs(within - p) < 1e-7, $"{p}: {k} {within}");
                }
            },
            iter: 500
        );

    [Fact]
    public void The_chance_never_falls() =>
        Gen.Select(Tools, Gen.Double[0, 200], Gen.Double[0, 200])
            .Sample(
                (history, k, more) =>
                {
                    Forecast forecast = ForecastOf(history);
                    // the library's t distribution is rounded in its last digits
                    Assert.True(forecast.ChancePastLimit(k) <= forecast.ChancePastLimit(k + more) + 1e-14);
                },
                iter: 500
            );

    [Fact]
    public void A_tool_past_its_limit_at_the_start_is_past_it_for_good()
    {
        Forecast forecast = ForecastOf(
            Histories.Of("A", 9, [Histories.Segment(0.9, [(4, 0.9), (9, 0.95)])], limitMm: 0.8)
        );
        Assert.Equal(1, forecast.ChancePastLimitNow);
        Assert.Equal(1, forecast.ChancePastLimit(500));
        Assert.True(forecast.AtOrPastLimit);
        Assert.Equal(HeatsLeft.None, forecast.HeatsLeft);
    }

    [Fact]
    public void Only_readings_since_the_last_rework_count()
    {
        WearSegment before = Histories.Segment(0, [(10, 0.2), (30, 0.6)]);
        ThisToolAlone dressed = ThisToolAlone.Of(Histories.Of("A", 5, [before, Histories.Segment(0.1, [])]));
        Assert.Equal(new NotEnoughData(0, 2, "no reading since its last rework"), dressed.Forecast);
        ThisToolAlone read = ThisToolAlone.Of(Histories.Of("A", 10, [before, Histories.Segment(0.1, [(10, 0.3)])]));
        Near.Relative(0.02, read.Line!.Slope, 1e-12, "slope");
        Assert.Equal(new NotEnoughData(1, 2, "one reading gives no range"), read.RateMmPerHeat);
    }

    [Fact]
    public void What_is_missing_is_named()
    {
        Assert.IsType<NotEnoughData>(ThisToolAlone.Of(Histories.One("A", 5, [])).Forecast);
        Assert.IsType<NotEnoughData>(ThisToolAlone.Of(Histories.One("A", 5, [(0, 0.1), (0, 0.1)])).RateMmPerHeat);
        ThisToolAlone noLimit = ThisToolAlone.Of(Histories.One("A", 9, [(4, 0.1), (9, 0.2)], limitMm: null));
        Assert.IsType<Estimate>(noLimit.RateMmPerHeat);
        Assert.IsType<NotEnoughData>(noLimit.Forecast);
        Assert.IsType<NotEnoughData>(ThisToolAlone.Of(Histories.Of("A", 3, [new(null, [])])).Forecast);
        ThisToolAlone shrinks = ThisToolAlone.Of(Histories.One("A", 9, [(4, -0.1), (9, -0.2)]));
        Assert.IsType<NotEnoughData>(shrinks.HeatsToLimit);
        Assert.Null(Assert.IsType<LineForecast>(shrinks.Forecast).HeatsLeft.Q50);
    }

    private static Forecast ForecastOf(WearHistory history) =>
        Assert.IsAssignableFrom<Forecast>(ThisToolAlone.Of(history).Forecast);

    private static (double P, double? K)[] Quantiles(HeatsLeft left) =>
        [(0.05, left.Q05), (0.10, left.Q10), (0.50, left.Q50), (0.90, left.Q90), (0.95, left.Q95)];
}
