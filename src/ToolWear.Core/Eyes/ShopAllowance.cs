using System.Diagnostics.CodeAnalysis;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Eyes;

/// <summary>
/// How much smaller than its drift the shop's finished cold eyes turn out, for one place and eye: shrinkage, and what
/// later heats, scaling and filing did besides.
/// </summary>
/// <param name="Heads">How many eyes were measured, 3 or more.</param>
/// <param name="LengthMm">The mean of drift less cold eye in length.</param>
/// <param name="LengthSpreadMm">Its standard deviation from eye to eye.</param>
/// <param name="WidthMm">The mean in width.</param>
/// <param name="WidthSpreadMm">Its standard deviation from eye to eye.</param>
public sealed record ShopAllowance(
    int Heads,
    double LengthMm,
    double LengthSpreadMm,
    double WidthMm,
    double WidthSpreadMm
)
{
    /// <summary>How many eyes it takes.</summary>
    public const int HeadsNeeded = 3;

    /// <summary>Works out the allowance of a place and eye.</summary>
    /// <param name="eyes">The eyes measured for them.</param>
    /// <param name="allowance">The allowance, from three eyes on.</param>
    /// <param name="missing">Otherwise how many there are and how many it takes.</param>
    /// <returns>True where there is one.</returns>
    public static bool TryFrom(
        IReadOnlyList<MeasuredEye> eyes,
        [NotNullWhen(true)] out ShopAllowance? allowance,
        [NotNullWhen(false)] out NotEnoughData? missing
    )
    {
        allowance = null;
        missing = null;
        if (eyes.Count < HeadsNeeded)
        {
            missing = new NotEnoughData(eyes.Count, HeadsNeeded, "too few finished eyes measured cold");
            return false;
        }

        (double length, double lengthSpread) = eyes.Select(eye => eye.DriftAtMark.LengthMm - eye.ColdEye.LengthMm)
            .MeanStandardDeviation();
        (double width, double widthSpread) = eyes.Select(eye => eye.DriftAtMark.WidthMm - eye.ColdEye.WidthMm)
            .MeanStandardDeviation();
        allowance = new ShopAllowance(eyes.Count, length, lengthSpread, width, widthSpread);
        return true;
    }

    /// <summary>The length of the next eye of a drift, with the interval that holds it nine times in ten.</summary>
    /// <param name="driftMm">The cold drift's length at the mark in mm.</param>
    /// <returns>The estimate in mm.</returns>
    public Estimate NextLengthMm(double driftMm) => Next(driftMm - LengthMm, LengthSpreadMm);

    /// <summary>The width of the next eye of a drift, with the interval that holds it nine times in ten.</summary>
    /// <param name="driftMm">The cold drift's width at the mark in mm.</param>
    /// <returns>The estimate in mm.</returns>
    public Estimate NextWidthMm(double driftMm) => Next(driftMm - WidthMm, WidthSpreadMm);

    // one more of n normal readings: mean +/- t(n - 1, 0.95) s sqrt(1 + 1/n)
    private Estimate Next(double mean, double s)
    {
        double n = Heads;
        double t = StudentT.InvCDF(0, 1, n - 1, 0.95);
        double half = t * s * Math.Sqrt(1 + (1 / n));
        return new Estimate(mean, mean - half, mean + half);
    }
}
