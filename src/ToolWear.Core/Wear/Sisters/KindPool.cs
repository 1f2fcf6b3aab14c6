using System.Buffers;
using System.Collections.Immutable;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>A tool among its sisters.</summary>
/// <param name="Record">What was measured, in shares of its limit.</param>
/// <param name="Group">The number of its group within the kind.</param>
/// <param name="Likelihood">Null where it was never read.</param>
internal sealed record PooledTool(ToolRecord Record, int Group, ToolLikelihood? Likelihood);

// For every node and tau that lives:
//   F_g(mu) = prod of M_i(mu) over the tools of g;   U_g(k) = sum_mu A[k,mu] F_g(mu)
//   ln evidence = ln p(node) p(tau) + ln of the scales + ln sum_k p(k) prod_g U_g(k)
// Tools with most readings come first. After each of them a node is given up whose best tau is over 16 below the best
// node's, by  ln p(node) p(tau) + ln of the scales + ln sum_mu p(mu) F_g(mu)  of that tool's group, and so is a node
// whose ln prior is below -18 from the start.
/// <summary>All tools of one kind with the sums that their forecasts share.</summary>
internal sealed class KindPool : IDisposable
{
    private const double LeastLogPrior = -18;
    private const double Margin = 16;

    private readonly PooledTool[] tools;
    private readonly float[] everyF;
    private readonly float[] everyU;
    private readonly double[] logScales = new double[Nodes.Count * Nodes.Taus.Length];
    private readonly List<int> live;

    private KindPool(IReadOnlyList<(ToolRecord Record, int Group)> records, int groups, KindPool? before)
    {
        Groups = groups;
        everyF = ArrayPool<float>.Shared.Rent(logScales.Length * groups * Grid.MuRow);
        everyF.AsSpan().Fill(1);
        everyU = ArrayPool<float>.Shared.Rent(everyF.Length);
        live = [.. Enumerable.Range(0, Nodes.Count).Where(node => Nodes.LogPriors[node] >= LeastLogPrior)];
        tools = [.. records.Select(tool => new PooledTool(tool.Record, tool.Group, null))];
        // among equals the order is that of what was read, so that the order of the tools cannot matter
        foreach (
            int i in Enumerable
                .Range(0, tools.Length)
                .Where(i => tools[i].Record.Readings > 0)
                .OrderByDescending(i => tools[i].Record.Readings)
                .ThenBy(i => tools[i].Record.Now)
                .ThenBy(i => tools[i].Record.N0)
        )
        {
            ToolRecord record = tools[i].Record;
            tools[i] = tools[i] with { Likelihood = before?.Take(record, live) ?? new ToolLikelihood(record, live) };
            Multiply(tools[i]);
        }

        Pairs = Weighed();
    }

    internal ReadOnlySpan<PooledTool> Tools => tools;

    internal int Groups { get; }

    /// <summary>The nodes that were not given up.</summary>
    internal IReadOnlyList<int> Live => live;

    /// <summary>The nodes with a tau that weigh anything, in order of nodes, with ln of their evidence below the best.</summary>
    internal ImmutableArray<(int Node, int Tau, double LogWeight)> Pairs { get; }

    /// <summary>Pools tools of one kind.</summary>
    /// <param name="kind">Histories of one kind.</param>
    /// <param name="before">An earlier pool of the kind, which gives what the tools say that were not read since; it is
    /// good for nothing else then.</param>
    /// <returns>The pool, and each history's place in it, -1 where it has no limit.</returns>
    internal static (KindPool Pool, int[] Place) Of(IReadOnlyList<WearHistory> kind, KindPool? before = null)
    {
        List<string> groups = GroupsOf(kind);
        List<(ToolRecord, int)> records = [];
        int[] place = new int[kind.Count];
        for (int i = 0; i < kind.Count; i++)
        {
            place[i] = -1;
            if (ToolRecord.Of(kind[i]) is { } record)
            {
                place[i] = records.Count;
                records.Add((record, groups.IndexOf(kind[i].Group)));
            }
        }

        return (new KindPool(records, Math.Max(1, groups.Count), before), place);
    }

    /// <summary>The number of a group in the pool of its kind, -1 where the kind never had it.</summary>
    internal static int GroupNumber(IReadOnlyList<WearHistory> kind, string group) => GroupsOf(kind).IndexOf(group);

    /// <summary>F of a group over mu, with 1 as its largest.</summary>
    internal Span<float> FOf(int node, int tau, int group) => Row(everyF, node, tau, group);

    /// <summary>D(k) = p(k) prod of U_g(k) over the groups g other than the two given.</summary>
    /// <returns>ln of what it was divided by.</returns>
    internal double WithoutGroups(int node, int tau, int one, int other, Span<float> D)
    {
        double logScale = 0;
        Kernels.P.CopyTo(D);
        for (int g = 0; g < Groups; g++)
        {
            if (g != one && g != other)
            {
                Vectors.Multiply(D, Row(everyU, node, tau, g));
                logScale += Vectors.ScaleToMax(D);
            }
        }

        return logScale;
    }

    /// <summary>ln of p(node) p(tau) and of all that the tools' likelihoods were divided by.</summary>
    internal double LogScale(int node, int tau) =>
        Nodes.LogPriors[node] + Nodes.LogPriorsOfTau[tau] + logScales[(node * Nodes.Taus.Length) + tau];

    /// <summary>Gives the room back.</summary>
    public void Dispose()
    {
        ArrayPool<float>.Shared.Return(everyF);
        ArrayPool<float>.Shared.Return(everyU);
        foreach (PooledTool tool in tools)
        {
            tool.Likelihood?.Dispose();
        }
    }

    private Span<float> Row(float[] every, int node, int tau, int group) =>
        every.AsSpan(((((node * Nodes.Taus.Length) + tau) * Groups) + group) * Grid.MuRow, Grid.MuRow);

    private static List<string> GroupsOf(IEnumerable<WearHistory> kind) =>
        [.. kind.Select(history => history.Group).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    private ToolLikelihood? Take(ToolRecord record, List<int> nodes)
    {
        int at = Array.FindIndex(tools, each => each.Record.ReadsLike(record) && each.Likelihood?.Knows(nodes) == true);
        ToolLikelihood? taken = at < 0 ? null : tools[at].Likelihood;
        if (taken is not null)
        {
            tools[at] = tools[at] with { Likelihood = null };
        }

        return taken;
    }

    private void Multiply(PooledTool tool)
    {
        Span<double> evidence = stackalloc double[live.Count];
        double best = double.NegativeInfinity;
        for (int i = 0; i < live.Count; i++)
        {
            evidence[i] = double.NegativeInfinity;
            for (int tau = 0; tau < Nodes.Taus.Length; tau++)
            {
                Span<float> F = FOf(live[i], tau, tool.Group);
                Vectors.Multiply(F, tool.Likelihood!.MOf(live[i], tau));
                logScales[(live[i] * Nodes.Taus.Length) + tau] +=
                    tool.Likelihood.LogMax(live[i]) + Vectors.ScaleToMax(F);
                double whole = LogScale(live[i], tau) + Math.Log(Vectors.Dot(Kernels.PMu, F));
                evidence[i] = Math.Max(evidence[i], whole);
            }

            best = Math.Max(best, evidence[i]);
        }

        int kept = 0;
        for (int i = 0; i < evidence.Length; i++)
        {
            if (evidence[i] >= best - Margin)
            {
                live[kept++] = live[i];
            }
        }

        live.RemoveRange(kept, live.Count - kept);
    }

    private ImmutableArray<(int Node, int Tau, double LogWeight)> Weighed()
    {
        Span<float> D = stackalloc float[Grid.MuRow];
        List<(int Node, int Tau, double Log)> all = [];
        foreach (int node in live)
        {
            for (int tau = 0; tau < Nodes.Taus.Length; tau++)
            {
                for (int g = 0; g < Groups; g++)
                {
                    Kernels.TurnedA.Sum(FOf(node, tau, g), (0, Grid.Mus), Row(everyU, node, tau, g), 0);
                }

                double log = LogScale(node, tau) + WithoutGroups(node, tau, -1, -1, D);
                all.Add((node, tau, log + Math.Log(Vectors.Sum(D))));
            }
        }

        double best = all.Max(pair => pair.Log);
        return [.. all.Where(pair => pair.Log >= best - Margin).Select(pair => pair with { Log = pair.Log - best })];
    }
}
