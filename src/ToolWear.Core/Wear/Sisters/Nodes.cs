using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

// sigma .045 .13        bell(ln sigma, ln .085, .5)    caliper noise, in shares of the limit
// phi   .003 .015 .06   bell(ln phi, ln .018, .9)      Var of a wear increment = phi * its mean
// tau   .15 .28 .55     bell(ln tau, ln .24, .45)      tool-to-tool sd of ln N
// each weight vector sums to 1. The discrete set is the prior, not an approximation to be refined.
/// <summary>What the tools of a kind share: nodes of a shape, a caliper noise and a process noise; and tau.</summary>
internal static class Nodes
{
    private static readonly double[] Sigmas = [0.13, 0.045];
    private static readonly double[] Phis = [0.06, 0.015, 0.003];

    /// <summary>Noises of each shape, the widest first: pairs of sigma and phi.</summary>
    internal static ImmutableArray<(double Sigma, double Phi)> Noises { get; } =
    [.. from sigma in Sigmas from phi in Phis select (sigma, phi)];

    internal static ImmutableArray<double> Taus { get; } = [0.15, 0.28, 0.55];

    /// <summary>How many nodes there are: node = shape * noises + noise.</summary>
    internal static int Count { get; } = Shape.All.Length * Noises.Length;

    /// <summary>ln p(shape) p(sigma) p(phi) of each node.</summary>
    internal static ImmutableArray<double> LogPriors { get; } =
    [
        .. from shape in Shape.Priors
        from sigma in Weights(Sigmas, 0.085, 0.5)
        from phi in Weights(Phis, 0.018, 0.9)
        select Math.Log(shape * sigma * phi),
    ];

    /// <summary>ln p(tau) of each tau.</summary>
    internal static ImmutableArray<double> LogPriorsOfTau { get; } =
    [.. Weights([.. Taus], 0.24, 0.45).Select(p => Math.Log(p))];

    internal static Shape ShapeOf(int node) => Shape.All[node / Noises.Length];

    internal static (double Sigma, double Phi) NoiseOf(int node) => Noises[node % Noises.Length];

    private static double[] Weights(double[] values, double middle, double sdOfLog) =>
        Grid.Normalised(values.Select(value => Grid.Bell(Math.Log(value), Math.Log(middle), sdOfLog)));
}
