using System.Buffers;
using System.Numerics;
using System.Runtime.CompilerServices;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Sisters;

// per cell of one noise  m'_q = m + g(now) - g(last),  P'_q = P + phi_q (g(now) - g(last)) + c(now) - c(last),  merged
// With dg = g(now+k) - g(now):
//   V(k) = P' + phi dg + c(now+k) - c(now) + (.1 dg)^2;   F(k) = sum w Phi((m' + dg - 1)/sqrt V(k))
// and for a caliper reading of the wear V(k) + sigma^2 + v_r, sigma^2 merged like phi.
/// <summary>The wear of one tool now and later: a sum over cells of normal distributions, in shares of the limit.</summary>
internal sealed class Mixture
{
    /// <summary>.1^2: the rest runs some 10 % off the curve.</summary>
    internal const double OffTheCurve = 0.01;

    private readonly double[] gNow;

    // 1 but for what single precision and the cells that were dropped take from it
    private readonly double whole;

    /// <summary>Merges the noises of every cell at the tool's heats now.</summary>
    /// <param name="tool">The tool; the start of its last stretch is known.</param>
    /// <param name="weights">The weights of its cells.</param>
    internal Mixture(ToolRecord tool, TargetWeights weights)
    {
        (Tool, Weights) = (tool, weights);
        Now = new WearCells(weights);
        whole = weights.w.Sum();
        gNow = new double[weights.Cells];
        Gross = new double[tool.Readings];
        float[] room = ArrayPool<float>.Shared.Rent(((2 * tool.Readings) + 5) * Grid.Row);
        foreach (ShapeRun run in weights.Runs)
        {
            Shape shape = Shape.All[run.Shape];
            Span<float> d = room.AsSpan(3 * Grid.Row);
            tool.Rises(shape, run.From, run.Count, d);
            for (int q = 0; q < Nodes.Noises.Length; q++)
            {
                Add(run, q, d, room);
            }

            tool.Last.g(shape, tool.Now, tool.N0, run.From, gNow.AsSpan(run.At, run.Count));
        }

        ArrayPool<float>.Shared.Return(room);
        Now.Merge();
    }

    internal ToolRecord Tool { get; }

    internal TargetWeights Weights { get; }

    /// <summary>m' and P' of every cell.</summary>
    internal WearCells Now { get; }

    /// <summary>(1-w) averaged over the cells for each reading, in order of stretches.</summary>
    internal double[] Gross { get; }

    /// <summary>The chance that the wear after k more heats is above y.</summary>
    /// <param name="k">More heats, zero or more.</param>
    /// <param name="y">A share of the limit: 1 for the limit itself.</param>
    /// <param name="withReading">Whether a sound reading of the wear is meant, with its noise.</param>
    internal double Above(double k, double y, bool withReading)
    {
        Span<double> dg = stackalloc double[Grid.Row];
        double sum = 0;
        foreach (ShapeRun run in Weights.Runs)
        {
            double c = FillRise(run, k, dg[..run.Count]);
            sum += Above(run, dg, c + (withReading ? Tool.v_r : 0), y, withReading ? 1 : 0);
        }

        return Math.Clamp(sum / whole, 0, 1);
    }

    /// <summary>The mean of the wear after k more heats.</summary>
    internal double Mean(double k)
    {
        Span<double> dg = stackalloc double[Grid.Row];
        double sum = 0;
        foreach (ShapeRun run in Weights.Runs)
        {
            _ = FillRise(run, k, dg[..run.Count]);
            for (int i = 0; i < run.Count; i++)
            {
                sum += Weights.w[run.At + i] * (Now.m[run.At + i] + dg[i]);
            }
        }

        return sum;
    }

    /// <summary>The cell of a shape and lambda: the nearest that weighs anything, where that one does not.</summary>
    internal Passage At(int shape, int l)
    {
        ShapeRun run = Weights.Runs.MinBy(run => Math.Abs(run.Shape - shape));
        int i = Math.Clamp(l - run.From, 0, run.Count - 1);
        int at = run.At + i;
        return new(Now.m[at], Now.P[at], Weights.Phi[at], gNow[at], Shape.All[run.Shape], Grid.Lambda(run.From + i));
    }

    /// <summary>The wear after k more heats.</summary>
    internal WearCells Later(double k)
    {
        WearCells later = new(Weights);
        Span<double> dg = stackalloc double[Grid.Row];
        foreach (ShapeRun run in Weights.Runs)
        {
            double c = FillRise(run, k, dg[..run.Count]);
            for (int i = 0; i < run.Count; i += Vector<double>.Count)
            {
                Vector<double> rise = new(dg[i..]);
                (new Vector<double>(Now.m, run.At + i) + rise).CopyTo(later.m, run.At + i);
                V(run.At + i, rise, c, 0).CopyTo(later.P, run.At + i);
            }
        }

        return later;
    }

    private void Add(ShapeRun run, int q, ReadOnlySpan<float> d, Span<float> room)
    {
        ReadOnlySpan<float> w_q = Weights.Of(run, q);
        if (w_q.IndexOfAnyExcept(0f) < 0)
        {
            return;
        }

        Span<float> m = room[..run.Count];
        Span<float> P = room.Slice(Grid.Row, run.Count);
        Span<float> w = room[((Tool.Readings + 5) * Grid.Row)..];
        Tool.Filter(Shape.All[run.Shape], Nodes.Noises[q], d, new(m, P), room.Slice(2 * Grid.Row, run.Count), w);
        Now.Add(run, q, m, P);
        for (int j = 0; j < Gross.Length; j++)
        {
            for (int i = 0; i < run.Count; i++)
            {
                Gross[j] += w_q[i] * (1 - w[(j * Grid.Row) + i]);
            }
        }
    }

    // fills dg and gives c(now+k) - c(now)
    private double FillRise(ShapeRun run, double k, Span<double> dg)
    {
        Shape shape = Shape.All[run.Shape];
        Tool.Last.g(shape, Tool.Now + k, Tool.N0, run.From, dg);
        for (int i = 0; i < dg.Length; i++)
        {
            dg[i] -= gNow[run.At + i];
        }

        return Tool.Last.c(shape, Tool.Now + k) - Tool.Last.c(shape, Tool.Now);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector<double> V(int at, Vector<double> dg, double c, double readings)
    {
        Vector<double> growth = (new Vector<double>(Weights.Phi, at) + (dg * OffTheCurve)) * dg;
        Vector<double> noise = new Vector<double>(Weights.Sigma2, at) * readings;
        return new Vector<double>(Now.P, at) + growth + noise + new Vector<double>(c);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Above(ShapeRun run, ReadOnlySpan<double> dg, double c, double y, double readings)
    {
        Vector<double> sum = Vector<double>.Zero;
        for (int i = 0; i < run.Count; i += Vector<double>.Count)
        {
            Vector<double> rise = new(dg[i..]);
            Vector<double> over = new Vector<double>(Now.m, run.At + i) + rise - new Vector<double>(y);
            Vector<double> z = over / Vector.SquareRoot(V(run.At + i, rise, c, readings));
            sum += new Vector<double>(Weights.w, run.At + i) * NormalCurve.Phi(z);
        }

        return Vector.Sum(sum);
    }
}
