using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>The grids over which the model sums: lambda = ln(N/N0) of a tool, mu the same of a group or a kind.</summary>
internal static class Grid
{
    /// <summary>Points of lambda, from -3 to 4.21.</summary>
    internal const int Lambdas = 104;

    /// <summary>Room for a row of lambdas: a whole number of vectors of every width.</summary>
    internal const int Row = 112;

    /// <summary>Points of mu: every second lambda.</summary>
    internal const int Mus = 52;

    /// <summary>Room for a row of mus.</summary>
    internal const int MuRow = 64;

    internal const double First = -3;
    internal const double LambdaStep = 0.07;
    internal const double MuStep = 2 * LambdaStep;

    /// <summary>exp(-lambda) at each point of a row.</summary>
    internal static ImmutableArray<double> ExpMinusLambda { get; } =
    [.. Enumerable.Range(0, Row).Select(l => Math.Exp(-Lambda(l)))];

    /// <summary>The same in the precision of the likelihoods.</summary>
    internal static ImmutableArray<float> ExpMinusLambdaFloat { get; } = [.. ExpMinusLambda.Select(e => (float)e)];

    internal static double Lambda(int l) => First + (LambdaStep * l);

    internal static double Mu(int j) => First + (MuStep * j);

    // bell(y,c,s) = exp(-((y-c)/s)^2/2)
    internal static double Bell(double y, double c, double s) => Math.Exp(-(y - c) * (y - c) / (2 * s * s));

    /// <summary>Weights scaled to sum 1.</summary>
    internal static double[] Normalised(IEnumerable<double> weights)
    {
        double[] all = [.. weights];
        double sum = all.Sum();
        return Array.ConvertAll(all, weight => weight / sum);
    }
}
