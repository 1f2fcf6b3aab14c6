using System.Buffers;

namespace ToolWear.Core.Wear.Sisters;

// Of each shape the noisiest live node comes first, on the whole grid: lambdas within 18 of its largest ln are kept. The
// shape's other nodes are run there, three points wider at each end.  Lik(l) = exp(loglik - max), 0 outside.
//   M(mu) = sum_l W[mu,l] Lik(l)  for each tau
/// <summary>What the readings of one tool say at every node that lives when its turn comes.</summary>
internal sealed class ToolLikelihood : IDisposable
{
    private const float Kept = 18;
    private const int Wider = 3;

    private readonly int[] slots = new int[Nodes.Count];
    private readonly double[] logMax = new double[Nodes.Count];
    private readonly float[] lik;
    private readonly float[] M;
    private readonly (int From, int Count)[] windows = new (int, int)[Shape.All.Length];

    /// <summary>Works the likelihood out.</summary>
    /// <param name="tool">A tool with at least one reading.</param>
    /// <param name="live">The nodes that live, in their order.</param>
    internal ToolLikelihood(ToolRecord tool, IReadOnlyList<int> live)
    {
        slots.AsSpan().Fill(-1);
        lik = ArrayPool<float>.Shared.Rent(live.Count * Grid.Row);
        M = ArrayPool<float>.Shared.Rent(live.Count * Nodes.Taus.Length * Grid.MuRow);
        int rows = (tool.Readings + 2) * Grid.Row;
        float[] room = ArrayPool<float>.Shared.Rent((2 * rows) + (2 * Grid.Row));
        Span<float> d = room.AsSpan(0, rows);
        Span<float> w = room.AsSpan(rows, rows);
        int shape = -1;
        for (int slot = 0; slot < live.Count; slot++)
        {
            int node = live[slot];
            slots[node] = slot;
            bool isFirst = node / Nodes.Noises.Length != shape;
            shape = node / Nodes.Noises.Length;
            (int from, int count) = isFirst ? (0, Grid.Row) : windows[shape];
            if (isFirst)
            {
                tool.Rises(Shape.All[shape], 0, Grid.Row, d);
            }

            Span<float> row = lik.AsSpan(slot * Grid.Row, Grid.Row);
            row.Clear();
            Span<float> inside = row.Slice(from, count);
            ReadingFilter filter = new(room.AsSpan(2 * rows, count), room.AsSpan((2 * rows) + Grid.Row, count));
            tool.Filter(Shape.All[shape], Nodes.NoiseOf(node), d[from..], filter, inside, w);
            float max = Vectors.Max(inside);
            if (isFirst)
            {
                windows[shape] = Window(row, max - Kept);
            }

            Vectors.ExpBelow(inside, max);
            row[Grid.Lambdas..].Clear();
            logMax[node] = max;
            for (int tau = 0; tau < Nodes.Taus.Length; tau++)
            {
                Kernels.TurnedW[tau].Sum(row, WindowOf(node), MOf(node, tau), 0);
            }
        }

        ArrayPool<float>.Shared.Return(room);
    }

    /// <summary>Whether it was worked out at every one of some nodes.</summary>
    internal bool Knows(IReadOnlyList<int> nodes) => nodes.All(node => slots[node] >= 0);

    /// <summary>ln of what a node's row was divided by.</summary>
    internal double LogMax(int node) => logMax[node];

    /// <summary>Lik over lambda at a live node, in the window of its shape.</summary>
    internal ReadOnlySpan<float> At(int node) => lik.AsSpan(slots[node] * Grid.Row, Grid.Row);

    /// <summary>Where Lik of a node is not zero: a whole number of vectors.</summary>
    internal (int From, int Count) WindowOf(int node) => windows[node / Nodes.Noises.Length];

    /// <summary>M over mu.</summary>
    internal Span<float> MOf(int node, int tau) =>
        M.AsSpan(((slots[node] * Nodes.Taus.Length) + tau) * Grid.MuRow, Grid.MuRow);

    /// <summary>Gives the room back.</summary>
    public void Dispose()
    {
        ArrayPool<float>.Shared.Return(lik);
        ArrayPool<float>.Shared.Return(M);
    }

    private static (int From, int Count) Window(ReadOnlySpan<float> loglik, float least)
    {
        int first = 0;
        int last = Grid.Lambdas - 1;
        while (loglik[first] < least)
        {
            first++;
        }

        while (loglik[last] < least)
        {
            last--;
        }

        int from = Math.Max(0, first - Wider) / Vectors.Width * Vectors.Width;
        int end = (Math.Min(Grid.Lambdas - 1, last + Wider) / Vectors.Width * Vectors.Width) + Vectors.Width;
        return (from, end - from);
    }
}
