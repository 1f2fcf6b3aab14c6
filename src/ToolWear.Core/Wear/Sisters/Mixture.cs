using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace ToolWear.Core.Wear.Sisters;

// dG(k) = G(now+k) - G(now)
// F(k) = sum w Phi((m' + dG(k) - 1)/sqrt(P' + phi dG(k) + 1e-12))
// More generally the wear after k more heats lies below y with the chance
//   sum w Phi((y - m' - dG(k))/sqrt(P' + phi dG(k) + 1e-12 + noise)),   noise = 0 or R1 for a reading of it
/// <summary>The wear of one tool now and later: a sum over cells of normal distributions.</summary>
internal sealed class Mixture(ToolRecord tool, ImmutableArray<CellRun> runs)
{
    private const double LeastVariance = 1e-12;

    // the lambdas that any cell uses, so that no curve is worked out elsewhere
    private readonly int from = runs.Min(run => run.From);
    private readonly int end = runs.Max(run => run.From + run.w.Length);

    internal ToolRecord Tool => tool;

    internal ImmutableArray<CellRun> Runs => runs;

    /// <summary>The chance that the wear after k more heats is above y.</summary>
    /// <param name="k">More heats; negative back to the last reading.</param>
    /// <param name="y">A share of the limit: 1 for the limit itself.</param>
    /// <param name="withReading">Whether a sound reading of the wear is meant, with its noise.</param>
    internal double Above(double k, double y, bool withReading)
    {
        Span<double> G = stackalloc double[Grid.Lambdas];
        int curve = -1;
        double sum = 0;
        foreach (CellRun run in runs)
        {
            if (run.CurveNumber != curve)
            {
                curve = run.CurveNumber;
                Rises.G(run.Curve, tool.Segments[^1].x0, tool.Now + k, tool.N0, from, G[..(end - from)]);
            }

            double noise = LeastVariance + (withReading ? ReadingFilter.R1(run.Sigma, tool.v_r) : 0);
            sum += Above(run, G.Slice(run.From - from, run.w.Length), y, noise);
        }

        return Math.Clamp(sum, 0, 1);
    }

    /// <summary>The mean of the wear after k more heats, a share of the limit.</summary>
    internal double Mean(double k)
    {
        Span<double> G = stackalloc double[Grid.Lambdas];
        double sum = 0;
        foreach (CellRun run in runs)
        {
            Rises.G(run.Curve, tool.Segments[^1].x0, tool.Now + k, tool.N0, run.From, G[..run.w.Length]);
            for (int c = 0; c < run.w.Length; c++)
            {
                sum += run.w[c] * (run.m[c] + G[c] - run.GNow[c]);
            }
        }

        return sum;
    }

    /// <summary>The weight of each lambda.</summary>
    internal double[] OfLambda()
    {
        double[] weight = new double[Grid.Lambdas];
        foreach (CellRun run in runs)
        {
            Vectors.AddScaled(weight.AsSpan(run.From, run.w.Length), 1, run.w);
        }

        return weight;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double Above(CellRun run, ReadOnlySpan<double> G, double y, double noise)
    {
        Vector<double> sum = Vector<double>.Zero;
        for (int c = 0; c < run.w.Length; c += Vector<double>.Count)
        {
            Vector<double> dG = new Vector<double>(G.Slice(c, Vector<double>.Count)) - new Vector<double>(run.GNow, c);
            Vector<double> variance = new Vector<double>(run.P, c) + (run.Phi * dG) + new Vector<double>(noise);
            Vector<double> over = new Vector<double>(run.m, c) + dG - new Vector<double>(y);
            sum += new Vector<double>(run.w, c) * NormalCurve.Phi(over / Vector.SquareRoot(variance));
        }

        return Vector.Sum(sum);
    }
}
