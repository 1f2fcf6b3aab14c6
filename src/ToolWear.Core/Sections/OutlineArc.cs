using System.Runtime.InteropServices;

namespace ToolWear.Core.Sections;

/// <summary>An arc of a section's outline; on it h(t) = radius + x cos t + y sin t.</summary>
/// <param name="FromRad">The direction square to the outline where the arc begins, in radians from +x.</param>
/// <param name="ToRad">The direction where it ends, no less.</param>
/// <param name="RadiusMm">Its radius; zero at a sharp corner.</param>
/// <param name="CentreXMm">Its centre along x, from mid-length.</param>
/// <param name="CentreYMm">Its centre along y.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct OutlineArc(
    double FromRad,
    double ToRad,
    double RadiusMm,
    double CentreXMm,
    double CentreYMm
)
{
    /// <summary>The reach of the arc's circle in a direction.</summary>
    /// <param name="t">The direction in radians; the section itself reaches as far only between the arc's ends.</param>
    /// <returns>The reach in mm.</returns>
    public double SupportMm(double t) => RadiusMm + (CentreXMm * Math.Cos(t)) + (CentreYMm * Math.Sin(t));

    /// <summary>The point of the arc that looks in a direction.</summary>
    /// <param name="t">The direction in radians.</param>
    /// <returns>The point.</returns>
    public OutlinePoint At(double t) => new(CentreXMm + (RadiusMm * Math.Cos(t)), CentreYMm + (RadiusMm * Math.Sin(t)));
}
