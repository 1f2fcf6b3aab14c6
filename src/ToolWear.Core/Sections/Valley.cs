using System.Runtime.InteropServices;

namespace ToolWear.Core.Sections;

/// <summary>A direction in which the room between two sections is less than in those beside it.</summary>
/// <param name="T">The direction in radians from +x, 0 to pi.</param>
/// <param name="RoomMm">The room in that direction.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Valley(double T, double RoomMm);
