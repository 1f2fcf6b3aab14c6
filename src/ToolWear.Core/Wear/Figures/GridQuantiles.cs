namespace ToolWear.Core.Wear.Figures;

/// <summary>Quantiles of a distribution on a grid: its cdf is linear inside a cell, centre plus or minus half a step.</summary>
internal static class GridQuantiles
{
    /// <summary>The value below which the share p lies.</summary>
    /// <param name="weight">Weights that sum to 1.</param>
    /// <param name="first">The centre of the first cell.</param>
    /// <param name="step">From centre to centre.</param>
    /// <param name="p">Between 0 and 1.</param>
    internal static double Of(ReadOnlySpan<double> weight, double first, double step, double p)
    {
        double below = 0;
        int last = weight.LastIndexOfAnyExcept(0.0);
        for (int i = 0; i <= last; i++)
        {
            if (weight[i] > 0 && (below + weight[i] >= p || i == last))
            {
                double inside = Math.Min(1, (p - below) / weight[i]);
                return first + (step * (i - 0.5 + inside));
            }

            below += weight[i];
        }

        throw new ArgumentException("a distribution has some weight", nameof(weight));
    }

    /// <summary>The share above a value.</summary>
    internal static double Above(ReadOnlySpan<double> weight, double first, double step, double value)
    {
        double sum = 0;
        for (int i = 0; i < weight.Length; i++)
        {
            double end = first + (step * (i + 0.5));
            sum += weight[i] * Math.Clamp((end - value) / step, 0, 1);
        }

        return sum;
    }
}
