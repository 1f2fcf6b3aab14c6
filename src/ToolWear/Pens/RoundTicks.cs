using System.Globalization;

namespace ToolWear.Pens;

/// <summary>Round numbers along an axis: 1, 2 or 5 times a power of ten apart.</summary>
internal static class RoundTicks
{
    /// <summary>The ticks inside a range.</summary>
    /// <param name="from">The lower end.</param>
    /// <param name="to">The upper end, above the lower.</param>
    /// <param name="most">How many at most, at least 2; more only where there would be fewer than two.</param>
    /// <returns>The ticks in rising order, and how many decimals tell them apart.</returns>
    public static (IReadOnlyList<double> At, int Decimals) Of(double from, double to, int most)
    {
        double step = Step((to - from) / Math.Max(1, most - 1));
        List<double> at = Multiples(step, from, to);
        while (at.Count < 2)
        {
            // one number alone gives no scale
            step = Step(step * 0.399);
            at = Multiples(step, from, to);
        }

        return (at, Math.Max(0, -(int)Math.Floor(Math.Log10(step) + 1e-9)));
    }

    /// <summary>A tick as it stands beside the axis.</summary>
    /// <param name="at">The tick.</param>
    /// <param name="decimals">Its decimals.</param>
    /// <returns>The number; zero has no sign.</returns>
    public static string Text(double at, int decimals)
    {
        string text = at.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.AsSpan().IndexOfAnyInRange('1', '9') < 0 ? text.TrimStart('-') : text;
    }

    /// <summary>The round step that is as large as another or next above it.</summary>
    private static double Step(double least)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        return power
            * (
                least <= power ? 1
                : least <= 2 * power ? 2
                : least <= 5 * power ? 5
                : 10
            );
    }

    private static List<double> Multiples(double step, double from, double to)
    {
        List<double> at = [];
        for (double i = Math.Ceiling((from / step) - 1e-9); i * step <= to + (step * 1e-9); i++)
        {
            at.Add(i * step);
        }

        return at;
    }
}
