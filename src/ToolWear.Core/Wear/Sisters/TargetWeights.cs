using System.Buffers;
using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

// Target tool t in group g:
//   C(mu) = F_g^{-t}(mu) sum_k D(k) A[k,mu],   D(k) = p(k) prod_{other g} U_g(k)
//   pi(l) = sum_mu C(mu) W[mu,l]
//   weight(cell) = p(node) p(tau) e^{scale logs} pi(l) Lik_t(l), summed over tau, normalised;
//   cells below 1e-9 dropped and normalised again
/// <summary>The weight of every cell (node, lambda) for one tool.</summary>
internal static class TargetWeights
{
    private const double Dropped = 1e-9;

    // what a mu must give to the whole of its node for its row of W to be added
    private const double Negligible = 1e-15;

    /// <summary>The runs of cells that weigh anything, in order of nodes; their weights sum to 1.</summary>
    internal static ImmutableArray<CellRun> Of(KindPool pool, int target)
    {
        int size = Nodes.All.Length * Grid.Lambdas;
        double[] rented = ArrayPool<double>.Shared.Rent(size);
        Span<double> weight = rented.AsSpan(0, size);
        weight.Clear();
        foreach (PooledNode sums in pool.Nodes)
        {
            AddPi(pool, target, sums, weight.Slice(sums.Node * Grid.Lambdas, Grid.Lambdas));
        }

        if (pool.Tools[target].Likelihood is { } likelihood)
        {
            foreach (int node in pool.Nodes.Select(sums => sums.Node).Distinct())
            {
                Vectors.Multiply(weight.Slice(node * Grid.Lambdas, Grid.Lambdas), likelihood.At(node));
            }
        }

        ScaleToSum(weight, DropBelow(weight, Dropped * Sum(weight)));
        ImmutableArray<CellRun> runs = Runs(weight);
        ArrayPool<double>.Shared.Return(rented);
        return runs;
    }

    private static void AddPi(KindPool pool, int target, PooledNode sums, Span<double> pi)
    {
        Span<double> C = stackalloc double[Grid.Mus];
        double factor = Math.Exp(sums.Ceiling + CWithout(pool, target, sums, C) - pool.Best);
        ReadOnlySpan<double> M_t = sums.MOf(target);
        double whole = M_t.IsEmpty ? Sum(C) : Vectors.Dot(C, M_t);
        for (int mu = 0; mu < Grid.Mus; mu++)
        {
            if (C[mu] * (M_t.IsEmpty ? 1 : M_t[mu]) > Negligible * whole)
            {
                Vectors.AddScaled(pi, factor * C[mu], Kernels.W(sums.Tau, mu));
            }
        }
    }

    // fills C and gives the ln of what it was divided by
    private static double CWithout(KindPool pool, int target, PooledNode sums, Span<double> C)
    {
        int g = pool.Tools[target].Group;
        Span<double> D = stackalloc double[Grid.Mus];
        double logScale = sums.WithoutGroups(g, g, D);
        C.Clear();
        for (int k = 0; k < Grid.Mus; k++)
        {
            Vectors.AddScaled(C, D[k], Kernels.A(k));
        }

        Span<double> F = stackalloc double[Grid.Mus];
        logScale += sums.FWithout(target, g, F);
        Vectors.Multiply(C, F);
        logScale += Vectors.ScaleToMax(C);
        return logScale;
    }

    private static double DropBelow(Span<double> weight, double least)
    {
        double sum = 0;
        for (int i = 0; i < weight.Length; i++)
        {
            weight[i] = weight[i] < least ? 0 : weight[i];
            sum += weight[i];
        }

        return sum;
    }

    private static void ScaleToSum(Span<double> weight, double sum)
    {
        for (int i = 0; i < weight.Length; i++)
        {
            weight[i] /= sum;
        }
    }

    private static ImmutableArray<CellRun> Runs(ReadOnlySpan<double> weight)
    {
        ImmutableArray<CellRun>.Builder runs = ImmutableArray.CreateBuilder<CellRun>();
        for (int node = 0; node < Nodes.All.Length; node++)
        {
            ReadOnlySpan<double> row = weight.Slice(node * Grid.Lambdas, Grid.Lambdas);
            int first = row.IndexOfAnyExcept(0.0);
            if (first >= 0)
            {
                runs.Add(CellRun.Of(node, row, first, row.LastIndexOfAnyExcept(0.0)));
            }
        }

        return runs.ToImmutable();
    }

    private static double Sum(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        return sum;
    }
}
