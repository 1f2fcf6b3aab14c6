using System.Collections.Immutable;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

/// <summary>Forecasts from the first half of real records, held against their second half.</summary>
public sealed class RealRecordsTests
{
    /// <remarks>
    /// GaAs laser degradation (Meeker &amp; Escobar 1998), 15 units; the limit is a 10 % rise of the current. Each unit is
    /// forecast at half of its watched time from its first half, its sisters cut off at the same time; the truth is where
    /// its line over all readings crosses (gaas_laser_per_unit_fits.csv). wear-model.md section 4 found such ranges too
    /// narrow where no sister was followed to the end: 72 in 100, so the bound here is what must hold, not nine in ten.
    /// </remarks>
    [Fact]
    public void Lasers_forecast_from_their_first_half_cross_inside_the_range_more_often_than_not()
    {
        Dictionary<string, double> crossing = Published
            .Rows("gaas_laser_per_unit_fits.csv")
            .ToDictionary(row => row["unit"], row => row.Number("T10_line"), StringComparer.Ordinal);
        List<WearHistory> kind =
        [
            .. Published
                .Rows("gaas_laser.csv")
                .GroupBy(row => row["unit"], StringComparer.Ordinal)
                .Select(unit =>
                    Half(unit.Key, [.. unit.Select(row => (row.Number("hours"), row.Number("increase")))], 2000, 10)
                ),
        ];
        int inside = 0;
        double worst = 0;
        foreach ((WearHistory history, Forecast forecast) in kind.Zip(SisterForecasts.Of(kind).Tools.Cast<Forecast>()))
        {
            double left = (crossing[history.Tool] - 2000) / 100;
            inside += left >= forecast.HeatsLeft.Q05 && left <= forecast.HeatsLeft.Q95 ? 1 : 0;
            worst = Math.Max(worst, Math.Abs((forecast.HeatsLeft.Q50!.Value / left) - 1));
        }

        Assert.InRange(inside, 11, 15);
        Assert.True(worst < 0.6, $"a median is off by {worst:0.00} of what was left");
    }

    /// <remarks>
    /// NASA Ames / UC Berkeley milling, case 2 (cast iron, depth 0.75, feed 0.5), flank wear to 0.3 mm as ISO 3685's mean
    /// criterion, time in minutes as heats; forecast at half of its life from its first half, alone.
    /// </remarks>
    [Fact]
    public void A_milling_cutter_forecast_from_its_first_half_reaches_its_limit_inside_the_range()
    {
        (double, double)[] all =
        [
            .. Published
                .Rows("nasa_milling_vb.csv")
                .Where(row => row["case"] == "2")
                .Select(row => (row.Number("time"), row.Number("VB"))),
        ];
        Row fit = Published.Rows("nasa_milling_fits.csv").Single(row => row["case"] == "2");
        double truth = fit.Number("interp");
        WearHistory half = Half("2", all, truth / 2, 0.3, scale: 1);
        SisterForecast forecast = Assert.IsType<SisterForecast>(SisterForecasts.Of([half]).Tools[0]);
        Assert.InRange(truth - half.HeatsNow, forecast.HeatsLeft.Q05!.Value, forecast.HeatsLeft.Q95!.Value);
    }

    private static WearHistory Half(
        string tool,
        (double At, double Wear)[] readings,
        double until,
        double limit,
        double scale = 100
    ) =>
        new(
            "records",
            "records",
            tool,
            "",
            limit,
            limit / 100,
            60,
            GuessIsAssumed: true,
            until / scale,
            [
                new WearSegment(
                    0,
                    readings
                        .Where(reading => reading.At > 0 && reading.At <= until)
                        .Select(reading => new WearReading(reading.At / scale, reading.Wear))
                        .ToImmutableArray()
                ),
            ]
        );
}
