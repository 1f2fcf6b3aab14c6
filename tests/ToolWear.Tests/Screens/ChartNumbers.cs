using System.Globalization;
using System.Text.RegularExpressions;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.OneTool;
using Xunit;
using static ToolWear.Tests.Screens.NumberTests;

namespace ToolWear.Tests.Screens;

/// <summary>The numbers of a chart: ticks one round step apart, and when the end is expected.</summary>
internal static partial class ChartNumbers
{
    /// <summary>Judges the chart and takes it out of the lines.</summary>
    public static void Judge(List<string> lines, GaugeForecast gauge, Dictionary<string, string> file, string where)
    {
        int axis = lines.FindIndex(line => line.Contains('└', StringComparison.Ordinal));
        int top = lines.FindIndex(line => line.Contains('│', StringComparison.Ordinal));
        string[] rows = [.. lines[top..axis]];
        double[] sizes =
        [
            .. rows.Select(row => row.Split('│')[0].Trim()).Where(tick => tick.Length > 0).Select(Parsed),
        ];
        Steps([.. sizes.Reverse()], where);
        string[] heats = lines[axis + 1].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("heats", heats[^1]);
        Assert.Equal("0", heats[0]);
        Steps([.. heats[..^1].Select(Parsed)], where);
        // the scrap size and the size now lie between what the ticks can tell apart
        if (gauge.History.Gauge.ScrapSize is { } scrap && sizes.Length > 1)
        {
            double step = sizes[0] - sizes[1];
            Assert.InRange(scrap.Mm, sizes[^1] - step, sizes[0] + step);
        }

        string inside = string.Join(' ', rows.Select(row => row.Split('│')[1]));
        Match end = End().Match(inside);
        bool hasEnd = gauge.Forecast is { AtOrPastLimit: false, HeatsLeft.Q50: not null };
        Assert.True(end.Success == hasEnd, $"{where}: {inside}");
        if (hasEnd)
        {
            Assert.Equal(About(file["heats_left"]), end.Groups["about"].Value);
            Assert.Equal(file["left_hi90"].Length > 0, end.Groups["low"].Success);
            if (end.Groups["low"].Success)
            {
                Assert.Equal(About(file["left_lo90"]), end.Groups["low"].Value);
                Assert.Equal(About(file["left_hi90"]), end.Groups["high"].Value);
            }
        }

        Assert.DoesNotContain(End().Replace(inside, ""), char.IsDigit);
        lines.RemoveRange(top, axis + 2 - top);
    }

    /// <summary>1, 2 or 5 times a power of ten apart, each the same step on from the one before.</summary>
    private static void Steps(double[] ticks, string where)
    {
        Assert.True(ticks.Length > 1, $"{where}: {ticks.Length} ticks");
        double step = ticks[1] - ticks[0];
        double digit = step / Math.Pow(10, Math.Floor(Math.Log10(step) + 1e-9));
        Assert.True(
            new[] { 1.0, 2, 5 }.Any(round => Math.Abs(digit - round) < 1e-6),
            $"{where}: ticks {string.Join(' ', ticks)}"
        );
        for (int i = 0; i < ticks.Length; i++)
        {
            Assert.Equal(ticks[0] + (i * step), ticks[i], 6);
            Assert.Equal(Math.Round(ticks[i] / step), ticks[i] / step, 6);
        }
    }

    private static double Parsed(string tick) => double.Parse(tick, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"done in about (?<about>\d+)(?:, (?<low>\d+)-(?<high>\d+))?")]
    private static partial Regex End();
}
