namespace ToolWear.Core.Wear.Sisters;

/// <summary>Means over nodes and tau by the weight of their evidence; of scales, whose nodes stand in even ratios, the
/// geometric mean.</summary>
internal static class TraitSums
{
    internal static KindTraits Of(KindPool pool)
    {
        double whole = pool.Nodes.Sum(sums => Weight(pool, sums));
        double Mean(Func<Node, int, double> figure) =>
            pool.Nodes.Sum(sums => Weight(pool, sums) * figure(Nodes.All[sums.Node], sums.Tau)) / whole;
        return new KindTraits(
            Math.Exp(Mean((node, _) => Math.Log(node.Sigma))),
            Math.Exp(Mean((node, _) => Math.Log(node.Phi))),
            Math.Exp(Mean((_, tau) => Math.Log(Nodes.Taus[tau]))),
            Mean((node, _) => Power(node)),
            Mean((node, _) => Power(node) < 1 ? 1 : 0),
            Mean((node, _) => Power(node) > 1 ? 1 : 0)
        );
    }

    private static double Power(Node node) => WearCurves.All[node.Curve].Power;

    private static double Weight(KindPool pool, PooledNode sums) => Math.Exp(sums.LogEvidence - pool.Best);
}
