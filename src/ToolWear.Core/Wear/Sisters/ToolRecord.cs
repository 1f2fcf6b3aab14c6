using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>One segment in shares of the limit: its place in the history, start x0, readings x_j at heats n_j.</summary>
internal sealed record RecordedSegment(int Place, double x0, double[] n, double[] x);

/// <summary>A tool's history in shares of its limit, so that the prior is free of units.</summary>
/// <param name="Limit">The limit in mm.</param>
/// <param name="N0">The guessed life in heats.</param>
/// <param name="v_r">Variance of rounding to the caliper's step: (resolution/limit)^2/12.</param>
/// <param name="Now">Heats since the start of the last segment.</param>
/// <param name="Segments">Those whose start is known.</param>
/// <param name="EndIsKnown">Whether the last segment is among them, so that there is a wear to go on from.</param>
internal sealed record ToolRecord(
    double Limit,
    double N0,
    double v_r,
    double Now,
    ImmutableArray<RecordedSegment> Segments,
    bool EndIsKnown
)
{
    /// <summary>Readings in all segments together.</summary>
    internal int Readings { get; } = Segments.Sum(segment => segment.n.Length);

    /// <summary>Heats at the last reading of the last segment, zero where there is none.</summary>
    internal double LastRead => Segments.IsEmpty || Segments[^1].n.Length == 0 ? 0 : Segments[^1].n[^1];

    /// <summary>The record of a history, or null where it has no limit.</summary>
    internal static ToolRecord? Of(WearHistory history)
    {
        if (history.LimitMm is not { } limit)
        {
            return null;
        }

        double step = history.ResolutionMm / limit;
        return new ToolRecord(
            limit,
            history.GuessHeats,
            step * step / 12,
            history.HeatsNow,
            [
                .. history
                    .Segments.Index()
                    .Where(at => at.Item.StartMm is not null)
                    .Select(at => Scaled(at.Index, at.Item, limit)),
            ],
            history.Last.StartMm is not null
        );
    }

    private static RecordedSegment Scaled(int place, WearSegment segment, double limit) =>
        new(
            place,
            segment.StartMm!.Value / limit,
            [.. segment.Readings.Select(reading => reading.Heats)],
            [.. segment.Readings.Select(reading => reading.WearMm / limit)]
        );
}
