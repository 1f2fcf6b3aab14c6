using System.Collections.Immutable;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>The lives of new tools of one kind and steel in the draws of that kind.</summary>
public sealed class DrawnNewLives
{
    private readonly ImmutableArray<SharedDraw> shared;
    private readonly Mixture mixture;
    private readonly int[] mu;
    private readonly int seed;
    private readonly WiderDraws wider;

    internal DrawnNewLives(
        ImmutableArray<SharedDraw> shared,
        Mixture mixture,
        int group,
        string name,
        int seed,
        double widening
    )
    {
        (this.shared, this.mixture, this.seed) = (shared, mixture, seed);
        // a steel that the kind never had: its mean lies about the kind's, the same for all tools of it
        mu = [.. shared.Select((draw, i) => group >= 0 ? draw.Mu[group] : draw.MuOfNew(name, i, seed))];
        wider = new(widening, Enumerable.Range(0, shared.Length).Select(draw => Narrow(draw, 0)));
    }

    /// <summary>The life of one new tool in one draw.</summary>
    /// <param name="draw">Which draw, from 0.</param>
    /// <param name="stream">The tool's own number.</param>
    /// <returns>Weighted heats.</returns>
    public double Heats(int draw, long stream) => wider.Of(Narrow(draw, stream));

    private double Narrow(int draw, long stream)
    {
        SharedDraw of = shared[draw];
        int l = SharedDraw.Pick(Kernels.W[of.Tau][mu[draw]], Chance.Uniform(seed, draw, stream, 0));
        return mixture.At(of.Shape, l).Heats(Chance.Uniform(seed, draw, stream, 1), mixture.Tool);
    }
}
