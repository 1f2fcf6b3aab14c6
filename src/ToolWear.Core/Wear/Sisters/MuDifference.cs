namespace ToolWear.Core.Wear.Sisters;

// Joint posterior of (mu_A, mu_B), summed over nodes, tau and mu_k:
//   p(k) prod_{other g} U_g(k) A[k,a] A[k,b] F_A(a) F_B(b)
/// <summary>How far the mean log-lives of two groups lie apart.</summary>
internal static class MuDifference
{
    /// <summary>The first point of the grid of differences, whose step is that of mu.</summary>
    internal const double First = -(Grid.Mus - 1) * Grid.MuStep;

    /// <summary>The weight of each difference mu_A - mu_B; they sum to 1.</summary>
    internal static double[] Of(KindPool pool, int groupA, int groupB)
    {
        double[] difference = new double[(2 * Grid.Mus) - 1];
        double[] joint = new double[Grid.Mus * Grid.Mus];
        foreach (PooledNode sums in pool.Nodes)
        {
            AddJoint(sums, groupA, groupB, pool.Best, joint);
            AddDifferences(sums, groupA, groupB, joint, difference);
        }

        double whole = difference.Sum();
        return [.. difference.Select(weight => weight / whole)];
    }

    // joint(a,b) = e^{scale} sum_k D(k) A[k,a] A[k,b]
    private static void AddJoint(PooledNode sums, int groupA, int groupB, double best, double[] joint)
    {
        Span<double> D = stackalloc double[Grid.Mus];
        double logScale = sums.WithoutGroups(groupA, groupB, D);
        logScale += sums.LogScaleOf(groupA) + sums.LogScaleOf(groupB);
        double factor = Math.Exp(sums.Ceiling + logScale - best);
        Array.Clear(joint);
        for (int k = 0; k < Grid.Mus; k++)
        {
            ReadOnlySpan<double> A_k = Kernels.A(k);
            for (int a = 0; a < Grid.Mus; a++)
            {
                Vectors.AddScaled(joint.AsSpan(a * Grid.Mus, Grid.Mus), factor * D[k] * A_k[a], A_k);
            }
        }
    }

    private static void AddDifferences(PooledNode sums, int groupA, int groupB, double[] joint, double[] difference)
    {
        ReadOnlySpan<double> F_A = sums.FOf(groupA);
        ReadOnlySpan<double> F_B = sums.FOf(groupB);
        for (int a = 0; a < Grid.Mus; a++)
        {
            for (int b = 0; b < Grid.Mus; b++)
            {
                difference[a - b + Grid.Mus - 1] += joint[(a * Grid.Mus) + b] * F_A[a] * F_B[b];
            }
        }
    }
}
