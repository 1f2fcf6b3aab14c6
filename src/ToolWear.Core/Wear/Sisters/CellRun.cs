using System.Numerics;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>Neighbouring lambdas of one node with their weights; a whole number of vectors, padded with weight 0.</summary>
/// <param name="Node">The node in <see cref="Nodes.All"/>.</param>
/// <param name="From">The first lambda.</param>
/// <param name="w">The weight of each cell.</param>
internal sealed record CellRun(int Node, int From, double[] w)
{
    /// <summary>Mean of the wear now, in shares of the limit; filled by <see cref="CellStates"/>.</summary>
    internal double[] m { get; } = new double[w.Length];

    /// <summary>Variance of the wear now.</summary>
    internal double[] P { get; } = new double[w.Length];

    /// <summary>Where the curve of the node stands now.</summary>
    internal double[] GNow { get; } = new double[w.Length];

    internal double Phi => Nodes.All[Node].Phi;

    internal double Sigma => Nodes.All[Node].Sigma;

    internal int CurveNumber => Nodes.All[Node].Curve;

    internal WearCurve Curve => WearCurves.All[CurveNumber];

    /// <summary>The run from the first to the last cell that weighs anything.</summary>
    internal static CellRun Of(int node, ReadOnlySpan<double> row, int first, int last)
    {
        int width = Vector<double>.Count;
        int from = first / width * width;
        int end = ((last / width) + 1) * width;
        return new CellRun(node, from, row[from..end].ToArray());
    }
}
