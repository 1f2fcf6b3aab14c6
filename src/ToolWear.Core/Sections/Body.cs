using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Sections;

/// <summary>The body of a tool: its sections at stations along its axis.</summary>
/// <remarks>
/// Between two stations of one kind the figures run linearly; between two of different kinds the surface is the
/// straight one that joins them (their convex hull). Two stations at one place make a step.
/// </remarks>
public sealed class Body
{
    private static readonly Length Furthest = Length.FromMm(10_000m);

    private Body(IReadOnlyList<Station> stations) => Stations = stations;

    /// <summary>The stations in order along the axis, two or more.</summary>
    public IReadOnlyList<Station> Stations { get; }

    /// <summary>The length over all.</summary>
    public Length Length => Stations[^1].FromMark - Stations[0].FromMark;

    /// <summary>The volume in mm3.</summary>
    /// <remarks>The sum over the stretches between stations; a prismoid 20 x 10 to 30 x 16 over 100 mm is 33000.</remarks>
    public double VolumeMm3 => Stations.Zip(Stations.Skip(1), Stretches.VolumeMm3).Sum();

    /// <summary>The area of the largest station in mm2: what a bar must have to be forged to shape without upsetting.</summary>
    public double LargestAreaMm2 => Stations.Max(station => station.Section.AreaMm2());

    /// <summary>Makes a body of its stations.</summary>
    /// <param name="stations">Two or more, in order along the axis, from either end; within 10 m of the mark.</param>
    /// <param name="body">The body, where the stations can be.</param>
    /// <param name="refusal">Otherwise the reason, with what is allowed.</param>
    /// <returns>True where a body was made.</returns>
    public static bool TryMake(
        IReadOnlyList<Station> stations,
        [NotNullWhen(true)] out Body? body,
        [NotNullWhen(false)] out string? refusal
    )
    {
        body = null;
        refusal = null;
        if (stations.Count < 2)
        {
            refusal = $"A body takes 2 or more stations; there is {stations.Count}.";
            return false;
        }

        Station[] ordered = [.. stations];
        if (ordered[0].FromMark > ordered[^1].FromMark)
        {
            Array.Reverse(ordered);
        }

        foreach (Station station in ordered)
        {
            if (station.FromMark > Furthest || station.FromMark < -Furthest)
            {
                refusal = $"A station lies within {Furthest} of the mark; {station.FromMark} does not.";
                return false;
            }
        }

        for (int i = 1; i < ordered.Length; i++)
        {
            if (ordered[i].FromMark < ordered[i - 1].FromMark)
            {
                refusal =
                    $"Stations go in order along the tool; {ordered[i].FromMark} and {ordered[i - 1].FromMark} do not.";
                return false;
            }
        }

        if (ordered[0].FromMark == ordered[^1].FromMark)
        {
            refusal = $"The stations of a body must lie apart; all are at {ordered[0].FromMark}.";
            return false;
        }

        body = new Body(ordered);
        return true;
    }
}
