using System.Runtime.InteropServices;

namespace ToolWear.Core.Sections;

/// <summary>A point of an outline, from the middle of the section's length on its long axis.</summary>
/// <param name="XMm">Along the eye, towards the nose.</param>
/// <param name="YMm">Across the eye.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct OutlinePoint(double XMm, double YMm);
