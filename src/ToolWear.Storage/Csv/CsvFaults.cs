using System.Collections.Immutable;

namespace ToolWear.Storage.Csv;

/// <summary>One thing that is wrong in a CSV file, and where.</summary>
/// <param name="File">The file's name.</param>
/// <param name="Line">The line on which the row starts, from 1; the header is line 1 of most files.</param>
/// <param name="Column">The column's name; empty where the row or the file as a whole is wrong.</param>
/// <param name="Sentence">What is wrong, what would be right.</param>
public sealed record CsvFault(string File, long Line, string Column, string Sentence)
{
    /// <summary>The fault on one line, as an editor can jump to it.</summary>
    /// <returns>For example "tools.csv:3: made_on: "2026-02-30" is no day, such as 2026-05-01".</returns>
    public override string ToString() =>
        Column.Length == 0 ? $"{File}:{Line}: {Sentence}" : $"{File}:{Line}: {Column}: {Sentence}";
}

/// <summary>The faults of one reading: the first hundred are kept, the rest counted.</summary>
internal sealed class CsvFaults
{
    /// <summary>How many are kept.</summary>
    public const int Most = 100;

    private readonly List<CsvFault> kept = [];

    /// <summary>How many there were.</summary>
    public int Count { get; private set; }

    /// <summary>The first of them.</summary>
    public ImmutableArray<CsvFault> Shown => [.. kept];

    /// <summary>How many more there were than are kept.</summary>
    public int More => Count - kept.Count;

    /// <summary>Adds a fault.</summary>
    /// <param name="file">The file's name.</param>
    /// <param name="line">The line, from 1.</param>
    /// <param name="column">The column, empty for the whole row.</param>
    /// <param name="sentence">What is wrong, what would be right.</param>
    public void Add(string file, long line, string column, string sentence)
    {
        Count++;
        if (kept.Count < Most)
        {
            kept.Add(new(file, line, column, sentence));
        }
    }
}
