using ToolWear.Results;
using ToolWear.Storage.Csv;

namespace ToolWear.Pens;

/// <summary>Draws results as CSV, RFC 4180.</summary>
internal static class CsvPen
{
    /// <summary>The whole file with its header.</summary>
    public static string ToCsv(this Table table, bool hasSemicolons = false)
    {
        (string Name, int Index)[] files = [.. table.InFiles];
        return CsvTable.ToText(
            files.Select(column => column.Name),
            table.Rows.Select(row => (IReadOnlyList<CsvCell>)[.. files.Select(column => ToCsvCell(row[column.Index]))]),
            hasSemicolons
        );
    }

    private static CsvCell ToCsvCell(Cell cell) =>
        cell.Number is { } number ? CsvCell.Number(number) : CsvCell.Text(cell.Text);
}
