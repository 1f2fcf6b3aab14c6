using System.Collections.Immutable;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Histories;
using ToolWear.Doors;
using ToolWear.Storage.Csv;

namespace ToolWear.Commands.Figures;

/// <summary>Makes wear histories of plain rows.</summary>
internal static class FittedHistories
{
    // a caliper's usual step where a table names none; common practice, no source
    private const double UsualResolutionMm = 0.05;

    /// <summary>Gathers the readings of each tool in its segments.</summary>
    /// <exception cref="RefusedException">A reading is of a tool that is not in the tools' table, or after its heats now.</exception>
    public static ImmutableArray<WearHistory> Of(
        ImmutableArray<WearReadingRow> readings,
        ImmutableArray<WearToolRow> tools
    )
    {
        ILookup<(string, string, string), WearReadingRow> byTool = readings.ToLookup(row =>
            (row.Kind, row.Group, row.Tool)
        );
        HashSet<(string, string, string)> known = [.. tools.Select(tool => (tool.Kind, tool.Group, tool.Tool))];
        if (readings.FirstOrDefault(row => !known.Contains((row.Kind, row.Group, row.Tool))) is { } stray)
        {
            throw RefusedException.WrongData(
                $"readings line {stray.Line}: {stray.Tool} of kind {stray.Kind} and group {stray.Group} does not stand in the table of tools"
            );
        }

        return [.. tools.Select(tool => Of(tool, [.. byTool[(tool.Kind, tool.Group, tool.Tool)]]))];
    }

    private static WearHistory Of(WearToolRow tool, ImmutableArray<WearReadingRow> rows)
    {
        ImmutableArray<WearSegment> segments =
        [
            .. rows.GroupBy(row => row.Segment).OrderBy(rows => rows.Key).Select(Segment),
        ];
        double last = segments.IsEmpty || segments[^1].Readings.IsEmpty ? 0 : segments[^1].Readings[^1].Heats;
        return last > tool.HeatsNow
            ? throw RefusedException.WrongData(
                $"tools line {tool.Line}: heats_now {tool.HeatsNow} of {tool.Tool} lies before its last reading at {last} heats"
            )
            : new WearHistory(
                tool.Kind,
                tool.Group,
                tool.Tool,
                "",
                tool.LimitMm,
                tool.ResolutionMm ?? UsualResolutionMm,
                tool.GuessHeats ?? GuessedLife.Assumed,
                tool.GuessHeats is null,
                tool.HeatsNow,
                segments
            );
    }

    private static WearSegment Segment(IGrouping<int, WearReadingRow> rows)
    {
        double startMm = rows.First().StartMm;
        if (rows.FirstOrDefault(row => row.StartMm != startMm) is { } other)
        {
            throw RefusedException.WrongData(
                $"readings line {other.Line}: start_mm {other.StartMm} of {other.Tool}, segment {other.Segment}, was {startMm} before: it is one for the whole segment"
            );
        }

        return new(
            startMm,
            [
                .. rows.Where(row => row.Heats is not null)
                    .Select(row => new WearReading(row.Heats!.Value, row.WearMm!.Value)),
            ]
        );
    }
}
