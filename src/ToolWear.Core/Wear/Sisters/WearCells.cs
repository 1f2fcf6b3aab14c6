using System.Numerics;
using System.Runtime.CompilerServices;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Sisters;

// w = sum w_q;  m' = sum w_q m_q / w;  P' = sum w_q [P_q + (m_q - m')^2] / w
/// <summary>The wear at one time: the noises of each cell (shape, lambda) merged into one normal distribution.</summary>
/// <param name="weights">The weights of the cells.</param>
internal sealed class WearCells(TargetWeights weights)
{
    // as far as any normal distribution reaches
    private const double Deviations = 10;

    /// <summary>m' of each cell, in shares of the limit.</summary>
    internal double[] m { get; } = new double[weights.Cells];

    /// <summary>P' of each cell.</summary>
    internal double[] P { get; } = new double[weights.Cells];

    /// <summary>The expected wear.</summary>
    internal double Mean => m.Zip(weights.w, (each, w) => each * w).Sum();

    /// <summary>Adds one noise of a run.</summary>
    internal void Add(ShapeRun run, int noise, ReadOnlySpan<float> m_q, ReadOnlySpan<float> P_q)
    {
        ReadOnlySpan<float> w_q = weights.Of(run, noise);
        for (int c = 0; c < w_q.Length; c++)
        {
            double mean = m_q[c];
            m[run.At + c] += w_q[c] * mean;
            P[run.At + c] += w_q[c] * (P_q[c] + (mean * mean));
        }
    }

    /// <summary>Makes normal distributions of what was added.</summary>
    internal void Merge()
    {
        for (int c = 0; c < m.Length; c++)
        {
            double w = weights.w[c];
            m[c] = w > 0 ? m[c] / w : 0;
            P[c] = w > 0 ? (P[c] / w) - (m[c] * m[c]) : 1;
        }
    }

    /// <summary>Where everything lies between.</summary>
    internal (double Low, double High) Reach()
    {
        (double low, double high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int c = 0; c < m.Length; c++)
        {
            double reach = weights.w[c] > 0 ? Deviations * Math.Sqrt(P[c]) : 0;
            (low, high) = (Math.Min(low, m[c] - reach), Math.Max(high, m[c] + reach));
        }

        return (low, high);
    }

    /// <summary>The chance that the wear lies below y.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal double Below(double y)
    {
        Vector<double> sum = Vector<double>.Zero;
        for (int c = 0; c < m.Length; c += Vector<double>.Count)
        {
            Vector<double> over = new Vector<double>(y) - new Vector<double>(m, c);
            Vector<double> z = over / Vector.SquareRoot(new Vector<double>(P, c));
            sum += new Vector<double>(weights.w, c) * NormalCurve.Phi(z);
        }

        return Vector.Sum(sum);
    }
}
