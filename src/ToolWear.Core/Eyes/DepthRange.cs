using System.Runtime.InteropServices;

namespace ToolWear.Core.Eyes;

/// <summary>How much deeper a drift may go for one way of the eye to lie inside its tolerance.</summary>
/// <param name="FromMm">The least s.</param>
/// <param name="ToMm">The greatest s.</param>
/// <param name="Miss">How far the eye lies from the middle now, as a share of half the tolerance.</param>
/// <param name="MissPerMm">How that share grows with each mm deeper.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct DepthRange(double FromMm, double ToMm, double Miss, double MissPerMm)
{
    /// <summary>Whether no depth brings this way inside.</summary>
    public bool IsEmpty => FromMm > ToMm;

    /// <summary>The range of one way.</summary>
    /// <param name="eyeMm">The eye now.</param>
    /// <param name="leastMm">The least eye.</param>
    /// <param name="greatestMm">The greatest eye, above the least.</param>
    /// <param name="taper">The taper of this way, 0 or more.</param>
    /// <returns>The range; all depths or none where there is no taper.</returns>
    public static DepthRange Of(double eyeMm, double leastMm, double greatestMm, double taper)
    {
        double half = (greatestMm - leastMm) / 2;
        double miss = (eyeMm - leastMm - half) / half;
        if (taper >= Taper.Flattest)
        {
            return new DepthRange((leastMm - eyeMm) / taper, (greatestMm - eyeMm) / taper, miss, taper / half);
        }

        return eyeMm >= leastMm && eyeMm <= greatestMm
            ? new DepthRange(double.NegativeInfinity, double.PositiveInfinity, miss, 0)
            : new DepthRange(double.PositiveInfinity, double.NegativeInfinity, miss, 0);
    }
}
