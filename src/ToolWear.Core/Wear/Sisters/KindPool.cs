using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>All tools of one kind with the sums that their forecasts share.</summary>
internal sealed class KindPool
{
    // e^-28 is 7e-13 of the whole: far below the 1e-9 at which a cell is dropped in the end
    private const double Margin = 28;

    // tools that agree on three nodes of 225 or fewer
    private const int Large = 40;

    private KindPool(ImmutableArray<PooledTool> tools, int groups, List<PooledNode> nodes)
    {
        Tools = tools;
        Groups = groups;
        Best = nodes.Max(node => node.LogEvidence);
        Nodes = [.. nodes.Where(node => node.LogEvidence >= Best - Margin)];
    }

    internal ImmutableArray<PooledTool> Tools { get; }

    internal int Groups { get; }

    /// <summary>The nodes that weigh anything.</summary>
    internal ImmutableArray<PooledNode> Nodes { get; }

    /// <summary>The largest ln evidence.</summary>
    internal double Best { get; }

    /// <summary>Pools tools of one kind.</summary>
    /// <param name="records">At least one tool, with the number of its group.</param>
    /// <param name="groups">How many groups there are.</param>
    internal static KindPool Of(IReadOnlyList<(ToolRecord Record, int Group)> records, int groups)
    {
        ImmutableArray<PooledTool> tools = Many.Select(
            records,
            (tool, _) =>
                new PooledTool(
                    tool.Record,
                    tool.Group,
                    tool.Record.Readings == 0 ? null : new ToolLikelihood(tool.Record, records.Count < Large)
                )
        );
        List<PooledNode> nodes = Sums(tools, groups);
        foreach (PooledTool tool in tools)
        {
            tool.Likelihood?.LetGo();
        }

        return new KindPool(tools, groups, nodes);
    }

    // the most promising node first, so that the hopeless ones are seen early
    private static List<PooledNode> Sums(ImmutableArray<PooledTool> tools, int groups)
    {
        double best = double.NegativeInfinity;
        List<PooledNode> kept = [];
        foreach ((int node, double ceiling) in Ceilings(tools))
        {
            for (int tau = 0; tau < Sisters.Nodes.Taus.Length; tau++)
            {
                double most = ceiling + Sisters.Nodes.LogPriorOfTau[tau];
                double least = best - Margin;
                if (most >= least && PooledNode.Of(tools, groups, node, tau, most, least) is { } sums)
                {
                    kept.Add(sums);
                    best = Math.Max(best, sums.LogEvidence);
                }
            }
        }

        return kept;
    }

    private static IEnumerable<(int Node, double Ceiling)> Ceilings(ImmutableArray<PooledTool> tools) =>
        Enumerable
            .Range(0, Sisters.Nodes.All.Length)
            .Select(node =>
                (node, Sisters.Nodes.All[node].LogPrior + tools.Sum(tool => tool.Likelihood?.LogMax(node) ?? 0))
            )
            .OrderByDescending(node => node.Item2);
}
