using ToolWear.Core.Fields;
using ToolWear.Core.Measure;

namespace ToolWear.Storage.Csv;

/// <summary>One row of a CSV file; a cell that cannot be read is told to the faults.</summary>
internal sealed class CsvRow(
    string file,
    long line,
    IReadOnlyDictionary<string, int> header,
    string[] cells,
    DateOnly today,
    CsvFaults faults
)
{
    private static readonly FieldKind<int?> Ranks = FieldKinds.Whole();

    /// <summary>The file's name.</summary>
    public string File => file;

    /// <summary>The line on which the row starts.</summary>
    public long Line => line;

    /// <summary>The shop's day.</summary>
    public DateOnly Today => today;

    /// <summary>Whether anything in the row was wrong.</summary>
    public bool IsFaulty { get; private set; }

    /// <summary>Tells a fault of this row.</summary>
    /// <param name="column">The column, empty for the whole row.</param>
    /// <param name="sentence">What is wrong, what would be right.</param>
    public void Fault(string column, string sentence)
    {
        IsFaulty = true;
        faults.Add(file, line, column, sentence);
    }

    /// <summary>Tells a fault of this row, where there is one.</summary>
    /// <param name="fault">The fault, null for none.</param>
    public void Fault(FieldFault? fault)
    {
        if (fault is not null)
        {
            Fault(fault.Field, fault.Sentence);
        }
    }

    /// <summary>Whether a file has a column of a name.</summary>
    /// <param name="column">The name.</param>
    /// <returns>True where this file has it.</returns>
    public bool HasColumn(string column) => header.ContainsKey(column);

    /// <summary>Whether a cell has something in it.</summary>
    /// <param name="column">The column.</param>
    /// <returns>True where it is not empty.</returns>
    public bool Has(string column) => Raw(column).Length > 0;

    /// <summary>A described thing; what is faulty in it is as in the blank one.</summary>
    /// <typeparam name="T">The thing.</typeparam>
    /// <param name="fields">Its fields.</param>
    /// <returns>The thing; not to be used where the row is faulty.</returns>
    public T Read<T>(FieldTable<T> fields) =>
        fields.Read(
            fields.Blank,
            field => field.IsText ? Unescaped(field.Name) : Raw(field.Name),
            new(null, today),
            Fault
        );

    /// <summary>The rank among the rows of all files of things that happened.</summary>
    /// <returns>The rank; null where empty or faulty.</returns>
    public int? Rank()
    {
        int? rank = null;
        if (Raw(SetFile.EntryColumn) is { Length: > 0 } raw && Ranks.Read(raw, new(null, today), out rank) is { } fault)
        {
            Fault(SetFile.EntryColumn, fault);
            return null;
        }

        return rank;
    }

    /// <summary>What a cell says, whether or not it may: to know what a faulty row speaks of.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The text, empty for nothing.</returns>
    public string Peek(string column) =>
        Unescaped(column) is { Length: <= FreeText.MostCharacters } text ? NormalFormC.Of(text) : "";

    private string Unescaped(string column) => Raw(column) is var raw && raw.StartsWith('\'') ? raw[1..] : raw;

    private string Raw(string column) => header.TryGetValue(column, out int i) ? cells[i] : "";
}
