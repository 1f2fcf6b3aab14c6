using System.Collections.Immutable;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear.Core.Wear;

// a new tool of one cell: m = 0, P = P0 of its node, G(now) = 0
/// <summary>The lives of new tools of one kind and steel in the draws of that kind.</summary>
public sealed class DrawnNewLives
{
    private readonly ImmutableArray<SharedDraw> shared;
    private readonly ToolRecord record;
    private readonly int[] mu;
    private readonly Passage[] passages = new Passage[Nodes.All.Length];
    private readonly int seed;

    internal DrawnNewLives(ImmutableArray<SharedDraw> shared, ToolRecord record, int group, string name, int seed)
    {
        (this.shared, this.record, this.seed) = (shared, record, seed);
        // a steel that the kind never had: its mean lies about the kind's, the same for all tools of it
        mu = [.. shared.Select((draw, i) => group >= 0 ? draw.Mu[group] : draw.MuOfNew(name, i, seed))];
        for (int node = 0; node < passages.Length; node++)
        {
            ReadingFilter filter = default;
            filter.Start(0, Nodes.All[node].Sigma, record.v_r);
            passages[node] = new Passage(filter.m[0], filter.P[0], 0, Nodes.All[node].Phi);
        }
    }

    /// <summary>The life of one new tool in one draw.</summary>
    /// <param name="draw">Which draw, from 0.</param>
    /// <param name="stream">The tool's own number.</param>
    /// <returns>Weighted heats.</returns>
    public double Heats(int draw, long stream)
    {
        SharedDraw of = shared[draw];
        int l = Kernels.PickW(of.Tau, mu[draw], Chance.Uniform(seed, draw, stream, 0));
        WearCurve curve = WearCurves.All[Nodes.All[of.Node].Curve];
        return passages[of.Node].Heats(Chance.Uniform(seed, draw, stream, 1), curve, record, Grid.Lambda(l));
    }
}
