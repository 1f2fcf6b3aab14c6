using System.Runtime.InteropServices;

namespace ToolWear.Core.Eyes;

/// <summary>A finished cold eye beside the drift that made it.</summary>
/// <param name="DriftAtMark">The cold drift at the mark it was driven to.</param>
/// <param name="ColdEye">The finished eye at that face, cold.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct MeasuredEye(EyeSize DriftAtMark, EyeSize ColdEye);
