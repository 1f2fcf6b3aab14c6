using System.Buffers;
using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace ToolWear.Core.Wear.Sisters;

// per cell  m' = m + G(now) - G(last),  P' = P + phi (G(now) - G(last))
/// <summary>Runs a tool's readings through the filter once more, now only in the cells that weigh anything.</summary>
internal static class CellStates
{
    /// <summary>Fills each run's wear now, and gives for each reading the chance that it is a gross error.</summary>
    /// <param name="tool">The tool; the start of its last segment is known.</param>
    /// <param name="runs">Its runs in order of nodes.</param>
    /// <returns>(1-w) averaged over the cells, in order of segments and readings.</returns>
    internal static double[] Fill(ToolRecord tool, ImmutableArray<CellRun> runs)
    {
        double[] gross = new double[tool.Readings];
        double[] d = ArrayPool<double>.Shared.Rent(Math.Max(1, tool.Readings) * Grid.Lambdas);
        int curve = -1;
        foreach (CellRun run in runs)
        {
            if (run.CurveNumber != curve)
            {
                curve = run.CurveNumber;
                Rises.BetweenReadings(tool, run.Curve, d);
            }

            Filter(tool, run, d, gross);
            ToNow(tool, run);
        }

        ArrayPool<double>.Shared.Return(d);
        return gross;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Filter(ToolRecord tool, CellRun run, ReadOnlySpan<double> d, Span<double> gross)
    {
        double R1 = ReadingFilter.R1(run.Sigma, tool.v_r);
        for (int c = 0; c < run.w.Length; c += Vector<double>.Count)
        {
            Vector<double> weight = new(run.w, c);
            ReadingFilter filter = default;
            int j = 0;
            foreach (RecordedSegment segment in tool.Segments)
            {
                filter.Start(segment.x0, run.Sigma, tool.v_r);
                foreach (double x_j in segment.x)
                {
                    filter.Advance(new Vector<double>(d[((j * Grid.Lambdas) + run.From + c)..]), run.Phi);
                    _ = filter.Read(x_j, R1, out Vector<double> w);
                    gross[j] += Vector.Sum(weight * (Vector<double>.One - w));
                    j++;
                }
            }

            filter.m.CopyTo(run.m, c);
            filter.P.CopyTo(run.P, c);
        }
    }

    private static void ToNow(ToolRecord tool, CellRun run)
    {
        double x0 = tool.Segments[^1].x0;
        Span<double> GLast = stackalloc double[Grid.Lambdas];
        GLast = GLast[..run.w.Length];
        Rises.G(run.Curve, x0, tool.LastRead, tool.N0, run.From, GLast);
        Rises.G(run.Curve, x0, tool.Now, tool.N0, run.From, run.GNow);
        for (int c = 0; c < run.w.Length; c++)
        {
            double d = run.GNow[c] - GLast[c];
            run.m[c] += d;
            run.P[c] += run.Phi * d;
        }
    }
}
