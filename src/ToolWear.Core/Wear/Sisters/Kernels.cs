using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

// mu_kind             ~ N(-.3, .35^2):           p(k)    = N(mu_k; -.3, .35)
// mu_group | mu_kind  ~ N(mu_kind, .25^2):       A[k,mu] = N(mu; mu_k, .25)
// lambda_i | mu_group ~ N(mu_group, tau^2):      W[mu,l] = N(lambda_l; mu, tau), 0 below 1e-7 of its top
// p and each row are normalised on their grid.    p(mu) = sum_k p(k) A[k,mu]
/// <summary>The steps from kind to group to tool.</summary>
internal static class Kernels
{
    private const double KindMean = -0.3;
    private const double KindSd = 0.35;
    private const double GroupSd = 0.25;
    private const double Negligible = 1e-7;

    /// <summary>A: rows k, columns mu.</summary>
    internal static Rows A { get; } =
        Matrix(Grid.MuRow, Grid.Mus, (k, mu) => Grid.Bell(Grid.Mu(mu), Grid.Mu(k), GroupSd));

    /// <summary>The same with rows mu, columns k.</summary>
    internal static Rows TurnedA { get; } = A.Turned(Grid.Mus, Grid.MuRow);

    /// <summary>W of each tau: rows mu, columns l.</summary>
    internal static ImmutableArray<Rows> W { get; } = [.. Nodes.Taus.Select(MakeW)];

    /// <summary>The same with rows l, columns mu.</summary>
    internal static ImmutableArray<Rows> TurnedW { get; } = [.. W.Select(W => W.Turned(Grid.Lambdas, Grid.MuRow))];

    private static readonly float[] OfKind = Row(Grid.MuRow, Grid.Mus, k => Grid.Bell(Grid.Mu(k), KindMean, KindSd));

    // after A, which it is made of
    private static readonly float[] OfGroup = MakePMu();

    /// <summary>p(k), the weight of each kind mean before any reading.</summary>
    internal static ReadOnlySpan<float> P => OfKind;

    /// <summary>p(mu), the weight of each group mean before any reading.</summary>
    internal static ReadOnlySpan<float> PMu => OfGroup;

    private static float[] MakePMu()
    {
        float[] p = new float[Grid.MuRow];
        A.Sum(OfKind, (0, Grid.Mus), p, 0);
        return p;
    }

    private static Rows MakeW(double tau) =>
        Matrix(
            Grid.Row,
            Grid.Lambdas,
            (mu, l) => Grid.Bell(Grid.Lambda(l), Grid.Mu(mu), tau) is >= Negligible and { } w ? w : 0
        );

    private static Rows Matrix(int row, int columns, Func<int, int, double> weight) =>
        new([.. Enumerable.Range(0, Grid.Mus).SelectMany(mu => Row(row, columns, i => weight(mu, i)))], row);

    // normalised, with room behind it
    private static float[] Row(int row, int columns, Func<int, double> weight)
    {
        float[] made = new float[row];
        double[] own = Grid.Normalised(Enumerable.Range(0, columns).Select(weight));
        Array.ConvertAll(own, each => (float)each).CopyTo(made, 0);
        return made;
    }
}
