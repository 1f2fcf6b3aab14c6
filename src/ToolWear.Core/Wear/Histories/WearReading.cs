using System.Runtime.InteropServices;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Histories;

/// <summary>One caliper reading of one gauge mark, as wear.</summary>
/// <remarks>Equality is exact. The default is no wear at no heats.</remarks>
/// <param name="Heats">Weighted heats since the start of the segment: finite, zero or more.</param>
/// <param name="WearMm">
/// Wear in mm from the tool's start size, along the main direction of the gauge mark; finite, and negative for a
/// while where a squeezed drift swells the long way.
/// </param>
/// <exception cref="ArgumentOutOfRangeException">Either is not finite, or the heats are negative.</exception>
[StructLayout(LayoutKind.Auto)]
public readonly record struct WearReading(double Heats, double WearMm)
{
    /// <summary>Weighted heats since the start of the segment: finite, zero or more.</summary>
    public double Heats { get; } = Finite.NotNegative(Heats);

    /// <summary>Wear in mm from the tool's start size: finite, may be negative.</summary>
    public double WearMm { get; } = Finite.Number(WearMm);
}
