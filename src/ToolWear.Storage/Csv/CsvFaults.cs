using System.Collections.Immutable;

namespace ToolWear.Storage.Csv;

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
