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
