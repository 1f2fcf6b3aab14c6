using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using ToolWear.Storage.Csv;

namespace ToolWear.Tables;

/// <summary>Rows that come out as text for people, as CSV or as JSON, all from the same cells.</summary>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The rows, a cell for each column.</param>
public sealed record Table(ImmutableArray<Column> Columns, ImmutableArray<ImmutableArray<Cell>> Rows)
{
    /// <summary>The names of the columns in files, in their order; where empty, the order of the columns.</summary>
    public ImmutableArray<string> FileOrder { get; init; } = [];

    /// <summary>Which column has a name in files.</summary>
    /// <param name="name">The name.</param>
    /// <returns>From 0.</returns>
    /// <exception cref="ArgumentException">There is no such column.</exception>
    public int IndexOf(string name) => Index(column => column.Name == name, name);

    /// <summary>Which column has a heading for people.</summary>
    /// <param name="heading">The heading.</param>
    /// <returns>From 0; the first where several have it.</returns>
    /// <exception cref="ArgumentException">There is no such column.</exception>
    public int IndexOfHeading(string heading) => Index(column => column.Heading == heading, heading);

    /// <summary>The table as lines of text: numbers to the right, headings over them.</summary>
    /// <returns>Lines, each with its line end; none where no column is for people.</returns>
    public string ToText() => ToText(int.MaxValue);

    /// <summary>The table as people read it in so many columns: names that are too long are cut, figures never.</summary>
    /// <param name="width">Columns; the table may still be wider where its figures need them.</param>
    /// <returns>Lines with their ends, headings first.</returns>
    public string ToText(int width)
    {
        int[] shown = [.. Enumerable.Range(0, Columns.Length).Where(i => Columns[i].Heading is not null)];
        int[] widths =
        [
            .. shown.Select(i => Rows.Select(row => Width(row[i].Shown)).Append(Width(Columns[i].Heading!)).Max()),
        ];
        bool[] toTheRight = [.. shown.Select(i => Rows.Any(row => row[i].IsNumber))];
        Narrow(widths, toTheRight, [.. shown.Select(i => Width(Columns[i].Heading!))], width);
        StringBuilder text = new();
        AppendLine(text, [.. shown.Select(i => Columns[i].Heading!)], widths, toTheRight);
        foreach (ImmutableArray<Cell> row in Rows)
        {
            AppendLine(text, [.. shown.Select(i => row[i].Shown)], widths, toTheRight);
        }

        return text.ToString();
    }

    /// <summary>The table as CSV with its header, RFC 4180.</summary>
    /// <returns>The whole file.</returns>
    public string ToCsv() =>
        CsvTable.ToText(
            InFiles().Select(column => column.Name),
            Rows.Select(row => (IReadOnlyList<CsvCell>)[.. InFiles().Select(column => ToCsvCell(row[column.Index]))])
        );

    /// <summary>The table as a JSON array of objects; null for what is not known.</summary>
    /// <returns>Indented JSON with a line end.</returns>
    public string ToJson() => JsonText.Of(Write);

    /// <summary>The table as JSON lines: an object a row, each on a line of its own.</summary>
    /// <returns>The whole file; empty where there is no row.</returns>
    public string ToJsonLines() => string.Concat(Rows.Select(row => JsonText.Line(json => Write(json, row))));

    /// <summary>Writes the table as a JSON array.</summary>
    /// <param name="json">Where to.</param>
    public void Write(Utf8JsonWriter json)
    {
        json.WriteStartArray();
        foreach (ImmutableArray<Cell> row in Rows)
        {
            Write(json, row);
        }

        json.WriteEndArray();
    }

    private void Write(Utf8JsonWriter json, ImmutableArray<Cell> row)
    {
        json.WriteStartObject();
        foreach ((string name, int index) in InFiles())
        {
            JsonText.Write(json, name, row[index]);
        }

        json.WriteEndObject();
    }

    private int Index(Func<Column, bool> isIt, string name)
    {
        for (int i = 0; i < Columns.Length; i++)
        {
            if (isIt(Columns[i]))
            {
                return i;
            }
        }

        throw new ArgumentException($"There is no column {name}.", nameof(name));
    }

    private IEnumerable<(string Name, int Index)> InFiles()
    {
        IEnumerable<(string Name, int Index)> named = Columns
            .Select((column, index) => (column.Name, index))
            .Where(each => each.Name is not null)
            .Select(each => (each.Name!, each.index));
        return FileOrder.IsEmpty ? named : named.OrderBy(each => FileOrder.IndexOf(each.Name));
    }

    private static CsvCell ToCsvCell(Cell cell) =>
        cell.Number is { } number ? CsvCell.Number(number) : CsvCell.Text(cell.Text);

    // the widest column of words gives way, a column at a time
    private static void Narrow(int[] widths, bool[] toTheRight, int[] headings, int width)
    {
        const int least = 6;
        const int between = 2;
        int over = widths.Sum() + (between * (widths.Length - 1)) - width;
        for (; over > 0; over--)
        {
            int[] givingWay =
            [
                .. Enumerable
                    .Range(0, widths.Length)
                    .Where(i => !toTheRight[i] && widths[i] > Math.Max(least, headings[i])),
            ];
            if (givingWay.Length == 0)
            {
                return;
            }

            widths[givingWay.MaxBy(i => widths[i])]--;
        }
    }

    private static void AppendLine(StringBuilder text, string[] cells, int[] widths, bool[] toTheRight)
    {
        StringBuilder line = new();
        for (int i = 0; i < cells.Length; i++)
        {
            string cell = Shortened.In(cells[i], widths[i]);
            string space = new(' ', widths[i] - Width(cell));
            line.Append(i == 0 ? "" : "  ").Append(toTheRight[i] ? space + cell : cell + space);
        }

        text.AppendLine(line.ToString().TrimEnd());
    }

    private static int Width(string text) => text.EnumerateRunes().Count();
}
