using System.Collections.Immutable;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Histories;

/// <summary>All that a forecast needs to know of one gauge mark of one tool.</summary>
/// <remarks>
/// Tools of one kind learn from each other, those of one group (kind and steel) the most; kinds never influence each
/// other. Two histories are equal where every field and every segment is.
/// </remarks>
/// <param name="Kind">Form, place and gauge name, or whatever else divides tools that must not be pooled.</param>
/// <param name="Group">Kind and steel.</param>
/// <param name="Tool">The tool's mark.</param>
/// <param name="Gauge">The gauge mark's name; empty where readings come without one.</param>
/// <param name="LimitMm">Wear in mm at which the tool is worn out, above zero; null where none was set.</param>
/// <param name="ResolutionMm">The caliper's smallest step in mm, zero or more.</param>
/// <param name="GuessHeats">How many heats one of these usually lasts, above zero.</param>
/// <param name="GuessIsAssumed">True where nobody said so and 60 stands in.</param>
/// <param name="HeatsNow">Weighted heats since the start of the last segment, no fewer than at its last reading.</param>
/// <param name="Segments">From new to now; none means new and never read.</param>
/// <exception cref="ArgumentOutOfRangeException">A number is not finite or outside its range.</exception>
public sealed record WearHistory(
    string Kind,
    string Group,
    string Tool,
    string Gauge,
    double? LimitMm,
    double ResolutionMm,
    double GuessHeats,
    bool GuessIsAssumed,
    double HeatsNow,
    ImmutableArray<WearSegment> Segments
)
{
    // sums of weighted heats made in another order may differ in the last digits
    internal const double Rounding = 1e-9;

    /// <summary>Wear in mm at which the tool is worn out, above zero; null where none was set.</summary>
    public double? LimitMm { get; } = Finite.PositiveIfKnown(LimitMm);

    /// <summary>The caliper's smallest step in mm, zero or more.</summary>
    public double ResolutionMm { get; } = Finite.NotNegative(ResolutionMm);

    /// <summary>The guessed life in weighted heats, above zero.</summary>
    public double GuessHeats { get; } = Finite.Positive(GuessHeats);

    /// <summary>Weighted heats since the start of the last segment, zero or more.</summary>
    public double HeatsNow { get; } = NotBeforeLast(HeatsNow, Segments);

    /// <summary>From new to now, at least one.</summary>
    public ImmutableArray<WearSegment> Segments { get; } = Segments.IsDefaultOrEmpty ? [WearSegment.New] : Segments;

    /// <summary>Whether it was thrown out as worn at <see cref="HeatsNow"/> and its last size was not read.</summary>
    public bool IsThrownOut { get; init; }

    /// <summary>Whether the tool has no sizes at all, so that only its heats tell: wear is then a share of its life.</summary>
    public bool IsByHeatsAlone { get; init; }

    /// <summary>Whether it says how such tools wear.</summary>
    internal bool Teaches => (LimitMm is not null || IsByHeatsAlone) && (IsThrownOut || ReadingsInAll > 0);

    /// <summary>The segment that runs now.</summary>
    public WearSegment Last => Segments[^1];

    /// <summary>How many readings all segments hold together.</summary>
    public int ReadingsInAll => Segments.Sum(segment => segment.Readings.Length);

    /// <inheritdoc />
    public bool Equals(WearHistory? other) =>
        other is not null
        && (Kind, Group, Tool, Gauge) == (other.Kind, other.Group, other.Tool, other.Gauge)
        && (LimitMm, ResolutionMm, GuessHeats, GuessIsAssumed, HeatsNow).Equals(
            (other.LimitMm, other.ResolutionMm, other.GuessHeats, other.GuessIsAssumed, other.HeatsNow)
        )
        && (IsThrownOut, IsByHeatsAlone) == (other.IsThrownOut, other.IsByHeatsAlone)
        && Segments.AsSpan().SequenceEqual(other.Segments.AsSpan());

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Kind, Group, Tool, Gauge, LimitMm, HeatsNow, Segments.Length);

    private static double NotBeforeLast(double heatsNow, ImmutableArray<WearSegment> segments)
    {
        double now = Finite.NotNegative(heatsNow);
        double last = segments.IsDefaultOrEmpty || segments[^1].Readings.IsEmpty ? 0 : segments[^1].Readings[^1].Heats;
        return now >= last * (1 - Rounding)
            ? Math.Max(now, last)
            : throw new ArgumentOutOfRangeException(nameof(heatsNow), now, $"is before the last reading at {last}");
    }
}
