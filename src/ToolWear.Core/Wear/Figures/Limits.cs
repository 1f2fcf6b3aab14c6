using System.Runtime.InteropServices;

namespace ToolWear.Core.Wear.Figures;

/// <summary>The two ends of an interval.</summary>
/// <param name="Low">The lower end, in the unit of what it bounds.</param>
/// <param name="High">The upper end, or null where the readings do not bound it.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Limits(double Low, double? High);
