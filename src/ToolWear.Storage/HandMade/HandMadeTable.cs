using System.Collections.Immutable;
using System.Text;
using System.Text.Unicode;
using CsvHelper;
using ToolWear.Core.Deeds.Bringing;
using ToolWear.Storage.Csv;

namespace ToolWear.Storage.HandMade;

/// <summary>A table as a spreadsheet or a person saved it: separator, encoding and line ends are found out.</summary>
/// <param name="Table">The table; null where the bytes are none.</param>
/// <param name="Understood">How it was read: "semicolons, Windows-1252, CR LF".</param>
/// <param name="Remarks">What was passed over.</param>
/// <param name="Faults">What is wrong with the rows or with the file as a whole.</param>
public sealed record HandMadeTable(
    SaidTable? Table,
    string Understood,
    ImmutableArray<RowRemark> Remarks,
    ImmutableArray<RowRemark> Faults
)
{
    private const int MostColumns = 200;
    private const string Empty = "the file is empty; a table has headings and rows below them";

    /// <summary>Reads a file.</summary>
    /// <param name="file">The file.</param>
    /// <returns>The table.</returns>
    public static HandMadeTable Read(CsvFile file)
    {
        ReadOnlySpan<byte> bytes = file.Bytes.Span;
        if (bytes.StartsWith("PK\u0003\u0004"u8))
        {
            return Not("this is a spreadsheet's own file (xlsx, ods); open it there and save it as CSV");
        }

        (Encoding encoding, string name) = EncodingOf(bytes);
        string text = encoding.GetString(bytes).TrimStart('\uFEFF');
        return text.Contains('\0', StringComparison.Ordinal)
                ? Not("holds a NUL, so this is no text; save the table as CSV")
            : string.IsNullOrWhiteSpace(text) ? Not(Empty)
            : Read(text, name);
    }

    private static HandMadeTable Not(string fault) => new(null, "", [], [new(1, "", fault)]);

    /// <summary>A byte order mark says it; else UTF-16 shows by its zeros, and what is no UTF-8 is taken for Windows-1252.</summary>
    private static (Encoding Encoding, string Name) EncodingOf(ReadOnlySpan<byte> bytes)
    {
        int least = bytes.Length / 4;
        return bytes switch
        {
            [0xFF, 0xFE, ..] => (Encoding.Unicode, "UTF-16"),
            [0xFE, 0xFF, ..] => (Encoding.BigEndianUnicode, "UTF-16"),
            [not 0, 0, ..] when bytes.Count((byte)0) >= least => (Encoding.Unicode, "UTF-16"),
            [0, not 0, ..] when bytes.Count((byte)0) >= least => (Encoding.BigEndianUnicode, "UTF-16"),
            _ when Utf8.IsValid(bytes) => (Encoding.UTF8, "UTF-8"),
            _ => (CodePagesEncodingProvider.Instance.GetEncoding(1252)!, "Windows-1252"),
        };
    }

    private static HandMadeTable Read(string text, string encoding)
    {
        List<RowRemark> faults = [];
        CsvReaderOptions options = new()
        {
            HasHeader = false,
            TrackLineNumbers = true,
            MalformedData = CsvMalformedDataHandling.Recover,
            // a stray quote is an inch mark
            OnMalformedRecord = record =>
            {
                if (record.Reason != CsvMalformedReason.StrayQuote)
                {
                    faults.Add(
                        new(
                            record.LineNumber,
                            "",
                            "the quotes of this row do not match; double each quote inside a quoted cell"
                        )
                    );
                }
            },
        };
        List<SaidRow> rows = [];
        using CsvReader reader = CsvReader.Create(Encoding.UTF8.GetBytes(text).AsMemory(), options);
        while (reader.Read())
        {
            rows.Add(new(reader.LineNumber, [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)]));
        }

        string separator = reader.Separator switch
        {
            ';' => "semicolons",
            '\t' => "tabs",
            '|' => "bars |",
            _ => "commas",
        };
        string ends =
            text.Contains("\r\n", StringComparison.Ordinal) ? ", CR LF"
            : text.Contains('\n', StringComparison.Ordinal) ? ", LF"
            : text.Contains('\r', StringComparison.Ordinal) ? ", CR"
            : "";
        return Made(rows, $"{separator}, {encoding}{ends}", faults);
    }

    /// <summary>The first row of two cells or more holds the headings; what begins with "# " explains, "example 1" shows how.</summary>
    private static HandMadeTable Made(List<SaidRow> all, string understood, List<RowRemark> faults)
    {
        List<SaidRow> rows =
        [
            .. all.Where(row => First(row).Length > 0 && !First(row).StartsWith("# ", StringComparison.Ordinal)),
        ];
        if (rows.Count == 0)
        {
            return Not(Empty);
        }

        int above = Math.Max(0, rows.FindIndex(row => row.Cells.Count(cell => !string.IsNullOrWhiteSpace(cell)) > 1));
        SaidRow headings = rows[above];
        List<RowRemark> remarks =
        [
            .. rows.Take(above).Select(row => new RowRemark(row.Line, "", "above the headings; left out")),
        ];
        rows.RemoveRange(0, above + 1);
        if (rows.RemoveAll(row => row.Cells.Any(IsExample)) is > 0 and int examples)
        {
            remarks.Add(new(headings.Line, "", $"{examples} example rows of the template left out"));
        }

        if (rows.Count == 0)
        {
            faults.Add(new(headings.Line, "", "there is no row below the headings; fill in one a line"));
        }

        return headings.Cells.Length > MostColumns
            ? Not($"{headings.Cells.Length} columns; a table has at most {MostColumns}")
            : new(new(headings.Line, headings.Cells, [.. rows]), understood, [.. remarks], [.. faults]);
    }

    private static bool IsExample(string cell) => cell.Trim().ToUpperInvariant() is "EXAMPLE 1" or "EXAMPLE 2";

    private static string First(SaidRow row) =>
        row.Cells.FirstOrDefault(cell => !string.IsNullOrWhiteSpace(cell), "").Trim();
}
