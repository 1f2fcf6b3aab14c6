using System.Buffers;
using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>Neighbouring lambdas of one shape, a whole number of vectors.</summary>
/// <param name="Shape">Its place among the shapes.</param>
/// <param name="From">The first lambda.</param>
/// <param name="Count">How many there are.</param>
/// <param name="At">Where its first cell stands among all.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct ShapeRun(int Shape, int From, int Count, int At);

// Target tool t in group g:
//   C(mu) = F_g^{-t}(mu) sum_k D(k) A[k,mu],   D(k) = p(k) prod_{other g} U_g(k),   F_g^{-t} = F_g/M_t, 0 where M_t is
//   pi(l) = sum_mu C(mu) W[mu,l]
//   weight(cell) = sum over tau of p(shape) p(sigma) p(phi) p(tau) pi(l) Lik_t(l), normalised over all cells of t;
//   what is merged of the noises of one (shape, lambda) is dropped below 1e-8 of the sum
/// <summary>The weight of every cell (shape, noise, lambda) for one tool.</summary>
internal sealed class TargetWeights
{
    private const double Dropped = 1e-8;

    // those of the first noise at every cell, then of the next
    private readonly float[] w_q;

    private TargetWeights(ImmutableArray<ShapeRun> runs)
    {
        Runs = runs;
        Cells = runs.Sum(run => run.Count);
        w_q = new float[Nodes.Noises.Length * Cells];
        (w, Phi, Sigma2) = (new double[Cells], new double[Cells], new double[Cells]);
    }

    /// <summary>The cells (shape, lambda) that weigh anything, in order of shapes.</summary>
    internal ImmutableArray<ShapeRun> Runs { get; }

    /// <summary>How many cells (shape, lambda) there are.</summary>
    internal int Cells { get; }

    /// <summary>w of each cell (shape, lambda).</summary>
    internal double[] w { get; }

    /// <summary>phi of each, merged.</summary>
    internal double[] Phi { get; }

    /// <summary>sigma^2 of each, merged.</summary>
    internal double[] Sigma2 { get; }

    /// <summary>The weights of one noise in a run.</summary>
    internal Span<float> Of(ShapeRun run, int noise) => w_q.AsSpan((noise * Cells) + run.At, run.Count);

    /// <summary>The weights for a tool of the pool, or for one that the pool does not have and that was never read.</summary>
    /// <param name="pool">The pool.</param>
    /// <param name="group">The tool's group, -1 for one that the kind never had.</param>
    /// <param name="likelihood">What its readings say, null where there are none.</param>
    internal static TargetWeights Of(KindPool pool, int group, ToolLikelihood? likelihood)
    {
        float[] rented = ArrayPool<float>.Shared.Rent((Nodes.Count + Shape.All.Length + 1) * Grid.Row);
        Span<float> all = rented.AsSpan(0, Nodes.Count * Grid.Row);
        Span<float> merged = rented.AsSpan(all.Length, Shape.All.Length * Grid.Row);
        Span<float> own = rented.AsSpan(all.Length + merged.Length, Grid.Row);
        rented.AsSpan().Clear();
        Span<float> C = stackalloc float[Grid.MuRow];
        foreach ((int node, int tau, double logWeight) in pool.Pairs)
        {
            (int from, int count) = likelihood?.WindowOf(node) ?? (0, Grid.Row);
            FillC(pool, (node, tau, logWeight), group, likelihood, C);
            Kernels.W[tau].Sum(C, (0, Grid.Mus), own[..count], from);
            Vectors.AddScaled(all.Slice((node * Grid.Row) + from, count), 1, own);
        }

        double sum = 0;
        foreach (int node in pool.Live)
        {
            Span<float> row = all.Slice(node * Grid.Row, Grid.Row);
            if (likelihood is not null)
            {
                Vectors.Multiply(row, likelihood.At(node));
            }

            Vectors.AddScaled(merged.Slice(node / Nodes.Noises.Length * Grid.Row, Grid.Row), 1, row);
            sum += Vectors.Sum(row);
        }

        TargetWeights weights = Kept(all, merged, sum);
        ArrayPool<float>.Shared.Return(rented);
        return weights;
    }

    /// <summary>The mean of mu of a group: ln of how long its tools usually last, in parts of what was guessed.</summary>
    internal static double MeanMu(KindPool pool, int group)
    {
        Span<float> C = stackalloc float[Grid.MuRow];
        (double sum, double whole) = (0, 0);
        foreach ((int, int, double) pair in pool.Pairs)
        {
            FillC(pool, pair, group, null, C);
            for (int mu = 0; mu < Grid.Mus; mu++)
            {
                (sum, whole) = (sum + (C[mu] * Grid.Mu(mu)), whole + C[mu]);
            }
        }

        return sum / whole;
    }

    // scaled so that the weights of this node and tau sum to what its evidence says
    private static void FillC(
        KindPool pool,
        (int Node, int Tau, double LogWeight) pair,
        int group,
        ToolLikelihood? likelihood,
        Span<float> C
    )
    {
        Span<float> D = stackalloc float[Grid.MuRow];
        _ = pool.WithoutGroups(pair.Node, pair.Tau, group, group, D);
        Kernels.A.Sum(D, (0, Grid.Mus), C, 0);
        if (group >= 0)
        {
            Vectors.Multiply(C, pool.FOf(pair.Node, pair.Tau, group));
        }

        Vectors.Scale(C, (float)(Math.Exp(pair.LogWeight) / Vectors.Sum(C)));
        if (likelihood is not null)
        {
            ReadOnlySpan<float> M_t = likelihood.MOf(pair.Node, pair.Tau);
            for (int mu = 0; mu < Grid.Mus; mu++)
            {
                C[mu] = M_t[mu] > 0 ? C[mu] / M_t[mu] : 0;
            }
        }
    }

    private static TargetWeights Kept(ReadOnlySpan<float> all, Span<float> merged, double sum)
    {
        foreach (ref float cell in merged)
        {
            cell = cell >= Dropped * sum ? (float)(1 / sum) : 0;
        }

        ImmutableArray<ShapeRun> runs = RunsOf(merged);
        TargetWeights kept = new(runs);
        foreach (ShapeRun run in runs)
        {
            ReadOnlySpan<float> scale = merged.Slice((run.Shape * Grid.Row) + run.From, run.Count);
            for (int q = 0; q < Nodes.Noises.Length; q++)
            {
                int row = ((run.Shape * Nodes.Noises.Length) + q) * Grid.Row;
                kept.Add(run, q, all.Slice(row + run.From, run.Count), scale);
            }
        }

        kept.Merge();
        return kept;
    }

    private void Add(ShapeRun run, int q, ReadOnlySpan<float> weight, ReadOnlySpan<float> scale)
    {
        (double sigma, double phi) = Nodes.Noises[q];
        Span<float> own = Of(run, q);
        for (int c = 0; c < own.Length; c++)
        {
            own[c] = weight[c] * scale[c];
            w[run.At + c] += own[c];
            Phi[run.At + c] += own[c] * phi;
            Sigma2[run.At + c] += own[c] * sigma * sigma;
        }
    }

    private void Merge()
    {
        for (int c = 0; c < w.Length; c++)
        {
            double whole = w[c] > 0 ? w[c] : 1;
            (Phi[c], Sigma2[c]) = (Phi[c] / whole, Sigma2[c] / whole);
        }
    }

    private static ImmutableArray<ShapeRun> RunsOf(ReadOnlySpan<float> kept)
    {
        ImmutableArray<ShapeRun>.Builder runs = ImmutableArray.CreateBuilder<ShapeRun>();
        int cells = 0;
        for (int shape = 0; shape < Shape.All.Length; shape++)
        {
            ReadOnlySpan<float> row = kept.Slice(shape * Grid.Row, Grid.Row);
            int first = row.IndexOfAnyExcept(0f);
            if (first >= 0)
            {
                int from = first / Vectors.Width * Vectors.Width;
                int end = (row.LastIndexOfAnyExcept(0f) / Vectors.Width * Vectors.Width) + Vectors.Width;
                runs.Add(new(shape, from, end - from, cells));
                cells += end - from;
            }
        }

        return runs.ToImmutable();
    }
}
