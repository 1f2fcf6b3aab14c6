using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Storage.Csv.Files;

namespace ToolWear.Storage.Csv;

/// <summary>Reads the plain tables that <c>fit</c>, <c>compare-groups</c> and <c>lifetimes</c> take, with no store.</summary>
public static class PlainTables
{
    private const double MostHeats = 1e6;
    private const double MostMm = 10_000;

    private static readonly ImmutableArray<CsvColumn> ReadingColumns = CsvColumn.List(
        "kind! group! tool! segment! start_mm! heats! wear_mm!"
    );

    private static readonly ImmutableArray<CsvColumn> ToolColumns = CsvColumn.List(
        "kind! group! tool! limit_mm! resolution_mm guess_heats heats_now!"
    );

    private static readonly ImmutableArray<CsvColumn> LifetimeColumns = CsvColumn.List(
        "tool! heats! failed! from_heats"
    );

    private static readonly ImmutableArray<CsvColumn> StationColumns = CsvColumn.List(
        "from_mark_mm! section! a_mm! b_mm radius_mm large_radius_mm"
    );

    /// <summary>Reads the stations of a body: from_mark_mm, section, a_mm, b_mm, radius_mm, large_radius_mm.</summary>
    /// <param name="file">The file.</param>
    /// <returns>The rows, each further from the mark than the one before; none where there are faults.</returns>
    public static TableRead<StationRow> Stations(CsvFile file)
    {
        Length? last = null;
        return Read(
            file,
            StationColumns,
            row =>
            {
                Length fromMark = row.NeedDistance("from_mark_mm");
                Section? section = SectionCells.Read(row);
                if (!row.IsFaulty && fromMark <= last)
                {
                    row.Fault("from_mark_mm", $"{fromMark} follows {last}; stations run from the shank mark outwards");
                }

                last = fromMark;
                return new StationRow(row.Line, fromMark, section!);
            }
        );
    }

    /// <summary>Reads wear readings: kind, group, tool, segment, start_mm, heats, wear_mm.</summary>
    /// <param name="file">The file.</param>
    /// <returns>The rows in order; none where there are faults.</returns>
    public static TableRead<WearReadingRow> Readings(CsvFile file) => Read(file, ReadingColumns, Reading);

    /// <summary>Reads tools: kind, group, tool, limit_mm, resolution_mm, guess_heats, heats_now.</summary>
    /// <param name="file">The file.</param>
    /// <returns>The rows in order; none where there are faults.</returns>
    public static TableRead<WearToolRow> Tools(CsvFile file)
    {
        HashSet<(string Kind, string Group, string Tool)> seen = [];
        return Read(
            file,
            ToolColumns,
            row =>
            {
                WearToolRow tool = Tool(row);
                if (!row.IsFaulty && !seen.Add((tool.Kind, tool.Group, tool.Tool)))
                {
                    row.Fault(
                        "tool",
                        $"{FreeText.Shown(tool.Tool)} of this kind and group stands here already; once is right"
                    );
                }

                return tool;
            }
        );
    }

    /// <summary>Reads lifetimes: tool, heats, failed (1 or 0), from_heats (heats before it was watched, 0 where left out).</summary>
    /// <param name="file">The file.</param>
    /// <returns>The rows in order; none where there are faults.</returns>
    public static TableRead<LifetimeRow> Lifetimes(CsvFile file) => Read(file, LifetimeColumns, Lifetime);

    private static WearReadingRow Reading(CsvRow row)
    {
        WearReadingRow reading = new(
            row.Line,
            row.NeedText("kind"),
            row.NeedText("group"),
            row.NeedText("tool"),
            row.NeedCount("segment"),
            Within(row, "start_mm", row.NeedNumber("start_mm"), -MostMm, MostMm) ?? 0,
            Within(row, "heats", row.Number("heats"), 0, MostHeats),
            Within(row, "wear_mm", row.Number("wear_mm"), -MostMm, MostMm)
        );
        if (!row.IsFaulty && reading.Heats is null != reading.WearMm is null)
        {
            row.Fault(
                reading.Heats is null ? "heats" : "wear_mm",
                "heats and wear_mm go together; a row that only begins a segment has neither"
            );
        }

        return reading;
    }

    private static WearToolRow Tool(CsvRow row) =>
        new(
            row.Line,
            row.NeedText("kind"),
            row.NeedText("group"),
            row.NeedText("tool"),
            AboveZero(row, "limit_mm", MostMm),
            AboveZero(row, "resolution_mm", MostMm),
            AboveZero(row, "guess_heats", MostHeats),
            Within(row, "heats_now", row.NeedNumber("heats_now"), 0, MostHeats) ?? 0
        );

    private static LifetimeRow Lifetime(CsvRow row)
    {
        double heats = AboveZero(row, "heats", MostHeats) ?? 0;
        double from = Within(row, "from_heats", row.Number("from_heats"), 0, MostHeats) ?? 0;
        int failed = row.NeedCount("failed");
        if (!row.Has("heats"))
        {
            row.NeedNumber("heats");
        }

        if (failed > 1)
        {
            row.Fault("failed", $"{failed} is neither 1 (it failed) nor 0 (it still works or was taken out)");
        }

        if (!row.IsFaulty && from >= heats)
        {
            row.Fault("from_heats", $"{from} is not below heats {heats}; a tool is watched from before its end");
        }

        return new(row.Line, row.NeedText("tool"), heats, failed == 1, from);
    }

    private static double? AboveZero(CsvRow row, string column, double most)
    {
        double? number = row.Number(column);
        if (number is { } value && !(value > 0 && value <= most))
        {
            row.Fault(column, $"{value} lies outside; a number above 0 to {most}");
        }

        return number;
    }

    private static double? Within(CsvRow row, string column, double? number, double least, double most)
    {
        if (number is { } value && !(value >= least && value <= most))
        {
            row.Fault(column, $"{value} lies outside; a number from {least} to {most}");
        }

        return number;
    }

    private static TableRead<T> Read<T>(CsvFile file, ImmutableArray<CsvColumn> columns, Func<CsvRow, T> read)
    {
        CsvFaults faults = new();
        CsvSheet sheet = CsvSheet.Read(file, columns, DateOnly.MaxValue, faults);
        ImmutableArray<T> rows = [.. sheet.Rows.Select(read)];
        return new(faults.Count == 0 ? rows : [], faults.Shown, faults.More);
    }
}
