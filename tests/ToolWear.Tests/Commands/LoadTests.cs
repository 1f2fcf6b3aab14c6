using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Pens;
using ToolWear.Results.Tools;

namespace ToolWear.Tests.Commands;

/// <summary>Heats left of work that is harder or lighter than usual.</summary>
public sealed class LoadTests(DemoFixture demo)
{
    private static readonly string[] Left = ["heats_left", "left_lo80", "left_hi80", "left_lo90", "left_hi90"];

    [Theory]
    [InlineData("2", 2)]
    [InlineData("0.5", 0.5)]
    public void Heats_left_are_divided_by_the_load_and_nothing_else_changes(string typed, double load)
    {
        List<List<string>> usual = CsvCells.Of(
            ForecastTable.Of(demo.Forecasts.InService.SelectMany(tool => tool.Gauges), LengthUnit.Mm).ToCsv()
        );
        List<List<string>> loaded = CsvCells.Of(demo.Site.Done("forecast", "--as", "csv", "--harder", typed));
        Assert.Equal(usual.Count, loaded.Count);
        int compared = 0;
        foreach ((List<string> before, List<string> after) in usual.Zip(loaded))
        {
            for (int column = 0; column < before.Count; column++)
            {
                if (!Left.Contains(usual[0][column]) || before == usual[0] || before[column].Length == 0)
                {
                    Assert.Equal(before[column], after[column]);
                    continue;
                }

                double expected = double.Parse(before[column], CultureInfo.InvariantCulture) / load;
                double actual = double.Parse(after[column], CultureInfo.InvariantCulture);
                Assert.Equal(expected, actual, 1e-9 * Math.Max(1, expected));
                compared++;
            }
        }

        Assert.True(compared > 100, $"only {compared} figures");
    }

    [Fact]
    public void The_heading_says_so_for_people()
    {
        Assert.Contains(
            "Heats left of work 1.5 times as hard as usual",
            demo.Site.Done("forecast", "--harder", "1,5"),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("as hard", demo.ForecastText, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("0.09")]
    [InlineData("10.01")]
    [InlineData("-2")]
    [InlineData("much")]
    [InlineData("NaN")]
    public void A_load_that_no_work_has_is_refused(string load)
    {
        Ran ran = demo.Site.Run("forecast", $"--harder={load}");
        Assert.Equal(2, ran.Exit);
        Assert.Equal("", ran.Output);
        Assert.Contains("--harder", ran.Error, StringComparison.Ordinal);
    }
}
