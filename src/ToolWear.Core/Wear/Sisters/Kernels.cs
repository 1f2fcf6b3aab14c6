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

    // one matrix a tau, rows mu, columns l; and the same with rows l, columns mu
    private static readonly ImmutableArray<float[]> AllW = [.. Nodes.Taus.Select(MakeW)];
    private static readonly ImmutableArray<float[]> Turned = [.. AllW.Select(Turn)];
    private static readonly float[] AllA = Rows(
        Grid.MuRow,
        Grid.Mus,
        (k, mu) => Grid.Bell(Grid.Mu(mu), Grid.Mu(k), GroupSd)
    );
    private static readonly float[] OfKind = MakeP();
    private static readonly float[] OfGroup = MakePMu();

    // the whole vectors in which a row of W is not 0, and a column
    private static readonly ImmutableArray<(int From, int End)[]> RowBands = [.. AllW.Select(W => Bands(W, Grid.Row))];
    private static readonly ImmutableArray<(int From, int End)[]> ColumnBands =
    [
        .. Turned.Select(W => Bands(W, Grid.MuRow)),
    ];

    /// <summary>p(k), the weight of each kind mean before any reading.</summary>
    internal static ReadOnlySpan<float> P => OfKind;

    /// <summary>p(mu), the weight of each group mean before any reading.</summary>
    internal static ReadOnlySpan<float> PMu => OfGroup;

    /// <summary>The row of W for a group mean mu, over all lambda.</summary>
    internal static ReadOnlySpan<float> W(int tau, int mu) => AllW[tau].AsSpan(mu * Grid.Row, Grid.Row);

    /// <summary>The column of W for a lambda, over all mu.</summary>
    internal static ReadOnlySpan<float> ColumnOfW(int tau, int l) => Turned[tau].AsSpan(l * Grid.MuRow, Grid.MuRow);

    /// <summary>Where a row of W is not 0.</summary>
    internal static (int From, int End) BandOfW(int tau, int mu) => RowBands[tau][mu];

    /// <summary>Where a column of W is not 0.</summary>
    internal static (int From, int End) BandOfColumn(int tau, int l) => ColumnBands[tau][l];

    /// <summary>The row of A for a kind mean k, over all mu.</summary>
    internal static ReadOnlySpan<float> A(int k) => AllA.AsSpan(k * Grid.MuRow, Grid.MuRow);

    /// <summary>Q(mu) = sum_k D(k) A[k,mu].</summary>
    internal static void GroupOf(ReadOnlySpan<float> D, Span<float> Q)
    {
        Q.Clear();
        for (int k = 0; k < Grid.Mus; k++)
        {
            Vectors.AddScaled(Q, D[k], A(k));
        }
    }

    private static float[] MakeP()
    {
        float[] p = new float[Grid.MuRow];
        Grid.Normalised(Enumerable.Range(0, Grid.Mus).Select(k => Grid.Bell(Grid.Mu(k), KindMean, KindSd)))
            .Select(each => (float)each)
            .ToArray()
            .CopyTo(p, 0);
        return p;
    }

    private static float[] MakePMu()
    {
        float[] p = new float[Grid.MuRow];
        GroupOf(OfKind, p);
        return p;
    }

    private static float[] MakeW(double tau) =>
        Rows(
            Grid.Row,
            Grid.Lambdas,
            (mu, l) => Grid.Bell(Grid.Lambda(l), Grid.Mu(mu), tau) is >= Negligible and { } w ? w : 0
        );

    private static float[] Rows(int row, int columns, Func<int, int, double> weight)
    {
        float[] rows = new float[Grid.Mus * row];
        for (int mu = 0; mu < Grid.Mus; mu++)
        {
            double[] own = Grid.Normalised(Enumerable.Range(0, columns).Select(i => weight(mu, i)));
            Array.ConvertAll(own, each => (float)each).CopyTo(rows, mu * row);
        }

        return rows;
    }

    private static (int From, int End)[] Bands(float[] matrix, int row) =>
        [
            .. matrix
                .Chunk(row)
                .Select(each =>
                    (
                        Math.Max(0, Array.FindIndex(each, w => w != 0)) / Vectors.Width * Vectors.Width,
                        (Array.FindLastIndex(each, w => w != 0) + Vectors.Width) / Vectors.Width * Vectors.Width
                    )
                ),
        ];

    private static float[] Turn(float[] W)
    {
        float[] turned = new float[Grid.Lambdas * Grid.MuRow];
        for (int mu = 0; mu < Grid.Mus; mu++)
        {
            for (int l = 0; l < Grid.Lambdas; l++)
            {
                turned[(l * Grid.MuRow) + mu] = W[(mu * Grid.Row) + l];
            }
        }

        return turned;
    }
}
