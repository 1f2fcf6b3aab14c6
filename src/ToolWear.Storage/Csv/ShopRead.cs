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
    /// <param name="row">The row.</param>
    /// <param name="column">The column of the name.</param>
    /// <param name="name">The name.</param>
    /// <param name="what">What is described.</param>
    public void Take(CsvRow row, string column, string name, LedgerEntry what)
    {
        Once(row, column, name);
        if (!row.IsFaulty)
        {
            Descriptions.Add(new(row, column, what));
        }
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
    /// <param name="row">The row.</param>
    /// <param name="column">The column.</param>
    /// <param name="mark">The mark, no mark where it could not be read.</param>
    /// <returns>The tool; null where there is none.</returns>
    public ToolRead? Tool(CsvRow row, string column, ToolMark mark)
    {
        if (mark == default)
        {
            return null;
        }

        if (toolsByMark.TryGetValue(mark.Text, out ToolRead? tool))
        {
            return tool;
        }

        if (!Broken.Contains("tools.csv") && !Broken.Contains("tools-in-use.csv"))
        {
            row.Fault(column, $"no tool is marked {mark}; tools.csv names every tool");
        }
        else
        {
            Doubt("tool", mark.Text);
        }

        return null;
    }

    /// <summary>Tells a fault where a tool has no gauge mark of a name.</summary>
    /// <param name="row">The row.</param>
    /// <param name="tool">The tool, null where it is not known.</param>
    /// <param name="gauge">The gauge mark's name, null for none.</param>
    public void NeedGauge(CsvRow row, ToolRead? tool, string? gauge)
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
    /// <param name="row">The row.</param>
    /// <param name="session">The name, null for none.</param>
    public void NeedSession(CsvRow row, string? session)
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
    /// <param name="row">The row.</param>
    /// <param name="pattern">The name.</param>
    public void NeedPattern(CsvRow row, string pattern)
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

    /// <summary>Adds something that happened.</summary>
    /// <param name="row">The row.</param>
    /// <param name="column">The column that a refusal is told at.</param>
    /// <param name="rank">What stands in the column <c>entry</c>.</param>
    /// <param name="what">The entry.</param>
    /// <param name="then">A second entry right after it, null where there is none.</param>
    public void AddEvent(CsvRow row, string column, int? rank, LedgerEntry what, LedgerEntry? then) =>
        Events.Add(new(rank, new(row, column, what), then));
}

/// <summary>A pattern, stage by stage.</summary>
/// <param name="Row">The row of its first stage.</param>
/// <param name="Name">Its name.</param>
/// <param name="Stages">The stages read so far.</param>
internal sealed record PatternRead(CsvRow Row, string Name, List<PatternStage> Stages);
