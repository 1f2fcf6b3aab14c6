using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

// lambda_i | mu_group ~ N(mu_group, tau^2):      W[mu,l] = row-normalised N(lambda_l; mu, tau)
// mu_group | mu_kind  ~ N(mu_kind, .25^2):       A[k,mu] = row-normalised N(mu; mu_k, .25)
// mu_kind             ~ N(-.3, .45^2):           p(k)    = normalised N(mu_k; -.3, .45)
/// <summary>The steps from kind to group to tool, worked out once for the whole process.</summary>
internal static class Kernels
{
    private const double KindMean = -0.3;
    private const double KindSd = 0.45;
    private const double GroupSd = 0.25;

    // one matrix a tau, rows mu, columns l
    private static readonly ImmutableArray<double[]> AllW = [.. Nodes.Taus.Select(MakeW)];
    private static readonly ImmutableArray<double[]> UpToW = [.. AllW.Select(Running)];
    private static readonly double[] AllA = MakeA();
    private static readonly double[] AllP = Grid.Normalised(
        Enumerable.Range(0, Grid.Mus).Select(k => Grid.LogNormal(Grid.Mu(k), KindMean, KindSd))
    );

    /// <summary>The row of W for a group mean mu, over all lambda.</summary>
    internal static ReadOnlySpan<double> W(int tau, int mu) => AllW[tau].AsSpan(mu * Grid.Lambdas, Grid.Lambdas);

    /// <summary>The lambda that a share of the row of W for a group mean mu falls on.</summary>
    internal static int PickW(int tau, int mu, double share)
    {
        ReadOnlySpan<double> upTo = UpToW[tau].AsSpan(mu * Grid.Lambdas, Grid.Lambdas);
        int at = upTo.BinarySearch(share * upTo[^1]);
        return Math.Min(at < 0 ? ~at : at + 1, Grid.Lambdas - 1);
    }

    /// <summary>The row of A for a kind mean k, over all mu.</summary>
    internal static ReadOnlySpan<double> A(int k) => AllA.AsSpan(k * Grid.Mus, Grid.Mus);

    /// <summary>The weight of each kind mean before any reading.</summary>
    internal static ReadOnlySpan<double> P => AllP;

    private static double[] MakeW(double tau) =>
        Rows(mu =>
            Grid.Normalised(
                Enumerable.Range(0, Grid.Lambdas).Select(l => Grid.LogNormal(Grid.Lambda(l), Grid.Mu(mu), tau))
            )
        );

    private static double[] Running(double[] rows)
    {
        double[] upTo = new double[rows.Length];
        for (int i = 0; i < rows.Length; i++)
        {
            upTo[i] = rows[i] + (i % Grid.Lambdas == 0 ? 0 : upTo[i - 1]);
        }

        return upTo;
    }

    private static double[] MakeA() =>
        Rows(k =>
            Grid.Normalised(
                Enumerable.Range(0, Grid.Mus).Select(mu => Grid.LogNormal(Grid.Mu(mu), Grid.Mu(k), GroupSd))
            )
        );

    private static double[] Rows(Func<int, double[]> row) => [.. Enumerable.Range(0, Grid.Mus).SelectMany(row)];
}
