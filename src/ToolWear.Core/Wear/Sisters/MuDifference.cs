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
        Span<float> D = stackalloc float[Grid.MuRow];
        // sqrt D(k) A[k,mu]: a product of two of its rows' numbers is the same, whichever group comes first
        Span<float> B = stackalloc float[Grid.Mus * Grid.MuRow];
        Span<float> joint = stackalloc float[Grid.MuRow];
        foreach ((int node, int tau, double logWeight) in pool.Pairs)
        {
            double[] own = new double[difference.Length];
            pool.WithoutGroups(node, tau, groupA, groupB, D);
            for (int k = 0; k < Grid.Mus; k++)
            {
                Kernels.A[k].CopyTo(B[(k * Grid.MuRow)..]);
                Vectors.Scale(B.Slice(k * Grid.MuRow, Grid.MuRow), MathF.Sqrt(D[k]));
            }

            ReadOnlySpan<float> F_A = pool.FOf(node, tau, groupA);
            ReadOnlySpan<float> F_B = pool.FOf(node, tau, groupB);
            for (int a = 0; a < Grid.Mus; a++)
            {
                // joint(b) = F_A(a) F_B(b) sum_k D(k) A[k,a] A[k,b]
                joint.Clear();
                for (int k = 0; k < Grid.Mus; k++)
                {
                    Vectors.AddScaled(joint, B[(k * Grid.MuRow) + a], B.Slice(k * Grid.MuRow, Grid.MuRow));
                }

                for (int b = 0; b < Grid.Mus; b++)
                {
                    own[a - b + Grid.Mus - 1] += (double)joint[b] * F_A[a] * F_B[b];
                }
            }

            double factor = Math.Exp(logWeight) / own.Sum();
            for (int i = 0; i < own.Length; i++)
            {
                difference[i] += factor * own[i];
            }
        }

        double whole = difference.Sum();
        return [.. difference.Select(weight => weight / whole)];
    }
}
