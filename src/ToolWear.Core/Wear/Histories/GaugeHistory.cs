using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Wear.Histories;

/// <summary>What the ledger says of one gauge mark of one tool.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Gauge">The gauge mark.</param>
/// <param name="Start">The size that wear counts from: the making size, or the first size known; null where none is.</param>
/// <param name="Readings">Its readings, first to last.</param>
/// <param name="LastKnown">The last size known, read or made; null where none is.</param>
/// <param name="HeatsSinceKnown">Weighted heats since that size was known.</param>
/// <param name="Wear">What a forecast needs of it.</param>
public sealed record GaugeHistory(
    ToolInShop Tool,
    GaugeMark Gauge,
    Length? Start,
    ImmutableArray<GaugeReading> Readings,
    Length? LastKnown,
    double HeatsSinceKnown,
    WearHistory Wear
)
{
    /// <summary>Where the gauge mark stood when a finished eye that this drift made was measured, in order.</summary>
    public ImmutableArray<SizeThen> AtEyes { get; init; } = [];

    /// <summary>The rework that left the last size known; null where that size was read or made.</summary>
    public ToolReworked? LastRework { get; init; }

    /// <summary>The wear at the last size known, mm; null where no size is known.</summary>
    public double? LastKnownWearMm => Start is { } start && LastKnown is { } last ? Gauge.WearTo(start, last).Mm : null;

    /// <summary>The day of the last reading, null where there is none.</summary>
    public DateOnly? LastReadOn => Readings.IsEmpty ? null : Readings[^1].On;
}
