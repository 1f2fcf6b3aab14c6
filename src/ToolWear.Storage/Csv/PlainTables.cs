using System.Collections.Immutable;
using ToolWear.Core.Fields;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Storage.Csv;

/// <summary>Reads the plain tables that <c>fit</c>, <c>compare-groups</c> and <c>lifetimes</c> take, with no store.</summary>
public static class PlainTables
{
    private const double MostHeats = 1e6;
    private const double MostMm = 10_000;

    private static readonly FieldTable<WearReadingRow> ReadingFields = new FieldTable<WearReadingRow>(
        "",
        new(0, "", "", "", 0, 0, null, null)
    )
        .Needs("kind", Text, r => r.Kind, (r, v) => r with { Kind = v! })
        .Needs("group", Text, r => r.Group, (r, v) => r with { Group = v! })
        .Needs("tool", Text, r => r.Tool, (r, v) => r with { Tool = v! })
        .Needs("segment", Whole(), r => r.Segment, (r, v) => r with { Segment = v!.Value })
        .Needs("start_mm", Number(-MostMm, MostMm), r => r.StartMm, (r, v) => r with { StartMm = v!.Value })
        .Column("heats", Number(0, MostHeats), r => r.Heats, (r, v) => r with { Heats = v })
        .Column("wear_mm", Number(-MostMm, MostMm), r => r.WearMm, (r, v) => r with { WearMm = v });

    private static readonly FieldTable<WearToolRow> ToolRowFields = new FieldTable<WearToolRow>(
        "",
        new(0, "", "", "", null, null, null, 0)
    )
        .Needs("kind", Text, t => t.Kind, (t, v) => t with { Kind = v! })
        .Needs("group", Text, t => t.Group, (t, v) => t with { Group = v! })
        .Needs("tool", Text, t => t.Tool, (t, v) => t with { Tool = v! })
        .Column("limit_mm", AboveZero(MostMm), t => t.LimitMm, (t, v) => t with { LimitMm = v })
        .Maybe("resolution_mm", AboveZero(MostMm), t => t.ResolutionMm, (t, v) => t with { ResolutionMm = v })
        .Maybe("guess_heats", AboveZero(MostHeats), t => t.GuessHeats, (t, v) => t with { GuessHeats = v })
        .Needs("heats_now", Number(0, MostHeats), t => t.HeatsNow, (t, v) => t with { HeatsNow = v!.Value });

    private static readonly FieldTable<LifetimeRow> LifetimeFields = new FieldTable<LifetimeRow>(
        "",
        new(0, "", 0, false, 0)
    )
        .Needs("tool", Text, l => l.Tool, (l, v) => l with { Tool = v! })
        .Needs("heats", AboveZero(MostHeats), l => l.Heats, (l, v) => l with { Heats = v!.Value })
        .Needs("failed", Failed, l => l.Failed ? 1 : 0, (l, v) => l with { Failed = v == 1 })
        .Maybe("from_heats", Number(0, MostHeats), l => l.FromHeats, (l, v) => l with { FromHeats = v ?? 0 });

    private static FieldKind<int?> Failed =>
        Whole() with
        {
            Fault = failed =>
                failed > 1 ? $"{failed} is neither 1 (it failed) nor 0 (it still works or was taken out)" : null,
        };

    /// <summary>Reads the stations of a body: from_mark_mm, section, a_mm, b_mm, radius_mm, large_radius_mm.</summary>
    /// <param name="file">The file.</param>
    /// <returns>The rows, each further from the mark than the one before; none where there are faults.</returns>
    public static TableRead<StationRow> Stations(CsvFile file)
    {
        Length? last = null;
        return Read(
            file,
            StationFields.Alone,
            (row, said) =>
            {
                FieldFault? fault = null;
                Station? station = row.IsFaulty ? null : said.Made(out fault);
                row.Fault(fault);
                if (!row.IsFaulty && said.FromMark <= last)
                {
                    row.Fault(
                        "from_mark_mm",
                        $"{said.FromMark} follows {last}; stations run from the shank mark outwards"
                    );
                }

                last = said.FromMark;
                return new StationRow(row.Line, said.FromMark, station?.Section!);
            }
        );
    }

    /// <summary>Reads wear readings: kind, group, tool, segment, start_mm, heats, wear_mm.</summary>
    /// <param name="file">The file.</param>
    /// <returns>The rows in order; none where there are faults.</returns>
    public static TableRead<WearReadingRow> Readings(CsvFile file) =>
        Read(
            file,
            ReadingFields,
            (row, reading) =>
            {
                if (!row.IsFaulty && reading.Heats is null != reading.WearMm is null)
                {
                    row.Fault(
                        reading.Heats is null ? "heats" : "wear_mm",
                        "heats and wear_mm go together; a row that only begins a segment has neither"
                    );
                }

                return reading with
                {
                    Line = row.Line,
                };
            }
        );

    /// <summary>Reads tools: kind, group, tool, limit_mm, resolution_mm, guess_heats, heats_now.</summary>
    /// <param name="file">The file.</param>
    /// <returns>The rows in order; none where there are faults.</returns>
    public static TableRead<WearToolRow> Tools(CsvFile file)
    {
        HashSet<(string Kind, string Group, string Tool)> seen = [];
        return Read(
            file,
            ToolRowFields,
            (row, tool) =>
            {
                if (!row.IsFaulty && !seen.Add((tool.Kind, tool.Group, tool.Tool)))
                {
                    row.Fault(
                        "tool",
                        $"{FreeText.Shown(tool.Tool)} of this kind and group stands here already; once is right"
                    );
                }

                return tool with
                {
                    Line = row.Line,
                };
            }
        );
    }

    /// <summary>Reads lifetimes: tool, heats, failed (1 or 0), from_heats (heats before it was watched, 0 where left out).</summary>
    /// <param name="file">The file.</param>
    /// <returns>The rows in order; none where there are faults.</returns>
    public static TableRead<LifetimeRow> Lifetimes(CsvFile file) =>
        Read(
            file,
            LifetimeFields,
            (row, life) =>
            {
                if (!row.IsFaulty && life.FromHeats >= life.Heats)
                {
                    row.Fault(
                        "from_heats",
                        $"{life.FromHeats} is not below heats {life.Heats}; a tool is watched from before its end"
                    );
                }

                return life with
                {
                    Line = row.Line,
                };
            }
        );

    private static TableRead<TRow> Read<TSaid, TRow>(
        CsvFile file,
        FieldTable<TSaid> fields,
        Func<CsvRow, TSaid, TRow> made
    )
    {
        CsvFaults faults = new();
        CsvSheet sheet = CsvSheet.Read(file, CsvColumn.Of(fields), DateOnly.MaxValue, faults);
        ImmutableArray<TRow> rows = [.. sheet.Rows.Select(row => made(row, row.Read(fields)))];
        return new(faults.Count == 0 ? rows : [], faults.Shown, faults.More);
    }
}
