using System.Globalization;
using System.Text;
using ToolWear.Core.Fields;
using ToolWear.Core.Measure;

namespace ToolWear.Storage.Csv;

/// <summary>One cell as it is written: text that no spreadsheet takes for a formula, or a number in full precision.</summary>
/// <remarks>The default is the empty cell, which means not known.</remarks>
public readonly record struct CsvCell
{
    private readonly string? said;
    private readonly bool isText;

    private CsvCell(string? said, bool isNumber = false, bool isText = false) =>
        (this.said, IsNumber, this.isText) = (said, isNumber, isText);

    /// <summary>Whether it is a bare number, with a point.</summary>
    public bool IsNumber { get; }

    /// <summary>What it says; empty for not known.</summary>
    public string Said => said ?? "";

    /// <summary>What stands in the cell, before quoting.</summary>
    public string Content =>
        isText && Said is ['=' or '+' or '-' or '@' or '\t' or '\r' or '\'', ..] ? "'" + Said : Said;

    /// <summary>The cells of a described thing.</summary>
    /// <typeparam name="T">The thing.</typeparam>
    /// <param name="fields">Its fields.</param>
    /// <param name="thing">The thing.</param>
    /// <param name="first">Cells before those of the fields.</param>
    /// <returns>A cell for each field.</returns>
    internal static IReadOnlyList<CsvCell> Row<T>(FieldTable<T> fields, T thing, params ReadOnlySpan<CsvCell> first)
    {
        CsvCell[] cells = new CsvCell[first.Length + fields.All.Length];
        first.CopyTo(cells);
        for (int i = 0; i < fields.All.Length; i++)
        {
            string text = fields.All[i].Write(thing);
            cells[first.Length + i] = fields.All[i].IsText ? Text(text) : new(text, fields.All[i].IsNumber);
        }

        return cells;
    }

    /// <summary>A text in normal form C; one that starts with = + - @ TAB CR or ' gets one ' in front.</summary>
    /// <param name="text">The text, null for not known.</param>
    /// <returns>The cell.</returns>
    public static CsvCell Text(string? text) =>
        string.IsNullOrEmpty(text) ? default : new(NormalFormC.Of(Writable(text)), isText: true);

    /// <summary>A number, the shortest text that reads back as the same double.</summary>
    /// <param name="number">A finite number, null for not known.</param>
    /// <returns>The cell.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite: what is not known is null.</exception>
    public static CsvCell Number(double? number) =>
        number is { } value && !double.IsFinite(value)
            ? throw new ArgumentOutOfRangeException(nameof(number), number, "Not a finite number.")
            : new(number?.ToString("R", CultureInfo.InvariantCulture), isNumber: true);

    /// <summary>A whole number.</summary>
    /// <param name="count">The number, null for not known.</param>
    /// <returns>The cell.</returns>
    public static CsvCell Count(long? count) => new(count?.ToString(CultureInfo.InvariantCulture), isNumber: true);

    /// <summary>The text as a file can hold it: what no reading would take back becomes the replacement character.</summary>
    private static string Writable(string text)
    {
        if (!text.Contains('\0') && !text.AsSpan().ContainsAnyInRange('\uD800', '\uDFFF'))
        {
            return text;
        }

        StringBuilder written = new(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            written.Append(rune.Value == 0 ? Rune.ReplacementChar : rune);
        }

        return written.ToString();
    }
}
