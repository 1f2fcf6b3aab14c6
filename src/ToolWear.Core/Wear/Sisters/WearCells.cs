using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>The wear at one time: a sum over cells of normal distributions, shares of the limit.</summary>
internal sealed class WearCells
{
    // as far as any normal distribution reaches
    private const double Deviations = 10;

    private readonly List<double> w = [];
    private readonly List<double> m = [];
    private readonly List<double> sd = [];

    /// <summary>The wear to be expected.</summary>
    internal double Mean { get; private set; }

    internal void Add(double weight, double mean, double variance)
    {
        Mean += weight * mean;
        w.Add(weight);
        m.Add(mean);
        sd.Add(Math.Sqrt(variance));
    }

    /// <summary>Where everything lies between.</summary>
    internal (double Low, double High) Reach()
    {
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        for (int c = 0; c < w.Count; c++)
        {
            low = Math.Min(low, m[c] - (Deviations * sd[c]));
            high = Math.Max(high, m[c] + (Deviations * sd[c]));
        }

        return (low, high);
    }

    /// <summary>The chance that the wear lies below y.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal double Below(double y)
    {
        int width = Vector<double>.Count;
        // cells without weight fill the last vector up
        for (; w.Count % width != 0; sd.Add(1))
        {
            w.Add(0);
            m.Add(y);
        }

        ReadOnlySpan<double> weights = CollectionsMarshal.AsSpan(w);
        ReadOnlySpan<double> means = CollectionsMarshal.AsSpan(m);
        ReadOnlySpan<double> deviations = CollectionsMarshal.AsSpan(sd);
        Vector<double> sum = Vector<double>.Zero;
        for (int c = 0; c < weights.Length; c += width)
        {
            Vector<double> over = new Vector<double>(y) - new Vector<double>(means[c..]);
            sum += new Vector<double>(weights[c..]) * NormalCurve.Phi(over / new Vector<double>(deviations[c..]));
        }

        return Vector.Sum(sum);
    }
}
