using System.Text.Json;
using ToolWear.Core.Wear.Alone;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

public sealed class LineTests
{
    private const double NineDigits = 1e-9;

    // NIST StRD, Norris, linear least squares: certified values
    [Fact]
    public void The_free_line_gives_the_certified_values_of_Norris()
    {
        (double[] x, double[] y) = Columns("nist_norris.csv", "x", "y");
        FreeLine line = FreeLine.Fit(x, y)!;
        Near.Relative(-0.262323073774029, line.Intercept, NineDigits, "b0");
        Near.Relative(1.00211681802045, line.Slope, NineDigits, "b1");
        Near.Relative(0.232818234301152, line.InterceptSe, NineDigits, "se b0");
        Near.Relative(0.429796848199937e-3, line.SlopeSe, NineDigits, "se b1");
        Near.Relative(0.884796396144373, line.ResidualSd, NineDigits, "s");
    }

    // NIST StRD, NoInt1 and NoInt2 (Eberhardt), regression through the origin: certified values
    [Theory]
    [InlineData("nist_noint1.csv", 2.07438016528926, 0.0165289256198347, 3.56753034006338)]
    [InlineData("nist_noint2.csv", 0.727272727272727, 0.0420827318078432, 0.369274472937998)]
    public void The_line_through_the_start_gives_the_certified_values(string file, double b, double se, double s)
    {
        (double[] x, double[] y) = Columns(file, "x", "y");
        LineThroughStart line = LineThroughStart.Fit(x, y)!;
        Near.Relative(b, line.Slope, NineDigits, "b1");
        Near.Relative(se, line.SlopeSe, NineDigits, "se b1");
        Near.Relative(s, line.ResidualSd, NineDigits, "s");
    }

    // Meeker & Escobar 1998, Statistical Methods for Reliability Data, GaAs lasers; fits by R lm, Fieller limits by R
    [Fact]
    public void Each_laser_has_its_published_line_and_its_time_to_ten_per_cent()
    {
        Dictionary<string, Row> limits = Published
            .Rows("gaas_laser_time_to_threshold_ci.csv")
            .ToDictionary(row => row["unit"], StringComparer.Ordinal);
        ILookup<string, Row> data = Published
            .Rows("gaas_laser.csv")
            .ToLookup(row => row["unit"], StringComparer.Ordinal);
        foreach (Row unit in Published.Rows("gaas_laser_per_unit_fits.csv"))
        {
            (double[] n, double[] x) = Columns(data[unit["unit"]], "hours", "increase");
            FreeLine free = FreeLine.Fit(n, x)!;
            LineThroughStart line = LineThroughStart.Fit(n, x)!;
            Near.Relative(unit.Number("slope"), free.Slope, NineDigits, "slope");
            Near.Relative(unit.Number("intercept"), free.Intercept, NineDigits, "intercept");
            Near.Relative(unit.Number("se_slope"), free.SlopeSe, NineDigits, "se slope");
            Near.Relative(unit.Number("se_intercept"), free.InterceptSe, NineDigits, "se intercept");
            Near.Relative(unit.Number("sigma"), free.ResidualSd, NineDigits, "sigma");
            Near.Relative(unit.Number("T10_line"), free.HeatsAt(10), NineDigits, "T10 of the free line");
            Near.Relative(unit.Number("slope_origin"), line.Slope, NineDigits, "slope through the origin");
            Near.Relative(unit.Number("se_slope_origin"), line.SlopeSe, NineDigits, "se through the origin");
            Row t10 = limits[unit["unit"]];
            Limits fieller = free.FiellerLimits(10, 0.95)!.Value;
            Near.Relative(t10.Number("fieller95_lo"), fieller.Low, NineDigits, "Fieller low");
            Near.Relative(t10.Number("fieller95_hi"), fieller.High, NineDigits, "Fieller high");
            Limits origin = line.HeatsToRise(10, 0.95)!.Value;
            Near.Relative(t10.Number("ci95_lo_origin"), origin.Low, NineDigits, "t low");
            Near.Relative(t10.Number("ci95_hi_origin"), origin.High, NineDigits, "t high");
        }
    }

    // NASA Ames / UC Berkeley milling set (Agogino & Goebel 2007): flank wear of real cutters; fits by R lm
    [Fact]
    public void Each_milling_cutter_has_its_published_line_and_its_time_to_three_tenths()
    {
        ILookup<string, Row> data = Published
            .Rows("nasa_milling_vb.csv")
            .ToLookup(row => row["case"], StringComparer.Ordinal);
        foreach (Row fit in Published.Rows("nasa_milling_fits.csv"))
        {
            (double[] n, double[] x) = Columns(data[fit["case"]], "time", "VB");
            Assert.Equal((int)fit.Number("n"), n.Length);
            FreeLine free = FreeLine.Fit(n, x)!;
            LineThroughStart line = LineThroughStart.Fit(n, x)!;
            Near.Relative(fit.Number("a"), free.Intercept, NineDigits, "a");
            Near.Relative(fit.Number("b"), free.Slope, NineDigits, "b");
            Near.Relative(fit.Number("se_b"), free.SlopeSe, NineDigits, "se b");
            Near.Relative(fit.Number("s"), free.ResidualSd, NineDigits, "s");
            Near.Relative(fit.Number("T03"), free.HeatsAt(0.3), NineDigits, "T03");
            Near.Relative(fit.Number("b0"), line.Slope, NineDigits, "b0");
            Near.Relative(fit.Number("se0"), line.SlopeSe, NineDigits, "se b0");
            Near.Relative(fit.Number("T03o"), 0.3 / line.Slope, NineDigits, "T03 through the origin");
        }
    }

    // cases.json, "lines": R lm
    [Theory]
    [InlineData("s01")]
    [InlineData("s02")]
    [InlineData("s03")]
    [InlineData("s04")]
    [InlineData("s05")]
    [InlineData("s06")]
    [InlineData("s07")]
    [InlineData("s08")]
    public void The_lines_of_a_case_agree(string id)
    {
        Dictionary<string, WearHistory> tools = Histories
            .Case(id)
            .ToDictionary(history => history.Tool, StringComparer.Ordinal);
        JsonElement expected = Published.Json("wear/cases.json").GetProperty(id).GetProperty("expected");
        foreach (JsonProperty tool in expected.GetProperty("lines").EnumerateObject())
        {
            ThisToolAlone alone = ThisToolAlone.Of(tools[tool.Name]);
            Assert.Equal(tool.Value.GetProperty("n").GetInt32(), alone.Readings);
            Check(tool.Value, "slope0", alone.Line?.Slope);
            Check(tool.Value, "se0", alone.Line?.SlopeSe);
            Check(tool.Value, "intercept", alone.FreeLine?.Intercept);
            Check(tool.Value, "slope", alone.FreeLine?.Slope);
            Check(tool.Value, "se_intercept", alone.FreeLine?.InterceptSe);
            Check(tool.Value, "se_slope", alone.FreeLine?.SlopeSe);
        }
    }

    [Fact]
    public void A_rise_that_is_not_sure_has_no_upper_limit()
    {
        FreeLine line = FreeLine.Fit([1, 2, 3, 4], [0.10, 0.02, 0.20, 0.12])!;
        Limits limits = line.FiellerLimits(0.8, 0.95)!.Value;
        Assert.Null(limits.High);
        Assert.InRange(limits.Low, 4, line.HeatsAt(0.8)!.Value);
    }

    [Fact]
    public void Fiellers_lower_limit_is_where_the_t_test_of_the_line_just_refuses()
    {
        FreeLine line = FreeLine.Fit([1, 2, 3, 4], [0.1, 0.1, 0.3, 0.3])!;
        double n = line.FiellerLimits(0.8, 0.95)!.Value.Low;
        // by hand: a = 0, b = 0.08, s^2 = 0.004, nbar = 2.5, S = 5; t(0.975; 2) = 4.302653 (R qt)
        double se = Math.Sqrt(0.004 * (0.25 + ((n - 2.5) * (n - 2.5) / 5)));
        Near.Relative(4.302653, (0.8 - (0.08 * n)) / se, 1e-6, "t");
    }

    private static void Check(JsonElement tool, string name, double? actual)
    {
        if (tool.TryGetProperty(name, out JsonElement expected))
        {
            // a slope of exactly nothing comes out of R as 1e-17
            Near.Either(expected.GetDouble(), actual, 1e-6, 1e-15, name);
        }
        else
        {
            Assert.Null(actual);
        }
    }

    private static (double[] X, double[] Y) Columns(string file, string x, string y) =>
        Columns(Published.Rows(file), x, y);

    private static (double[] X, double[] Y) Columns(IEnumerable<Row> rows, string x, string y) =>
        ([.. rows.Select(row => row.Number(x))], [.. rows.Select(row => row.Number(y))]);
}
