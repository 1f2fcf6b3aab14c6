using System.Collections.Immutable;
using System.Numerics;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Sisters;

// Forward through all times of the stretch, readings and asked-for heats alike, then back by the Rauch, Tung &
// Striebel recursion (1965, AIAA J. 3:1445); m-, P- are the forward values before a time, m, P after it:
//   J = P_j / P-_{j+1};   m_j += J (m_{j+1} - m-_{j+1});   P_j += J^2 (P_{j+1} - P-_{j+1})
// The noises of a cell are merged at each time. Beyond now  m' + dg  and  V  of the forecast.
/// <summary>The wear along a whole stretch, before, between and after its readings.</summary>
internal sealed class WearPath
{
    private readonly Mixture mixture;
    private readonly Stretch stretch;
    private readonly (double n, int Reading, int Asked)[] times;
    private readonly float[] before;
    private readonly float[] beforeP;
    private readonly float[] m;
    private readonly float[] P;

    private WearPath(Mixture mixture, Stretch stretch, (double n, int Reading, int Asked)[] times)
    {
        (this.mixture, this.stretch, this.times) = (mixture, stretch, times);
        int size = times.Length * Grid.Row;
        (before, beforeP, m, P) = (new float[size], new float[size], new float[size], new float[size]);
    }

    /// <summary>The expected wear and its band, from the chance low to the chance high.</summary>
    internal static ImmutableArray<WearBand> Bands(
        Mixture mixture,
        Stretch stretch,
        IReadOnlyList<double> heats,
        double low,
        double high
    ) => [.. heats.Zip(Cells(mixture, stretch, heats), (n, cells) => Band(n, cells, mixture.Tool.Limit, low, high))];

    /// <summary>The expected wear alone, in mm: without the band it is had for a fraction of the work.</summary>
    internal static ImmutableArray<double> Fitted(Mixture mixture, Stretch stretch, IReadOnlyList<double> heats) =>
        [.. Cells(mixture, stretch, heats).Select(cells => mixture.Tool.Limit * cells.Mean)];

    private static WearCells[] Cells(Mixture mixture, Stretch stretch, IReadOnlyList<double> heats)
    {
        double now = stretch == mixture.Tool.Last ? mixture.Tool.Now : double.PositiveInfinity;
        WearCells[] cells =
        [
            .. heats.Select(n => Finite.NotNegative(n) > now ? mixture.Later(n - now) : new WearCells(mixture.Weights)),
        ];

        // a reading comes before what is asked at the same heats
        (double n, int Reading, int Asked)[] all =
        [
            .. stretch
                .n.Select((n, j) => (n, j, -1))
                .Concat(heats.Select((n, i) => (n, -1, i)).Where(asked => asked.n <= now))
                .OrderBy(time => time.n),
        ];
        WearPath path = new(mixture, stretch, all);
        foreach (ShapeRun run in mixture.Weights.Runs)
        {
            for (int q = 0; q < Nodes.Noises.Length; q++)
            {
                path.Add(run, q, cells);
            }
        }

        foreach ((_, _, int asked) in all.Where(time => time.Asked >= 0))
        {
            cells[asked].Merge();
        }

        return cells;
    }

    private static WearBand Band(double n, WearCells cells, double limit, double low, double high)
    {
        (double first, double last) = cells.Reach();
        double At(double p) => RisingRoot.Of(cells.Below, p, first, last, (last - first) / 16) ?? last;
        return new WearBand(n, limit * cells.Mean, limit * At(low), limit * At(high));
    }

    private void Add(ShapeRun run, int q, WearCells[] cells)
    {
        if (mixture.Weights.Of(run, q).IndexOfAnyExcept(0f) < 0)
        {
            return;
        }

        Forward(run, Nodes.Noises[q]);
        for (int j = times.Length - 1; j >= 0; j--)
        {
            if (j < times.Length - 1)
            {
                Smooth(j * Grid.Row, run.Count);
            }

            if (times[j].Asked >= 0)
            {
                int row = j * Grid.Row;
                cells[times[j].Asked].Add(run, q, m.AsSpan(row, run.Count), P.AsSpan(row, run.Count));
            }
        }
    }

    private void Forward(ShapeRun run, (double Sigma, double Phi) noise)
    {
        Shape shape = Shape.All[run.Shape];
        Span<float> room = stackalloc float[4 * Grid.Row];
        Span<float> g = room[..run.Count];
        Span<float> after = room.Slice(Grid.Row, run.Count);
        stretch.g(shape, 0, mixture.Tool.N0, run.From, g);
        double c = 0;
        for (int j = 0; j < times.Length; j++)
        {
            (double n, int reading, _) = times[j];
            int row = j * Grid.Row;
            ReadingFilter filter = new(m.AsSpan(row, run.Count), P.AsSpan(row, run.Count));
            if (j == 0)
            {
                filter.Start(stretch.x0, noise.Sigma, mixture.Tool.v_r);
            }
            else
            {
                m.AsSpan(row - Grid.Row, run.Count).CopyTo(m.AsSpan(row));
                P.AsSpan(row - Grid.Row, run.Count).CopyTo(P.AsSpan(row));
            }

            stretch.g(shape, n, mixture.Tool.N0, run.From, after);
            Vectors.TakeFrom(g, after);
            filter.Advance(g, noise.Phi, stretch.c(shape, n) - c);
            c = stretch.c(shape, n);
            after.CopyTo(g);
            m.AsSpan(row, run.Count).CopyTo(before.AsSpan(row));
            P.AsSpan(row, run.Count).CopyTo(beforeP.AsSpan(row));
            if (reading >= 0)
            {
                double R1 = (noise.Sigma * noise.Sigma) + stretch.v[reading];
                filter.Read(stretch.x[reading], R1, room[(2 * Grid.Row)..], room[(3 * Grid.Row)..]);
            }
        }
    }

    private void Smooth(int row, int count)
    {
        int next = row + Grid.Row;
        for (int i = 0; i < count; i += Vectors.Width)
        {
            Vector<float> mine = new(P, row + i);
            Vector<float> P_before = new(beforeP, next + i);
            Vector<float> J = mine / P_before;
            Vector<float> m_change = J * (new Vector<float>(m, next + i) - new Vector<float>(before, next + i));
            (new Vector<float>(m, row + i) + m_change).CopyTo(m, row + i);
            (mine + (J * J * (new Vector<float>(P, next + i) - P_before))).CopyTo(P, row + i);
        }
    }
}
