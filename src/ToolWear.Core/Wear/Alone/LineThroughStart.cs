using MathNet.Numerics.Distributions;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Alone;

// Least squares through the origin, x = b n + error (NIST/SEMATECH e-Handbook 4.1.4.1; data sets NoInt1, NoInt2):
//   b = S_nx / S_nn,   S_nx = sum n x,   S_nn = sum n^2
//   s^2 = sum (x - b n)^2 / (m - 1),   se(b) = s / sqrt(S_nn),   m readings
/// <summary>The straight line through a known start, fitted to wear after that start by least squares.</summary>
/// <param name="Readings">How many readings m it was fitted to, at least one.</param>
/// <param name="Slope">The rate b, in wear a heat.</param>
/// <param name="ResidualSd">The spread s of the readings about the line; null below two readings.</param>
/// <param name="SumOfSquares">S_nn, the readings' leverage on the slope, in heats squared, above zero.</param>
public sealed record LineThroughStart(int Readings, double Slope, double? ResidualSd, double SumOfSquares)
{
    /// <summary>The standard error of the slope, in wear a heat; null below two readings.</summary>
    public double? SlopeSe => ResidualSd / Math.Sqrt(SumOfSquares);

    /// <summary>Degrees of freedom of the residual spread.</summary>
    public int Freedom => Readings - 1;

    /// <summary>Fits the line.</summary>
    /// <param name="n">Heats since the start.</param>
    /// <param name="x">Wear since the start, as many as n.</param>
    /// <returns>The line, or null where no reading lies after the start.</returns>
    public static LineThroughStart? Fit(ReadOnlySpan<double> n, ReadOnlySpan<double> x)
    {
        double S_nn = 0;
        double S_nx = 0;
        for (int j = 0; j < n.Length; j++)
        {
            S_nn += n[j] * n[j];
            S_nx += n[j] * x[j];
        }

        if (S_nn <= 0)
        {
            return null;
        }

        double b = S_nx / S_nn;
        double squares = 0;
        for (int j = 0; j < n.Length; j++)
        {
            double e = x[j] - (b * n[j]);
            squares += e * e;
        }

        double? s = n.Length >= 2 ? Math.Sqrt(squares / (n.Length - 1)) : null;
        return new LineThroughStart(n.Length, b, s, S_nn);
    }

    /// <summary>The standard error of the slope where the residual variance is held to a least value.</summary>
    /// <param name="leastVariance">What the caliper's own step amounts to, resolution^2/12; zero for none.</param>
    /// <returns>The standard error; null below two readings.</returns>
    public double? SlopeSeAtLeast(double leastVariance) =>
        ResidualSd is { } s ? Math.Sqrt(Math.Max(s * s, leastVariance) / SumOfSquares) : null;

    /// <summary>The t interval of the slope: b -+ t(m-1) se(b).</summary>
    /// <param name="confidence">Between 0 and 1, 0.9 for nine times in ten.</param>
    /// <param name="leastVariance">The least residual variance counted with.</param>
    /// <returns>Both ends, or null below two readings.</returns>
    public Limits? SlopeLimits(double confidence, double leastVariance = 0)
    {
        if (SlopeSeAtLeast(leastVariance) is not { } se)
        {
            return null;
        }

        double t = StudentT.InvCDF(0, 1, Freedom, 0.5 + (confidence / 2));
        return new Limits(Slope - (t * se), Slope + (t * se));
    }

    /// <summary>The heats at which the line has risen by d: d/b, between the ends that the slope's t interval gives.</summary>
    /// <param name="d">How far the wear may still rise from the start, above zero.</param>
    /// <param name="confidence">Between 0 and 1.</param>
    /// <param name="leastVariance">The least residual variance counted with.</param>
    /// <returns>The ends; null below two readings, or where even the steepest slope is not above zero.</returns>
    public Limits? HeatsToRise(double d, double confidence, double leastVariance = 0) =>
        SlopeLimits(confidence, leastVariance) is { High: > 0 } b
            ? new Limits(d / b.High.Value, b.Low > 0 ? d / b.Low : null)
            : null;
}
