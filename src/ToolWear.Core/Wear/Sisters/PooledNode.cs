namespace ToolWear.Core.Wear.Sisters;

// For one node and one tau:
//   M_i(mu) = sum_l W[mu,l] Lik_i(l)
//   F_g(mu) = prod of M_i in g            (rescaled by its max, the log kept)
//   U_g(k)  = sum_mu A[k,mu] F_g(mu)
//   evidence = p(node) p(tau) e^{scale logs} sum_k p(k) prod_g U_g(k)
/// <summary>The sums over all tools of a kind at one node and one tau; every tool's forecast starts from these.</summary>
internal sealed class PooledNode
{
    // far above the smallest number that keeps all its digits, far below what can weigh anything
    private const double LeastDivisor = 1e-150;

    private readonly double[]?[] everyM;
    private readonly double[][] everyU;
    private readonly double[][] everyF;
    private readonly double[] everyLogScale;

    private PooledNode(int node, int tau, double ceiling, double[]?[] M, double[][] F, double[] logScales)
    {
        (Node, Tau, Ceiling, everyM, everyF, everyLogScale) = (node, tau, ceiling, M, F, logScales);
        everyU = [.. F.Select(UOf)];
        Span<double> D = stackalloc double[Grid.Mus];
        double logScale = WithoutGroups(-1, -1, D);
        double sum = 0;
        foreach (double D_k in D)
        {
            sum += D_k;
        }

        LogEvidence = ceiling + logScale + Math.Log(sum);
    }

    /// <summary>Its node in <see cref="Nodes.All"/>.</summary>
    internal int Node { get; }

    /// <summary>Its tau in <see cref="Nodes.Taus"/>.</summary>
    internal int Tau { get; }

    /// <summary>ln of p(node) p(tau) and of all that the tools' likelihoods were divided by.</summary>
    internal double Ceiling { get; }

    /// <summary>ln of the weight of this node and tau given all readings of the kind, up to a constant.</summary>
    internal double LogEvidence { get; }

    /// <summary>M of a tool over mu; empty where it was never read, which stands for ones.</summary>
    internal ReadOnlySpan<double> MOf(int tool) => everyM[tool];

    /// <summary>F of a group over mu, with 1 as its largest.</summary>
    internal ReadOnlySpan<double> FOf(int group) => everyF[group];

    /// <summary>ln of what F of a group was divided by.</summary>
    internal double LogScaleOf(int group) => everyLogScale[group];

    /// <summary>F of a group without one of its tools, with 1 as its largest: F_g^{-t} = F_g / M_t.</summary>
    /// <remarks>
    /// Where M_t is so small that the division would say nothing, so is the weight of mu for that tool: zero stands there.
    /// </remarks>
    /// <param name="tool">The tool.</param>
    /// <param name="group">Its group.</param>
    /// <param name="F">Filled over mu.</param>
    /// <returns>ln of what it was divided by.</returns>
    internal double FWithout(int tool, int group, Span<double> F)
    {
        everyF[group].CopyTo(F);
        if (everyM[tool] is { } M_t)
        {
            for (int mu = 0; mu < F.Length; mu++)
            {
                F[mu] = M_t[mu] > LeastDivisor ? F[mu] / M_t[mu] : 0;
            }
        }

        return everyLogScale[group] + Vectors.ScaleToMax(F);
    }

    /// <summary>The sums, or null as soon as ln of their weight can no longer reach the least that counts.</summary>
    internal static PooledNode? Of(
        IReadOnlyList<PooledTool> tools,
        int groups,
        int node,
        int tau,
        double ceiling,
        double least
    )
    {
        double[]?[] M = new double[]?[tools.Count];
        double[][] F = Ones(groups);
        double[] logScales = new double[groups];
        double highest = ceiling;
        for (int i = 0; i < tools.Count; i++)
        {
            if (tools[i].Likelihood is not { } likelihood)
            {
                continue;
            }

            double[] M_i = M[i] = new double[Grid.Mus];
            ReadOnlySpan<double> lik = likelihood.At(node);
            for (int mu = 0; mu < Grid.Mus; mu++)
            {
                M_i[mu] = Vectors.Dot(Kernels.W(tau, mu), lik);
            }

            Vectors.Multiply(F[tools[i].Group], M_i);
            double logMax = Vectors.ScaleToMax(F[tools[i].Group]);
            logScales[tools[i].Group] += logMax;
            highest += logMax;
            // M_i <= 1, so it can only fall from here
            if (highest < least)
            {
                return null;
            }
        }

        return new PooledNode(node, tau, ceiling, M, F, logScales);
    }

    /// <summary>D(k) = p(k) prod of U_g(k) over the groups g other than the two given.</summary>
    /// <returns>ln of what those groups' F were divided by.</returns>
    internal double WithoutGroups(int one, int other, Span<double> D)
    {
        double logScale = 0;
        Kernels.P.CopyTo(D);
        for (int g = 0; g < everyU.Length; g++)
        {
            if (g != one && g != other)
            {
                Vectors.Multiply(D, everyU[g]);
                logScale += everyLogScale[g];
            }
        }

        return logScale;
    }

    private static double[] UOf(double[] F_g)
    {
        double[] U_g = new double[Grid.Mus];
        for (int k = 0; k < Grid.Mus; k++)
        {
            U_g[k] = Vectors.Dot(Kernels.A(k), F_g);
        }

        return U_g;
    }

    private static double[][] Ones(int groups)
    {
        double[][] ones = new double[groups][];
        for (int g = 0; g < groups; g++)
        {
            ones[g] = new double[Grid.Mus];
            Array.Fill(ones[g], 1);
        }

        return ones;
    }
}
