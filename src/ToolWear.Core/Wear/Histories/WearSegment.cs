using System.Collections.Immutable;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Histories;

/// <summary>The life of a gauge mark from one rework (or from new) to the next; its heats count from zero.</summary>
/// <remarks>Two segments are equal where start and readings are. Readings are kept in order of heats; those of the same
/// heats keep the order in which they were given.</remarks>
/// <param name="StartMm">Wear at the segment's start in mm, 0 when new; null where it is not known yet, and then there
/// are no readings.</param>
/// <param name="Readings">The readings after the start; the measurement that gave the start is not one of them.</param>
/// <exception cref="ArgumentOutOfRangeException">The start is not finite.</exception>
/// <exception cref="ArgumentException">There are readings although the start is not known.</exception>
public sealed record WearSegment(double? StartMm, ImmutableArray<WearReading> Readings)
{
    /// <summary>A new tool's first segment before its first reading.</summary>
    public static WearSegment New { get; } = new(0, []);

    /// <summary>Wear at the segment's start in mm; null where it is not known yet.</summary>
    public double? StartMm { get; } = Finite.NumberIfKnown(StartMm);

    /// <summary>The readings in order of heats; never a default array.</summary>
    public ImmutableArray<WearReading> Readings { get; } = InOrder(StartMm, Readings);

    /// <inheritdoc />
    public bool Equals(WearSegment? other) =>
        other is not null
        && Nullable.Equals(StartMm, other.StartMm)
        && Readings.AsSpan().SequenceEqual(other.Readings.AsSpan());

    /// <inheritdoc />
    public override int GetHashCode()
    {
        HashCode hash = new();
        hash.Add(StartMm);
        foreach (WearReading reading in Readings)
        {
            hash.Add(reading);
        }

        return hash.ToHashCode();
    }

    private static ImmutableArray<WearReading> InOrder(double? startMm, ImmutableArray<WearReading> readings)
    {
        if (readings.IsDefaultOrEmpty)
        {
            return [];
        }

        return startMm is null
            ? throw new ArgumentException("a segment whose start is not known has no readings", nameof(readings))
            : [.. readings.OrderBy(reading => reading.Heats)];
    }
}
