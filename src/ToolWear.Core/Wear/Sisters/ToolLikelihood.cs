using System.Buffers;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>Lik(l) of one tool at every node, each node's row divided by its largest value.</summary>
internal sealed class ToolLikelihood
{
    private readonly double[] rows;
    private readonly double[] logMaxima;

    private ToolLikelihood(double[] lik, double[] logMax)
    {
        rows = lik;
        logMaxima = logMax;
    }

    /// <summary>Lik over lambda at a node: at most 1.</summary>
    internal ReadOnlySpan<double> At(int node) => rows.AsSpan(node * Grid.Lambdas, Grid.Lambdas);

    /// <summary>ln of what the row of a node was divided by.</summary>
    internal double LogMax(int node) => logMaxima[node];

    /// <summary>The likelihood of a tool with readings, or null: one without readings says nothing.</summary>
    internal static ToolLikelihood? Of(ToolRecord tool)
    {
        if (tool.Readings == 0)
        {
            return null;
        }

        double[] lik = new double[Nodes.All.Length * Grid.Lambdas];
        double[] logMax = new double[Nodes.All.Length];
        double[] d = ArrayPool<double>.Shared.Rent(tool.Readings * Grid.Lambdas);
        int curve = -1;
        for (int node = 0; node < Nodes.All.Length; node++)
        {
            if (Nodes.All[node].Curve != curve)
            {
                curve = Nodes.All[node].Curve;
                Rises.BetweenReadings(tool, WearCurves.All[curve], d);
            }

            Span<double> row = lik.AsSpan(node * Grid.Lambdas, Grid.Lambdas);
            LogLikelihood(tool, Nodes.All[node], d, row);
            logMax[node] = Vectors.Max(row);
            ExpBelow(row, logMax[node]);
        }

        ArrayPool<double>.Shared.Return(d);
        return new ToolLikelihood(lik, logMax);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void LogLikelihood(ToolRecord tool, Node node, ReadOnlySpan<double> d, Span<double> logLik)
    {
        double R1 = ReadingFilter.R1(node.Sigma, tool.v_r);
        for (int l = 0; l < Grid.Lambdas; l += Vector<double>.Count)
        {
            ReadingFilter filter = default;
            Vector<double> sum = Vector<double>.Zero;
            int row = l;
            foreach (RecordedSegment segment in tool.Segments)
            {
                filter.Start(segment.x0, node.Sigma, tool.v_r);
                foreach (double x_j in segment.x)
                {
                    filter.Advance(new Vector<double>(d.Slice(row, Vector<double>.Count)), node.Phi);
                    sum += Vector.Log(filter.Read(x_j, R1, out _));
                    row += Grid.Lambdas;
                }
            }

            sum.CopyTo(logLik[l..]);
        }
    }

    private static void ExpBelow(Span<double> logLik, double most)
    {
        Vector<double> top = new(most);
        for (int l = 0; l < logLik.Length; l += Vector<double>.Count)
        {
            Span<double> part = logLik.Slice(l, Vector<double>.Count);
            Vector.Exp(new Vector<double>(part) - top).CopyTo(part);
        }
    }
}
