using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>One draw of what the tools of a kind share.</summary>
/// <param name="Node">Its node.</param>
/// <param name="Tau">Its tau.</param>
/// <param name="Kind">The mean of the kind.</param>
/// <param name="Mu">The mean of each group, by its number.</param>
internal sealed record SharedDraw(int Node, int Tau, int Kind, ImmutableArray<int> Mu)
{
    /// <summary>Its shape.</summary>
    internal int Shape => Node / Nodes.Noises.Length;

    // what a stream of a tool never is
    private const long KindStream = -1;

    /// <summary>Draws from what the readings of the kind leave open.</summary>
    /// <remarks>
    /// (node, tau) by its evidence, in even steps so that each has its share; then the kind's mean k in proportion to
    /// p(k) prod U_g(k); then each group's mean in proportion to A[k,mu] F_g(mu).
    /// </remarks>
    internal static ImmutableArray<SharedDraw> Of(KindPool pool, int draws, int seed)
    {
        double[] upTo = new double[pool.Pairs.Length];
        double sum = 0;
        for (int i = 0; i < upTo.Length; i++)
        {
            sum += Math.Exp(pool.Pairs[i].LogWeight);
            upTo[i] = sum;
        }

        double offset = Chance.Uniform(seed, 0, KindStream, 0);
        ImmutableArray<SharedDraw>.Builder made = ImmutableArray.CreateBuilder<SharedDraw>(draws);
        int at = 0;
        for (int i = 0; i < draws; i++)
        {
            double share = (i + offset) / draws * sum;
            while (at < upTo.Length - 1 && upTo[at] < share)
            {
                at++;
            }

            made.Add(Of(pool, pool.Pairs[at].Node, pool.Pairs[at].Tau, i, seed));
        }

        return made.MoveToImmutable();
    }

    /// <summary>The mean of a group that the kind never had: about the kind's, the same for the same name.</summary>
    internal int MuOfNew(string name, int draw, int seed)
    {
        // FNV-1a, which is the same in every process; slots of groups that are there are small and positive
        int slot = unchecked((int)name.Aggregate(2_166_136_261u, (hash, c) => (hash ^ c) * 16_777_619u)) | int.MinValue;
        return Pick(Kernels.A[Kind], Chance.Uniform(seed, draw, KindStream, slot));
    }

    /// <summary>The place that a share of the whole weight falls on.</summary>
    internal static int Pick(ReadOnlySpan<float> weight, double share)
    {
        double whole = 0;
        foreach (float w in weight)
        {
            whole += w;
        }

        double left = share * whole;
        int last = 0;
        for (int i = 0; i < weight.Length; i++)
        {
            if (weight[i] > 0)
            {
                last = i;
                left -= weight[i];
                if (left < 0)
                {
                    return i;
                }
            }
        }

        return last;
    }

    private static SharedDraw Of(KindPool pool, int node, int tau, int draw, int seed)
    {
        Span<float> weight = stackalloc float[Grid.MuRow];
        _ = pool.WithoutGroups(node, tau, -1, -1, weight);
        int k = Pick(weight, Chance.Uniform(seed, draw, KindStream, 1));
        ImmutableArray<int>.Builder mu = ImmutableArray.CreateBuilder<int>(pool.Groups);
        for (int g = 0; g < pool.Groups; g++)
        {
            pool.FOf(node, tau, g).CopyTo(weight);
            Vectors.Multiply(weight, Kernels.A[k]);
            mu.Add(Pick(weight, Chance.Uniform(seed, draw, KindStream, 2 + g)));
        }

        return new SharedDraw(node, tau, k, mu.MoveToImmutable());
    }
}
