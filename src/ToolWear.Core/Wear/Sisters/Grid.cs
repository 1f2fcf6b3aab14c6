namespace ToolWear.Core.Wear.Sisters;

/// <summary>The grids over which the model sums: lambda = ln(N/N0) of a tool, mu the same of a group or a kind.</summary>
internal static class Grid
{
    /// <summary>Points of lambda, from -3 to 4; a multiple of every vector width.</summary>
    internal const int Lambdas = 176;

    /// <summary>Points of mu: every third lambda.</summary>
    internal const int Mus = 59;

    internal const double First = -3;
    internal const double LambdaStep = 0.04;
    internal const double MuStep = 3 * LambdaStep;

    internal static double Lambda(int l) => First + (LambdaStep * l);

    internal static double Mu(int j) => First + (MuStep * j);

    /// <summary>ln of the normal density without its constant.</summary>
    internal static double LogNormal(double value, double mean, double sd)
    {
        double z = (value - mean) / sd;
        return -z * z / 2;
    }

    /// <summary>exp of each weight, scaled to sum 1.</summary>
    internal static double[] Normalised(IEnumerable<double> logWeights)
    {
        double[] weights = [.. logWeights];
        double most = weights.Max();
        double sum = 0;
        for (int i = 0; i < weights.Length; i++)
        {
            weights[i] = Math.Exp(weights[i] - most);
            sum += weights[i];
        }

        for (int i = 0; i < weights.Length; i++)
        {
            weights[i] /= sum;
        }

        return weights;
    }
}
