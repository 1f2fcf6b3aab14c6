using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

// Forward through all times of the segment, readings and asked-for heats alike, then back by the Rauch, Tung &
// Striebel recursion (1965, AIAA J. 3:1445); m-, P- are the forward values before a time, m, P after it:
//   J = P_j / P-_{j+1};   ms_j = m_j + J (ms_{j+1} - m-_{j+1});   Ps_j = P_j + J^2 (Ps_{j+1} - P-_{j+1})
/// <summary>The wear along a whole segment, before, between and after its readings.</summary>
internal static class WearPath
{
    /// <summary>The wear to be expected and its band.</summary>
    internal static ImmutableArray<WearBand> Of(Mixture mixture, RecordedSegment segment, IReadOnlyList<double> heats)
    {
        double limit = mixture.Tool.Limit;
        return [.. heats.Zip(Cells(mixture, segment, heats), (n, cells) => Band(n, cells, limit))];
    }

    /// <summary>The wear to be expected alone, in mm: without the band it is had for a fraction of the work.</summary>
    internal static ImmutableArray<double> Fitted(
        Mixture mixture,
        RecordedSegment segment,
        IReadOnlyList<double> heats
    ) => [.. Cells(mixture, segment, heats).Select(cells => mixture.Tool.Limit * cells.Mean)];

    private static WearCells[] Cells(Mixture mixture, RecordedSegment segment, IReadOnlyList<double> heats)
    {
        WearTimes times = WearTimes.Of(segment, heats);
        WearCells[] at = [.. heats.Select(_ => new WearCells())];
        foreach (CellRun run in mixture.Runs)
        {
            WearSmoother smoother = new(mixture.Tool, segment, run, times);
            for (int c = 0; c < run.w.Length; c++)
            {
                if (run.w[c] > 0)
                {
                    smoother.Smooth(c);
                    times.Collect(smoother, run.w[c], at);
                }
            }
        }

        return at;
    }

    private static WearBand Band(double n, WearCells cells, double limit)
    {
        (double low, double high) = cells.Reach();
        double At(double p) => RisingRoot.Of(cells.Below, p, low, high, (high - low) / 16) ?? high;
        return new WearBand(n, limit * cells.Mean, limit * At(0.1), limit * At(0.9));
    }
}
