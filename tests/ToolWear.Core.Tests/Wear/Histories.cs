using System.Collections.Immutable;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Core.Tests.Wear;

/// <summary>Makes histories for tests, from the reference files or of figures.</summary>
internal static class Histories
{
    internal static WearHistory One(
        string tool,
        double heatsNow,
        IEnumerable<(double Heats, double WearMm)> readings,
        double? limitMm = 0.8,
        double resolutionMm = 0.01,
        double guessHeats = 60,
        string group = "G1"
    ) => Of(tool, heatsNow, [Segment(0, readings)], limitMm, resolutionMm, guessHeats, group);

    internal static WearHistory Of(
        string tool,
        double heatsNow,
        IEnumerable<WearSegment> segments,
        double? limitMm = 0.8,
        double resolutionMm = 0.01,
        double guessHeats = 60,
        string group = "G1",
        string kind = "K1"
    ) => new(kind, group, tool, "", limitMm, resolutionMm, guessHeats, false, heatsNow, [.. segments]);

    internal static WearSegment Segment(double? startMm, IEnumerable<(double Heats, double WearMm)> readings) =>
        new(startMm, [.. readings.Select(reading => new WearReading(reading.Heats, reading.WearMm))]);

    /// <summary>Every tool of a pair of files in the form of reference/wear.</summary>
    internal static List<WearHistory> Read(string readingsFile, string toolsFile)
    {
        ILookup<(string, string), Row> readings = Published
            .Rows(readingsFile)
            .ToLookup(row => (row["kind"], row["tool"]));
        return
        [
            .. Published
                .Rows(toolsFile)
                .Select(row =>
                    Of(
                        row["tool"],
                        row.Number("heats_now"),
                        Segments(readings[(row["kind"], row["tool"])]),
                        row.Number("limit_mm"),
                        row.Number("resolution_mm"),
                        row.Number("guess_heats"),
                        row["group"],
                        row["kind"]
                    )
                ),
        ];
    }

    internal static List<WearHistory> Case(string id) => Read($"wear/{id}.csv", $"wear/{id}-tools.csv");

    private static ImmutableArray<WearSegment> Segments(IEnumerable<Row> rows) =>
        [
            .. rows.GroupBy(row => (int)row.Number("segment"))
                .OrderBy(segment => segment.Key)
                .Select(segment =>
                    Segment(
                        segment.First().Number("start_mm"),
                        segment
                            .Where(row => row.Has("heats"))
                            .Select(row => (row.Number("heats"), row.Number("wear_mm")))
                    )
                ),
        ];
}
