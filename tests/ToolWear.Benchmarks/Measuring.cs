using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;

namespace ToolWear.Benchmarks;

/// <summary>Times, medians, slopes, and the rows in which they are said.</summary>
internal static class Measuring
{
    /// <summary>The milliseconds that something takes.</summary>
    public static double Timed(Action act)
    {
        Stopwatch watch = Stopwatch.StartNew();
        act();
        return watch.Elapsed.TotalMilliseconds;
    }

    /// <summary>The one in the middle.</summary>
    public static double Median(IEnumerable<double> all)
    {
        double[] sorted = [.. all.Order()];
        int half = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    /// <summary>The medians of two that take turns, each first as often as the other; a first round only warms up.</summary>
    /// <param name="runs">How many rounds count.</param>
    /// <param name="ours">What is measured, given the number of its round; gives the milliseconds.</param>
    /// <param name="other">What it is held against.</param>
    public static (double Ours, double Other) InTurns(int runs, Func<int, double> ours, Func<int, double> other)
    {
        List<double> one = [];
        List<double> two = [];
        for (int run = -1; run < runs; run++)
        {
            double two0 = run % 2 == 0 ? other(run) : 0;
            double one1 = ours(run);
            double two1 = run % 2 == 0 ? two0 : other(run);
            if (run >= 0)
            {
                one.Add(one1);
                two.Add(two1);
            }
        }

        return (Median(one), Median(two));
    }

    /// <summary>The power of n with which a cost grows: the slope of the line of least squares through the logarithms.</summary>
    public static double Slope(IReadOnlyCollection<(double N, double Cost)> points)
    {
        double x = points.Average(point => Math.Log(point.N));
        double y = points.Average(point => Math.Log(point.Cost));
        return points.Sum(point => (Math.Log(point.N) - x) * (Math.Log(point.Cost) - y))
            / points.Sum(point => Math.Pow(Math.Log(point.N) - x, 2));
    }

    /// <summary>Eight letters that tell results apart.</summary>
    public static string Hash(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes))[..8];

    /// <summary>Eight letters that tell results apart.</summary>
    public static string Hash(string text) => Hash(System.Text.Encoding.UTF8.GetBytes(text));

    /// <summary>One row of the table that tests/ToolWear.Benchmarks/ratios prints.</summary>
    /// <param name="said">Where to.</param>
    /// <param name="what">What was measured, with its unit where that is not milliseconds.</param>
    /// <param name="n">How many of what it is about.</param>
    /// <param name="ours">The program's figure.</param>
    /// <param name="other">What it is held against.</param>
    /// <param name="ratio">One by the other, or a slope.</param>
    /// <param name="goal">"ratio" or "ours", "&lt;=" or "&gt;=", and a number; empty where none is set.</param>
    /// <param name="hash">Of the result.</param>
    public static void Row(
        TextWriter said,
        string what,
        long n,
        double? ours,
        double? other,
        double? ratio,
        string goal,
        string hash
    ) => said.WriteLine(string.Join('|', what, Invariant($"{n}"), Short(ours), Short(other), Short(ratio), goal, hash));

    /// <summary>Text as it is written everywhere.</summary>
    public static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Short(double? figure) =>
        figure?.ToString(
            Math.Abs(figure.Value) switch
            {
                >= 100 => "0",
                >= 1 => "0.00",
                _ => "0.0000",
            },
            CultureInfo.InvariantCulture
        )
        ?? "";
}
