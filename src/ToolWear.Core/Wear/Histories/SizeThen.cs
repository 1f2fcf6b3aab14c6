using ToolWear.Core.Measure;

namespace ToolWear.Core.Wear.Histories;

/// <summary>Where a gauge mark stood at some moment of its history.</summary>
/// <param name="Entry">The number of the entry that asks.</param>
/// <param name="Segment">The stretch between reworks, from 1.</param>
/// <param name="Heats">Weighted heats since that stretch began.</param>
/// <param name="StartIsKnown">Whether the wear at the start of the stretch is known.</param>
/// <param name="LastKnown">The last size known by then, null where none was.</param>
public sealed record SizeThen(long Entry, int Segment, double Heats, bool StartIsKnown, Length? LastKnown);
