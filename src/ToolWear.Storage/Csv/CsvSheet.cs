using System.Collections.Immutable;
using CsvHelper;
using ToolWear.Core.Measure;

namespace ToolWear.Storage.Csv;

/// <summary>A CSV file read as a table: its rows under known columns, what is wrong with it told to the faults.</summary>
internal sealed class CsvSheet
{
    private const int MostBytesInRecord = 64 * 1024;

    private readonly ImmutableArray<CsvColumn> columns;
    private readonly CsvFaults faults;
    private readonly DateOnly today;
    private readonly List<CsvRow> rows = [];
    private Dictionary<string, int>? header;
    private int width;

    private CsvSheet(string name, ImmutableArray<CsvColumn> columns, DateOnly today, CsvFaults faults)
    {
        Name = name;
        this.columns = columns;
        this.today = today;
        this.faults = faults;
    }

    /// <summary>The file's name.</summary>
    public string Name { get; }

    /// <summary>The rows that could be cut into cells, in order.</summary>
    public IReadOnlyList<CsvRow> Rows => rows;

    /// <summary>Whether every row of the file is among the rows.</summary>
    public bool IsWhole { get; private set; } = true;

    /// <summary>Reads a file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="columns">The columns it may have.</param>
    /// <param name="today">The shop's day.</param>
    /// <param name="faults">Where faults go.</param>
    /// <returns>The table, empty where the file is no table of these columns.</returns>
    public static CsvSheet Read(CsvFile file, ImmutableArray<CsvColumn> columns, DateOnly today, CsvFaults faults)
    {
        CsvSheet sheet = new(file.Name, columns, today, faults);
        ReadOnlyMemory<byte> text = CsvText.WithoutMark(file.Bytes);
        if (CsvText.Fault(text.Span, out long line) is { } fault)
        {
            sheet.Refuse(line, "", fault);
            return sheet;
        }

        sheet.ReadRecords(text);
        return sheet;
    }

    private void ReadRecords(ReadOnlyMemory<byte> text)
    {
        CsvReaderOptions options = new()
        {
            Separator = ',',
            HasHeader = false,
            TrackLineNumbers = true,
            MalformedData = CsvMalformedDataHandling.Skip,
            OnMalformedRecord = record => Refuse(record.LineNumber, "", Sentence(record.Reason)),
        };
        using CsvReader reader = CsvReader.Create(text, options);
        while (reader.Read())
        {
            string[] cells = Cells(reader, out int bytes);
            if (bytes > MostBytesInRecord)
            {
                Refuse(reader.LineNumber, "", $"a row of {bytes} bytes; at most {MostBytesInRecord} belong to one row");
            }
            else if (header is not null)
            {
                AddRow(reader.LineNumber, cells);
            }
            else if (!TakeHeader(reader.LineNumber, cells))
            {
                return;
            }
        }
    }

    private static string[] Cells(CsvReader reader, out int bytes)
    {
        string[] cells = new string[reader.FieldCount];
        bytes = cells.Length - 1;
        for (int i = 0; i < cells.Length; i++)
        {
            bytes += reader.GetRawSpan(i).Length;
            cells[i] = reader.GetString(i);
        }

        return cells;
    }

    private static string Sentence(CsvMalformedReason reason) =>
        reason switch
        {
            CsvMalformedReason.StrayQuote =>
                "a quote inside a cell that is not quoted; quote the whole cell and double the quotes in it",
            CsvMalformedReason.TextAfterClosingQuote =>
                "text after the closing quote of a cell; double the quotes inside it",
            CsvMalformedReason.UnterminatedQuote => "a quoted cell that begins in this row is never closed",
            _ => "the quotes of this row do not match",
        };

    private bool TakeHeader(long line, string[] names)
    {
        int before = faults.Count;
        Dictionary<string, int> taken = new(StringComparer.Ordinal);
        string known = string.Join(", ", columns.Select(column => column.Name));
        if (names.Length == 1 && names[0].AsSpan().IndexOfAny(';', '\t') >= 0)
        {
            Refuse(line, "", "the columns are not parted by commas; part them by commas");
            return false;
        }

        for (int i = 0; i < names.Length; i++)
        {
            if (!columns.Any(column => column.Name == names[i]))
            {
                Refuse(line, FreeText.Shown(names[i]), $"unknown column; there are {known}");
            }
            else if (!taken.TryAdd(names[i], i))
            {
                Refuse(line, names[i], "the column stands here twice; once is right");
            }
        }

        foreach (CsvColumn column in columns.Where(column => column.IsRequired && !taken.ContainsKey(column.Name)))
        {
            Refuse(line, column.Name, "the column is missing and cannot be left out");
        }

        header = taken;
        width = names.Length;
        return faults.Count == before;
    }

    private void AddRow(long line, string[] cells)
    {
        if (cells.Length != width)
        {
            Refuse(
                line,
                "",
                $"{cells.Length} cells where the header has {width} columns; write one cell for each column"
            );
            return;
        }

        rows.Add(new CsvRow(Name, line, header!, cells, today, faults));
    }

    private void Refuse(long line, string column, string sentence)
    {
        IsWhole = false;
        faults.Add(Name, line, column, sentence);
    }
}
