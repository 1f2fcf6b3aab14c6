using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>Means over nodes and tau by the weight of their evidence; of scales, whose nodes stand in even ratios, the
/// geometric mean.</summary>
internal static class TraitSums
{
    internal static KindTraits Of(KindPool pool)
    {
        double whole = pool.Pairs.Sum(pair => Math.Exp(pair.LogWeight));
        double Mean(Func<int, int, double> figure) =>
            pool.Pairs.Sum(pair => Math.Exp(pair.LogWeight) * figure(pair.Node, pair.Tau)) / whole;
        double Chance(Func<Shape, bool> isSo) => Mean((node, _) => isSo(Nodes.ShapeOf(node)) ? 1 : 0);
        return new KindTraits(
            Math.Exp(Mean((node, _) => Math.Log(Nodes.NoiseOf(node).Sigma))),
            Math.Exp(Mean((node, _) => Math.Log(Nodes.NoiseOf(node).Phi))),
            Math.Exp(Mean((_, tau) => Math.Log(Nodes.Taus[tau]))),
            Mean((node, _) => Nodes.ShapeOf(node).b1),
            Chance(shape => shape.a > 0),
            Chance(shape => shape.d > 0),
            Chance(shape => shape.d < 0)
        );
    }
}
