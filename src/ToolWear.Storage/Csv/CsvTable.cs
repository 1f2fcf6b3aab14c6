using System.Text;
using CsvHelper;

namespace ToolWear.Storage.Csv;

/// <summary>Writes tables after RFC 4180: a header row, CR LF behind every row, quotes where they are needed, UTF-8.</summary>
public static class CsvTable
{
    /// <summary>Writes a table.</summary>
    /// <param name="header">The columns' names.</param>
    /// <param name="rows">The rows, each with as many cells as there are columns.</param>
    /// <param name="hasSemicolons">Semicolons between cells and commas in numbers, as spreadsheets of many countries want it.</param>
    /// <returns>The bytes of the file, without a byte order mark.</returns>
    /// <exception cref="InvalidOperationException">A row has more or fewer cells than the header.</exception>
    public static ReadOnlyMemory<byte> ToBytes(
        IEnumerable<string> header,
        IEnumerable<IReadOnlyList<CsvCell>> rows,
        bool hasSemicolons = false
    )
    {
        CsvWriterOptions options = CsvWriterOptions.Default with { Separator = hasSemicolons ? ';' : ',' };
        using MemoryStream stream = new();
        using (CsvWriter writer = CsvWriter.Create(stream, options, leaveOpen: true))
        {
            foreach (string name in header)
            {
                writer.WriteField(name);
            }

            writer.EndRecord();
            foreach (IReadOnlyList<CsvCell> row in rows)
            {
                for (int cell = 0; cell < row.Count; cell++)
                {
                    writer.WriteField(
                        hasSemicolons && row[cell].IsNumber ? row[cell].Said.Replace('.', ',') : row[cell].Content
                    );
                }

                writer.EndRecord();
            }

            writer.Flush();
        }

        return stream.ToArray();
    }

    /// <summary>Writes a table as text, for standard output.</summary>
    /// <param name="header">The columns' names.</param>
    /// <param name="rows">The rows, each with as many cells as there are columns.</param>
    /// <param name="hasSemicolons">As for <see cref="ToBytes"/>.</param>
    /// <returns>The text.</returns>
    /// <exception cref="InvalidOperationException">A row has more or fewer cells than the header.</exception>
    public static string ToText(
        IEnumerable<string> header,
        IEnumerable<IReadOnlyList<CsvCell>> rows,
        bool hasSemicolons = false
    ) => Encoding.UTF8.GetString(ToBytes(header, rows, hasSemicolons).Span);
}
