namespace ToolWear.Core.Wear.Sisters;

// n_eq = N Ginv(x0) (0 where x0 <= 0), N = N0 exp(lambda):
//   G((n_eq + n)/N) = G(Ginv(x0) + (n/N0) exp(-lambda))
/// <summary>How far a curve has risen after some heats of a segment, at every lambda of the grid.</summary>
internal static class Rises
{
    private static readonly double[] ExpMinusLambda =
    [
        .. Enumerable.Range(0, Grid.Lambdas).Select(l => Math.Exp(-Grid.Lambda(l))),
    ];

    /// <summary>G((n_eq + n)/N) for lambda from the given point on, as many as G is long.</summary>
    internal static void G(WearCurve curve, double x0, double n, double N0, int from, Span<double> G)
    {
        double u0 = curve.Inverse(x0);
        Span<double> u = stackalloc double[Grid.Lambdas];
        u = u[..G.Length];
        for (int l = 0; l < u.Length; l++)
        {
            u[l] = u0 + (n / N0 * ExpMinusLambda[from + l]);
        }

        curve.Mean(u, G);
    }

    /// <summary>d = G((n_eq+n_j)/N) - G((n_eq+n_{j-1})/N) for every reading of every segment, one row of lambdas each.</summary>
    /// <param name="tool">The tool.</param>
    /// <param name="curve">The curve.</param>
    /// <param name="d">Room for readings x lambdas.</param>
    internal static void BetweenReadings(ToolRecord tool, WearCurve curve, Span<double> d)
    {
        Span<double> before = stackalloc double[Grid.Lambdas];
        Span<double> after = stackalloc double[Grid.Lambdas];
        foreach (RecordedSegment segment in tool.Segments)
        {
            G(curve, segment.x0, 0, tool.N0, 0, before);
            foreach (double n_j in segment.n)
            {
                G(curve, segment.x0, n_j, tool.N0, 0, after);
                for (int l = 0; l < Grid.Lambdas; l++)
                {
                    d[l] = after[l] - before[l];
                }

                d = d[Grid.Lambdas..];
                after.CopyTo(before);
            }
        }
    }
}
