using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using Xunit;

namespace ToolWear.Core.Tests.Sections;

public sealed class BodyTests
{
    // International Correspondence Schools, Building Trades Pocketbook, Mensuration: V = (A + a + 4m) l / 6 and
    // V = 0.2618 h (D^2 + D d + d^2); figures in reference-data/geometry_volumes.csv
    [Fact]
    public void A_frustum_and_a_prismoid_have_the_volumes_of_the_pocketbook()
    {
        IReadOnlyList<string[]> rows = ReferenceRows.Of("geometry_volumes.csv");
        double frustum = double.Parse(rows[0][1], CultureInfo.InvariantCulture);
        double prismoid = double.Parse(rows[1][1], CultureInfo.InvariantCulture);

        Assert.Equal(frustum, Make.Body((0, Make.Round(25)), (150, Make.Round(15))).VolumeMm3, 1e-6);
        Assert.Equal(
            prismoid,
            Make.Body((0, Make.Rectangle(20, 10, 0)), (100, Make.Rectangle(30, 16, 0))).VolumeMm3,
            1e-8
        );
    }

    [Fact]
    public void A_parallel_bar_has_area_times_length_and_steel_weighs_7850()
    {
        Body body = Make.Body((-20, Make.Teardrop(44, 18, 2.5)), (80, Make.Teardrop(44, 18, 2.5)));

        Assert.Equal(51830.220, body.VolumeMm3, 1e-3);
        Assert.Equal(51830.220e-9 * 7850, Steel.MassKg(body.VolumeMm3), 1e-8);
        Assert.Equal(100, body.Length.Mm);
    }

    // reference-data/densities_expansion.csv: 7850 kg/m3, EN 1993-1-2; 0.2836 lb/in3
    [Fact]
    public void The_density_is_the_one_in_print()
    {
        string[] row = ReferenceRows.Of("densities_expansion.csv")[0];
        double printed = double.Parse(row[1], CultureInfo.InvariantCulture);
        Assert.Equal(printed * 1e-9, Steel.MassKg(1), 1e-15);
        Assert.Equal(0.2836, Steel.MassKg(25.4 * 25.4 * 25.4) / 0.45359237, 5e-5);
    }

    // a teardrop that grows in length only: by the trapezoid rule over many slices, each a teardrop built anew
    [Fact]
    public void A_tapered_teardrop_has_the_volume_of_its_slices()
    {
        Body body = Make.Body((0, Make.Teardrop(20, 10, 1)), (100, Make.Teardrop(40, 18, 4)));
        const int slices = 4000;
        double sum = 0;
        for (int i = 0; i < slices; i++)
        {
            double share = (i + 0.5) / slices;
            sum += Make.Teardrop(20 + (20 * share), 10 + (8 * share), 1 + (3 * share)).AreaMm2() * 100 / slices;
        }

        Assert.Equal(sum, body.VolumeMm3, 1e-6 * sum);
    }

    // from a square to a point-like round: nearly a pyramid, whose hull's volume is known
    [Fact]
    public void Between_two_kinds_the_body_is_their_hull()
    {
        double pyramid = Make.Body((0, Make.Rectangle(30, 30, 0)), (60, Make.Round(0.1))).VolumeMm3;
        Assert.Equal(30 * 30 * 60 / 3.0, pyramid, 0.01 * pyramid);

        // the same round written as a rectangle with full edges, as a teardrop's obround and as an oval
        double cone = Make.Body((0, Make.Round(30)), (60, Make.Round(12))).VolumeMm3;
        Assert.Equal(cone, Make.Body((0, Make.Round(30)), (60, Make.Rectangle(12, 12, 6))).VolumeMm3, 1e-6);
        Assert.Equal(cone, Make.Body((0, Make.Oval(30, 30)), (60, Make.Round(12))).VolumeMm3, 1e-6);

        double obround = Make.Body((0, Make.Rectangle(40, 16, 8)), (60, Make.Rectangle(20, 8, 2))).VolumeMm3;
        Assert.Equal(obround, Make.Body((0, Make.Teardrop(40, 16, 8)), (60, Make.Rectangle(20, 8, 2))).VolumeMm3, 1e-6);
    }

    // R. Schneider, Convex Bodies, 5.1: the mixed area with a polygon is half the sum of side times reach square to it;
    // of an oval with half axes m, n and a sharp rectangle a x b that is a n + b m
    [Fact]
    public void An_oval_that_runs_into_a_rectangle_has_the_volume_of_its_hull()
    {
        const double area = Math.PI * 20 * 9;
        double byHand = 60 * (area + ((24 * 9) + (14 * 20)) + (24 * 14)) / 3;

        Assert.Equal(
            byHand,
            Make.Body((0, Make.Oval(40, 18)), (60, Make.Rectangle(24, 14, 0))).VolumeMm3,
            1e-6 * byHand
        );
    }

    [Fact]
    public void Stations_may_be_given_from_either_end_and_may_step()
    {
        Body up = Make.Body((0, Make.Round(30)), (50, Make.Round(30)), (50, Make.Round(20)), (60, Make.Round(20)));
        Body down = Make.Body((60, Make.Round(20)), (50, Make.Round(20)), (50, Make.Round(30)), (0, Make.Round(30)));

        Assert.Equal(Math.PI / 4 * ((900 * 50) + (400 * 10)), up.VolumeMm3, 1e-6);
        Assert.Equal(up.VolumeMm3, down.VolumeMm3, 1e-9);
    }

    [Fact]
    public void A_body_that_cannot_be_is_refused()
    {
        Assert.Equal("A body takes 2 or more stations; there is 1.", Refusal(0));
        Assert.Equal("The stations of a body must lie apart; all are at 5 mm.", Refusal(5, 5));
        Assert.Equal("Stations go in order along the tool; 5 mm and 40 mm do not.", Refusal(0, 40, 5, 60));
        Assert.Equal("A station lies within 10000 mm of the mark; 10001 mm does not.", Refusal(0, 10_001));
    }

    // by hand from the volumes: 7 % lost, forged on the bar; areas of 32, 28 and 38 mm round
    [Theory]
    [InlineData(64_400, 32, 86, 0.51)]
    [InlineData(64_400, 28, 112, 0.51)]
    [InlineData(82_400, 28, 143, 0.65)]
    [InlineData(111_400, 32, 148, 0.87)]
    [InlineData(84_200, 32, 112, 0.66)]
    [InlineData(49_200, 28, 86, 0.39)]
    [InlineData(112_900, 38, 107, 0.89)]
    [InlineData(155_400, 38, 147, 1.22)]
    public void Stock_is_volume_and_loss_over_the_area_of_the_bar(double volume, double bar, double cut, double kg)
    {
        Body body = Make.Body((0, Make.Rectangle(20, 20, 0)), (volume / 400, Make.Rectangle(20, 20, 0)));
        Assert.True(
            StockToCut.TryFor(body, Make.Round(bar).AreaMm2(), 0.07, 0, out StockToCut? stock, out string? refusal),
            refusal
        );

        Assert.Equal(volume, stock.VolumeMm3, 0.1);
        Assert.Equal(cut, stock.LengthMm, 0.55);
        Assert.Equal(kg, stock.MassKg, 0.006);
        Assert.Equal(stock.MassKg * 1.07, stock.StockMassKg, 1e-9);
    }

    [Fact]
    public void A_bar_thinner_than_the_largest_station_must_be_upset()
    {
        Body adze = Make.Body((0, Make.Rectangle(32.05, 25.6, 3)), (70, Make.Rectangle(32.05, 25.6, 3)));

        Assert.True(StockToCut.TryFor(adze, Make.Round(38).AreaMm2(), 0.07, 12, out StockToCut? thick, out _));
        Assert.False(thick.MustBeUpset);
        Assert.Equal((adze.VolumeMm3 * 1.07 / thick.BarAreaMm2) + 12, thick.LengthMm, 1e-9);
        Assert.True(StockToCut.TryFor(adze, Make.Round(28).AreaMm2(), 0.07, 0, out StockToCut? thin, out _));
        Assert.True(thin.MustBeUpset);
    }

    // W. L. Ilgen, Forge Work (1912), arts 105-107: stock lengths seen in print, volumes and weights worked out
    [Fact]
    public void Ilgens_stock_for_eyed_tools_weighs_what_his_bars_weigh()
    {
        int checkedRows = 0;
        foreach (string[] row in ReferenceRows.Of("ilgen_stock.csv").Where(row => row[2].Length > 0))
        {
            double lengthMm = double.Parse(row[2], CultureInfo.InvariantCulture) * 25.4;
            double areaMm2 = double.Parse(row[3], CultureInfo.InvariantCulture) * 25.4 * 25.4;
            double side = Math.Sqrt(areaMm2);
            Body bar = Make.Body((0, Make.Rectangle(side, side, 0)), (lengthMm, Make.Rectangle(side, side, 0)));

            Assert.True(StockToCut.TryFor(bar, areaMm2, 0, 0, out StockToCut? stock, out _));
            Assert.Equal(lengthMm, stock.LengthMm, 1e-4);
            double pounds = double.Parse(row[5], CultureInfo.InvariantCulture);
            Assert.Equal(pounds, stock.MassKg / 0.45359237, 5e-4 * pounds);
            checkedRows++;
        }

        Assert.Equal(3, checkedRows);
    }

    [Theory]
    [InlineData(0, 0.07, 0, "The area of the bar must be 0.01 to 1000000 mm2; 0 is not.")]
    [InlineData(double.NaN, 0.07, 0, "The area of the bar must be 0.01 to 1000000 mm2, and a number.")]
    [InlineData(800, 7, 0, "The loss must be 0 to 0.9 as a share of one; 7 is not.")]
    [InlineData(800, 0.07, -1, "The extra must be 0 to 10000 mm; -1 is not.")]
    public void Impossible_stock_figures_are_refused(double area, double loss, double extra, string refusal)
    {
        Body body = Make.Body((0, Make.Round(20)), (50, Make.Round(20)));

        Assert.False(StockToCut.TryFor(body, area, loss, extra, out StockToCut? stock, out string? why));
        Assert.Null(stock);
        Assert.Equal(refusal, why);
    }

    private static string? Refusal(params double[] fromMarkMm)
    {
        Station[] stations =
        [
            .. fromMarkMm.Select(at => new Station(BodyPart.Body, Length.FromMm(at), Make.Round(20))),
        ];
        Assert.False(Body.TryMake(stations, out Body? body, out string? refusal));
        Assert.Null(body);
        return refusal;
    }
}
