using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>One combination of what the tools of a kind share: caliper noise, process noise, curve.</summary>
/// <param name="Sigma">sd of a reading, in shares of the limit.</param>
/// <param name="Phi">Variance of a wear increment in parts of its mean, in shares of the limit.</param>
/// <param name="Curve">Its place in <see cref="WearCurves.All"/>.</param>
/// <param name="LogPrior">ln of its weight before any reading.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Node(double Sigma, double Phi, int Curve, double LogPrior);

// sigma  w ~ exp(-((ln s - ln .085)/.5)^2/2)
// phi    w ~ exp(-((ln p - ln .018)/.9)^2/2)
// tau    w ~ exp(-((ln t - ln .28)/.45)^2/2)     tau: tool-to-tool sd of ln N
// each weight vector sums to 1. The discrete set is the prior, not an approximation to be refined.
/// <summary>The sets of values that stand for the prior.</summary>
internal static class Nodes
{
    private static readonly double[] Sigmas = [0.03, 0.05, 0.08, 0.13, 0.20];
    private static readonly double[] Phis = [0.002, 0.008, 0.02, 0.045, 0.1];

    internal static ImmutableArray<double> Taus { get; } = [0.12, 0.2, 0.3, 0.45, 0.7];

    /// <summary>ln of the weight of each tau before any reading.</summary>
    internal static ImmutableArray<double> LogPriorOfTau { get; } = [.. Log(Weights(Taus, 0.28, 0.45))];

    /// <summary>All combinations of curve, sigma and phi; those of one curve stand together.</summary>
    internal static ImmutableArray<Node> All { get; } = Combine();

    private static ImmutableArray<Node> Combine()
    {
        double[] logSigma = Log(Weights(Sigmas, 0.085, 0.5));
        double[] logPhi = Log(Weights(Phis, 0.018, 0.9));
        double[] logCurve = Log(Grid.Normalised(WearCurves.All.Select(curve => curve.LogPrior)));
        ImmutableArray<Node>.Builder nodes = ImmutableArray.CreateBuilder<Node>();
        for (int c = 0; c < logCurve.Length; c++)
        {
            for (int s = 0; s < Sigmas.Length; s++)
            {
                for (int p = 0; p < Phis.Length; p++)
                {
                    nodes.Add(new Node(Sigmas[s], Phis[p], c, logCurve[c] + logSigma[s] + logPhi[p]));
                }
            }
        }

        return nodes.ToImmutable();
    }

    private static double[] Weights(IEnumerable<double> values, double middle, double sdOfLog) =>
        Grid.Normalised(values.Select(value => Grid.LogNormal(Math.Log(value), Math.Log(middle), sdOfLog)));

    private static double[] Log(double[] weights) => [.. weights.Select(weight => Math.Log(weight))];
}
