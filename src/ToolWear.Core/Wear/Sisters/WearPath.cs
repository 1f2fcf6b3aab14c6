using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

// Forward through all times of the segment, readings and asked-for heats alike, then back by the Rauch, Tung &
// Striebel recursion (1965, AIAA J. 3:1445); m-, P- are the forward values before a time, m, P after it:
//   J = P_j / P-_{j+1};   ms_j = m_j + J (ms_{j+1} - m-_{j+1});   Ps_j = P_j + J^2 (Ps_{j+1} - P-_{j+1})
/// <summary>The wear along a whole segment, before, between and after its readings.</summary>
internal static class WearPath
{
    internal static ImmutableArray<WearBand> Of(Mixture mixture, RecordedSegment segment, IReadOnlyList<double> heats)
    {
        WearTimes times = WearTimes.Of(segment, heats);
        List<(double w, double m, double P)>[] at = [.. heats.Select(_ => new List<(double, double, double)>())];
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

        double limit = mixture.Tool.Limit;
        return [.. heats.Zip(at, (n, cells) => Band(n, cells, limit))];
    }

    private static WearBand Band(double n, List<(double w, double m, double P)> cells, double limit)
    {
        double middle = 0;
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach ((double w, double m, double P) in cells)
        {
            double reach = 10 * Math.Sqrt(P);
            middle += w * m;
            low = Math.Min(low, m - reach);
            high = Math.Max(high, m + reach);
        }

        double Below(double y) => cells.Sum(cell => cell.w * NormalCurve.Phi((y - cell.m) / Math.Sqrt(cell.P)));
        double At(double p) => RisingRoot.Of(Below, p, low, high, (high - low) / 16) ?? high;
        return new WearBand(n, limit * middle, limit * At(0.1), limit * At(0.9));
    }
}
