using MathNet.Numerics.Distributions;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Alone;

// Least squares with a free start, x = a + b n + error (NIST/SEMATECH e-Handbook 4.1.4.1; data set Norris), about the
// means so that nothing cancels:
//   b = sum (n-nbar)(x-xbar) / S,   a = xbar - b nbar,   S = sum (n-nbar)^2
//   s^2 = sum (x-a-bn)^2/(m-2),   var b = s^2/S,   var a = s^2 (1/m + nbar^2/S),   cov(a,b) = -s^2 nbar/S
/// <summary>The straight line that may miss the start, fitted to wear by least squares; it shows running-in.</summary>
/// <param name="Readings">How many readings m it was fitted to, at least three.</param>
/// <param name="Intercept">Wear a at no heats, where the steady wear seems to have begun.</param>
/// <param name="Slope">The rate b, in wear a heat.</param>
/// <param name="ResidualSd">The spread s of the readings about the line.</param>
/// <param name="MeanHeats">The mean of the heats, nbar.</param>
/// <param name="SumOfSquares">S, heats squared about their mean, above zero.</param>
public sealed record FreeLine(
    int Readings,
    double Intercept,
    double Slope,
    double ResidualSd,
    double MeanHeats,
    double SumOfSquares
)
{
    /// <summary>The standard error of the slope, in wear a heat.</summary>
    public double SlopeSe => ResidualSd / Math.Sqrt(SumOfSquares);

    /// <summary>The standard error of the intercept, in wear.</summary>
    public double InterceptSe => ResidualSd * Math.Sqrt((1.0 / Readings) + (MeanHeats * MeanHeats / SumOfSquares));

    /// <summary>Degrees of freedom of the residual spread.</summary>
    public int Freedom => Readings - 2;

    /// <summary>Fits the line.</summary>
    /// <param name="n">Heats since the start.</param>
    /// <param name="x">Wear since the start, as many as n.</param>
    /// <returns>The line, or null below three readings or where all were taken at the same heats.</returns>
    public static FreeLine? Fit(ReadOnlySpan<double> n, ReadOnlySpan<double> x)
    {
        int m = n.Length;
        if (m < 3)
        {
            return null;
        }

        double nbar = Mean(n);
        double xbar = Mean(x);
        double S = 0;
        double S_nx = 0;
        for (int j = 0; j < m; j++)
        {
            S += (n[j] - nbar) * (n[j] - nbar);
            S_nx += (n[j] - nbar) * (x[j] - xbar);
        }

        if (S <= 0)
        {
            return null;
        }

        double b = S_nx / S;
        double squares = 0;
        for (int j = 0; j < m; j++)
        {
            double e = x[j] - xbar - (b * (n[j] - nbar));
            squares += e * e;
        }

        return new FreeLine(m, xbar - (b * nbar), b, Math.Sqrt(squares / (m - 2)), nbar, S);
    }

    /// <summary>The heats at which the line meets a wear.</summary>
    /// <param name="x">The wear since the start.</param>
    /// <returns>(x - a)/b, or null where the line does not rise.</returns>
    public double? HeatsAt(double x) => Slope > 0 ? (x - Intercept) / Slope : null;

    // E. C. Fieller (1954), J. R. Stat. Soc. B 16:175: the heats n for which a + b n = x is not refused,
    //   (a + b n - x)^2 <= t^2 (var a + 2 n cov(a,b) + n^2 var b)
    // that is A n^2 + 2 B n + C <= 0 with
    //   A = b^2 - t^2 var b,   B = b (a-x) - t^2 cov(a,b),   C = (a-x)^2 - t^2 var a
    // A > 0: between the roots. A <= 0: the rise is not sure, and only the lower end can be bounded, where n = 0 is
    // itself refused (C > 0).
    /// <summary>Fieller's limits of the heats at which the line meets a wear.</summary>
    /// <param name="x">The wear since the start.</param>
    /// <param name="confidence">Between 0 and 1.</param>
    /// <returns>The limits, the upper one null where the slope is not surely above zero; null where nothing is bounded.</returns>
    public Limits? FiellerLimits(double x, double confidence)
    {
        double t = StudentT.InvCDF(0, 1, Freedom, 0.5 + (confidence / 2));
        double t2 = t * t;
        double var_b = SlopeSe * SlopeSe;
        double A = (Slope * Slope) - (t2 * var_b);
        double B = (Slope * (Intercept - x)) + (t2 * var_b * MeanHeats);
        double C = ((Intercept - x) * (Intercept - x)) - (t2 * InterceptSe * InterceptSe);
        double D = (B * B) - (A * C);
        bool startIsRefused = C > 0;
        if (D < 0 || Slope <= 0 || (A <= 0 && !startIsRefused) || (A == 0 && B >= 0))
        {
            return null;
        }

        // the lower root in the form that does not divide by A: C / (-B + sqrt D) where B < 0
        double low = B < 0 ? C / (-B + Math.Sqrt(D)) : (-B - Math.Sqrt(D)) / A;
        return new Limits(low, A > 0 ? (-B + Math.Sqrt(D)) / A : null);
    }

    private static double Mean(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        return sum / values.Length;
    }
}
