using System.Runtime.InteropServices;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>A reading that is more likely a gross error (jaw on scale, end ground back) than sound. It is never deleted.</summary>
/// <param name="Segment">Which segment of the history, from 0.</param>
/// <param name="Reading">Which reading of that segment, from 0.</param>
/// <param name="Chance">The chance of a gross error, above one half.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct SuspectReading(int Segment, int Reading, double Chance);
