using System.Buffers;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>Lik(l) of one tool at every node, each node's row divided by its largest value.</summary>
/// <remarks>
/// Of the 225 rows a kind uses those few that its tools agree on, and only they are kept once it has been forecast: a
/// row is 1.4 kB, and there are many tools. Until then those are kept that this tool by itself finds likely, where its
/// kind is small and may agree on any of them. Any other is worked out again when it is asked for, to the same figures.
/// </remarks>
internal sealed class ToolLikelihood
{
    // a node that a tool by itself finds less likely than e^-6 of its best is seldom the one its kind agrees on
    private const double KeptWithin = 6;

    private readonly ToolRecord tool;
    private readonly double[]?[] rows = new double[]?[Nodes.All.Length];
    private readonly bool[] asked = new bool[Nodes.All.Length];
    private readonly double[] logMaxima = new double[Nodes.All.Length];

    /// <summary>Works the likelihood out.</summary>
    /// <param name="tool">A tool with at least one reading.</param>
    /// <param name="keepsLikely">Whether rows are kept before one is asked for.</param>
    internal ToolLikelihood(ToolRecord tool, bool keepsLikely)
    {
        this.tool = tool;
        double[] rented = ArrayPool<double>.Shared.Rent((Nodes.All.Length + tool.Readings) * Grid.Lambdas);
        Span<double> all = rented.AsSpan(0, Nodes.All.Length * Grid.Lambdas);
        Span<double> d = rented.AsSpan(Nodes.All.Length * Grid.Lambdas, tool.Readings * Grid.Lambdas);
        int curve = -1;
        for (int node = 0; node < Nodes.All.Length; node++)
        {
            if (Nodes.All[node].Curve != curve)
            {
                curve = Nodes.All[node].Curve;
                Rises.BetweenReadings(tool, WearCurves.All[curve], d);
            }

            logMaxima[node] = Row(node, d, all.Slice(node * Grid.Lambdas, Grid.Lambdas));
        }

        double least = Nodes.All.Zip(logMaxima, (node, logMax) => node.LogPrior + logMax).Max() - KeptWithin;
        for (int node = 0; keepsLikely && node < Nodes.All.Length; node++)
        {
            if (Nodes.All[node].LogPrior + logMaxima[node] >= least)
            {
                rows[node] = all.Slice(node * Grid.Lambdas, Grid.Lambdas).ToArray();
            }
        }

        ArrayPool<double>.Shared.Return(rented);
    }

    /// <summary>Lik over lambda at a node: at most 1.</summary>
    internal ReadOnlySpan<double> At(int node)
    {
        asked[node] = true;
        return rows[node] ??= Again(node);
    }

    /// <summary>Lets go of the rows that nobody asked for since the last time.</summary>
    internal void LetGo()
    {
        for (int node = 0; node < rows.Length; node++)
        {
            rows[node] = asked[node] ? rows[node] : null;
            asked[node] = false;
        }
    }

    /// <summary>ln of what the row of a node was divided by.</summary>
    internal double LogMax(int node) => logMaxima[node];

    /// <summary>The row of a node, worked out anew.</summary>
    internal double[] Again(int node)
    {
        double[] d = ArrayPool<double>.Shared.Rent(tool.Readings * Grid.Lambdas);
        Rises.BetweenReadings(tool, WearCurves.All[Nodes.All[node].Curve], d);
        double[] row = new double[Grid.Lambdas];
        _ = Row(node, d, row);
        ArrayPool<double>.Shared.Return(d);
        return row;
    }

    private double Row(int node, ReadOnlySpan<double> d, Span<double> row)
    {
        LogLikelihood(tool, Nodes.All[node], d, row);
        double logMax = Vectors.Max(row);
        ExpBelow(row, logMax);
        return logMax;
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
