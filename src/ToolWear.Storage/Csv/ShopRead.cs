using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv;

/// <summary>An entry that a row stands for.</summary>
/// <param name="Row">The row.</param>
/// <param name="Column">The column that a refusal of the entry is told at.</param>
/// <param name="What">The entry.</param>
internal sealed record EntryRead(CsvRow Row, string Column, LedgerEntry What);

/// <summary>Something that happened, as a row tells it.</summary>
/// <param name="Rank">What stands in the column <c>entry</c>, null where it is empty.</param>
/// <param name="Entry">The entry.</param>
/// <param name="Then">A second entry right after it, null where there is none.</param>
internal sealed record EventRead(int? Rank, EntryRead Entry, LedgerEntry? Then);

/// <summary>What the files of a CSV set say so far, row by row; nothing of it is tried on a shop yet.</summary>
internal sealed class ShopRead
{
    private readonly Dictionary<string, CsvRow> names = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ToolRead> toolsByMark = new(StringComparer.Ordinal);
    private readonly HashSet<string> doubts = new(StringComparer.Ordinal);

    /// <summary>Settings, eyes, handles, series, bars.</summary>
    public List<EntryRead> Descriptions { get; } = [];

    /// <summary>The patterns in the order in which they begin.</summary>
    public List<PatternRead> Patterns { get; } = [];

    /// <summary>The tools in the order of their rows.</summary>
    public List<ToolRead> Tools { get; } = [];

    /// <summary>The orders.</summary>
    public List<EntryRead> Orders { get; } = [];

    /// <summary>What happened, file by file.</summary>
    public List<EventRead> Events { get; } = [];

    /// <summary>The readings of a table of tools in use, which come last.</summary>
    public List<EntryRead> SizesNow { get; } = [];

    /// <summary>The sessions' days and their order in the file, by name.</summary>
    public Dictionary<string, (DateOnly On, int Order)> Sessions { get; } = new(StringComparer.Ordinal);

    /// <summary>Whether each file could be read whole, by its name; a file that is not there is whole.</summary>
    public HashSet<string> Broken { get; } = new(StringComparer.Ordinal);

    /// <summary>Tells a fault where a name is entered a second time.</summary>
    /// <param name="row">The row.</param>
    /// <param name="column">The column of the name.</param>
    /// <param name="name">The name; one that was refused is taken all the same.</param>
    public void Once(CsvRow row, string column, string name)
    {
        string key = $"{column}\n{name}";
        if (name.Length > 0 && !names.TryAdd(key, row))
        {
            row.Fault(
                column,
                $"{FreeText.Shown(name)} stands in {names[key].File}:{names[key].Line} already; once is right"
            );
        }
    }

    /// <summary>Takes something described, once under its name.</summary>
    /// <typeparam name="T">What is described.</typeparam>
    /// <param name="row">The row.</param>
    /// <param name="fields">Its fields.</param>
    /// <param name="what">What is described.</param>
    /// <param name="into">Where it goes.</param>
    public void Take<T>(CsvRow row, FieldTable<T> fields, T what, List<EntryRead> into)
        where T : LedgerEntry
    {
        string[] keys = [.. fields.All.Where(field => field.IsKey).Select(field => field.Name)];
        Once(
            row,
            keys[^1],
            string.Join(' ', keys.Select(key => fields[key].Write(what)).Where(text => text.Length > 0))
        );
        if (!row.IsFaulty)
        {
            into.Add(new(row, keys[0], what));
        }
    }

    /// <summary>Tells a fault where a field names what there is not.</summary>
    /// <typeparam name="T">What the row says.</typeparam>
    /// <param name="row">The row.</param>
    /// <param name="fields">Its fields.</param>
    /// <param name="thing">What it says.</param>
    /// <returns>The tool that it names first; null where there is none.</returns>
    public ToolRead? Named<T>(CsvRow row, FieldTable<T> fields, T thing)
    {
        ToolRead? tool = null;
        foreach (Field<T> field in fields.All)
        {
            switch (field.Like)
            {
                case Kept.Tools when field.Write(thing) is { Length: > 0 } mark:
                    ToolRead? found = Tool(row, field.Name, mark);
                    tool ??= found;
                    break;
                case Kept.GaugeMarks:
                    NeedGauge(row, tool, field.Write(thing));
                    break;
                case Kept.Sessions:
                    NeedSession(row, field.Write(thing));
                    break;
                case Kept.Patterns:
                    NeedPattern(row, field.Write(thing));
                    break;
                default:
                    break;
            }
        }

        return tool;
    }

    /// <summary>Adds a stage to its pattern.</summary>
    /// <param name="row">The row.</param>
    /// <param name="stage">The stage with its pattern.</param>
    public void Add(CsvRow row, StageOf stage)
    {
        if (row.IsFaulty)
        {
            Doubt("pattern", stage.Pattern);
        }

        PatternRead? pattern = Patterns.Find(each => each.Name == stage.Pattern);
        if (pattern is null)
        {
            pattern = new(row, stage.Pattern, []);
            Patterns.Add(pattern);
        }

        pattern.Stages.Add(stage.Stage);
    }

    /// <summary>Notes that what a name stands for cannot be judged, since a row that speaks of it is faulty.</summary>
    /// <param name="kind">tool, session, pattern.</param>
    /// <param name="name">The name.</param>
    public void Doubt(string kind, string name) => doubts.Add($"{kind}\n{name}");

    /// <summary>Whether an entry speaks of what cannot be judged.</summary>
    /// <param name="what">The entry.</param>
    /// <returns>True where trying it would only tell the consequence of another fault.</returns>
    public bool IsDoubtful(LedgerEntry what)
    {
        string? session = what switch
        {
            SessionOpened e => e.Session,
            HeatsWorked e => e.Session,
            ToolMeasured e => e.Session,
            EyeMeasured e => e.Session,
            _ => null,
        };
        string? pattern = what switch
        {
            OrderDescribed e => e.Pattern,
            PatternDescribed e => e.Pattern,
            _ => null,
        };
        return what.Tools.Any(tool => doubts.Contains($"tool\n{tool}"))
            || doubts.Contains($"session\n{session}")
            || doubts.Contains($"pattern\n{pattern}");
    }

    /// <summary>Adds a tool.</summary>
    /// <param name="tool">The tool.</param>
    public void Add(ToolRead tool)
    {
        if (toolsByMark.TryAdd(tool.Tool.Mark.ToString(), tool))
        {
            Tools.Add(tool);
        }
    }

    /// <summary>Finds the tool that a cell names, and tells a fault where there is none.</summary>
    private ToolRead? Tool(CsvRow row, string column, string mark)
    {
        if (toolsByMark.TryGetValue(mark, out ToolRead? tool))
        {
            return tool;
        }

        if (!Broken.Contains("tools.csv") && !Broken.Contains("tools-in-use.csv"))
        {
            row.Fault(column, $"no tool is marked {mark}; tools.csv names every tool");
        }
        else
        {
            Doubt("tool", mark);
        }

        return null;
    }

    /// <summary>Tells a fault where a tool has no gauge mark of a name.</summary>
    private void NeedGauge(CsvRow row, ToolRead? tool, string? gauge)
    {
        if (tool is null || string.IsNullOrEmpty(gauge) || tool.IsDoubtful || Broken.Contains("gauge-marks.csv"))
        {
            return;
        }

        Tool made = tool.Made();
        if (made.Gauge(gauge) is null)
        {
            string there = string.Join(", ", made.GaugeMarks.Select(each => each.Name));
            row.Fault(
                "gauge",
                $"{made.Mark} has no gauge mark {gauge}; it has {(there.Length == 0 ? "none at all" : there)}"
            );
        }
    }

    /// <summary>Tells a fault where there is no session of a name.</summary>
    private void NeedSession(CsvRow row, string? session)
    {
        if (string.IsNullOrEmpty(session) || Sessions.ContainsKey(session) || doubts.Contains($"session\n{session}"))
        {
            return;
        }

        if (Broken.Contains("sessions.csv"))
        {
            Doubt("session", session);
        }
        else
        {
            row.Fault("session", $"there is no session {session}; sessions.csv names every session");
        }
    }

    /// <summary>Tells a fault where there is no pattern of a name.</summary>
    private void NeedPattern(CsvRow row, string pattern)
    {
        if (pattern.Length == 0 || Patterns.Exists(each => each.Name == pattern))
        {
            return;
        }

        if (Broken.Contains("patterns.csv"))
        {
            Doubt("pattern", pattern);
        }
        else
        {
            row.Fault("pattern", $"there is no pattern {pattern}; patterns.csv names every pattern");
        }
    }
}

/// <summary>A pattern, stage by stage.</summary>
/// <param name="Row">The row of its first stage.</param>
/// <param name="Name">Its name.</param>
/// <param name="Stages">The stages read so far.</param>
internal sealed record PatternRead(CsvRow Row, string Name, List<PatternStage> Stages);
