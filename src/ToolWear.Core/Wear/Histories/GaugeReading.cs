using ToolWear.Core.Measure;

namespace ToolWear.Core.Wear.Histories;

/// <summary>A caliper reading in its place in a tool's history.</summary>
/// <param name="Entry">The number of its ledger entry.</param>
/// <param name="On">The day it was read.</param>
/// <param name="Session">The session whose heats it follows, null for none.</param>
/// <param name="Segment">Which stretch between reworks it belongs to, from 1.</param>
/// <param name="Heats">Weighted heats since the start of that stretch.</param>
/// <param name="Size">The size read.</param>
/// <param name="WearMm">The wear from the starting size, mm; below zero where it measures the other way.</param>
/// <param name="IsStart">Whether it gave the stretch its start, and so is no evidence of how fast it wears.</param>
public sealed record GaugeReading(
    long Entry,
    DateOnly On,
    string? Session,
    int Segment,
    double Heats,
    Length Size,
    double WearMm,
    bool IsStart
);
