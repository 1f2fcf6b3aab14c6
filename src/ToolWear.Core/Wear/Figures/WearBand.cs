using System.Runtime.InteropServices;

namespace ToolWear.Core.Wear.Figures;

/// <summary>The wear of one tool after some heats.</summary>
/// <param name="Heats">Weighted heats since the start of the segment.</param>
/// <param name="FittedMm">The wear to be expected, mm.</param>
/// <param name="Low80Mm">One time in ten the true wear is less.</param>
/// <param name="High80Mm">One time in ten it is more.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct WearBand(double Heats, double FittedMm, double Low80Mm, double High80Mm);
