using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Deeds.Bringing;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Storage.Csv;
using ToolWear.Storage.HandMade;

namespace ToolWear.Results.Looks;

/// <summary>A table that someone brings, read and tried on the shop.</summary>
/// <param name="Name">The file's name.</param>
/// <param name="Kind">What it tells of; empty where it could not be read.</param>
/// <param name="Understood">How it was read.</param>
/// <param name="What">What it comes to; null where it could not be read.</param>
/// <param name="Doubts">What was passed over or taken in one of two ways.</param>
/// <param name="Faults">What is wrong; nothing comes in where there is any.</param>
internal sealed record BroughtFile(
    string Name,
    string Kind,
    string Understood,
    Brought? What,
    ImmutableArray<RowRemark> Doubts,
    ImmutableArray<RowRemark> Faults
)
{
    /// <summary>How many faults are told.</summary>
    public const int MostFaults = 20;

    /// <summary>Reads a file and tries it.</summary>
    public static BroughtFile Of(CsvFile file, Shop shop, LengthUnit units, DateOnly today, BringingWishes wishes)
    {
        HandMadeTable read = HandMadeTable.Read(file);
        Brought? what = read.Table is { } table ? Tables.Read(table, shop, units, today, wishes) : null;
        return new(
            file.Name,
            what?.Kind ?? "",
            string.Join(", ", new[] { read.Understood, what?.Understood ?? "" }.Where(text => text.Length > 0)),
            what,
            [.. read.Remarks, .. what?.Doubts ?? []],
            [.. read.Faults.Concat(what?.Faults ?? []).OrderBy(fault => fault.Line)]
        );
    }

    /// <summary>The first faults as they are told of files.</summary>
    public ImmutableArray<CsvFault> ToldFaults =>
        [.. Faults.Take(MostFaults).Select(fault => new CsvFault(Name, fault.Line, fault.Column, fault.Sentence))];

    /// <summary>How many more there are.</summary>
    public int MoreFaults => Math.Max(0, Faults.Length - MostFaults);
}

/// <summary>What a table that someone brings comes to.</summary>
internal static class BroughtTable
{
    /// <summary>The rows that can come in, under the columns that were understood.</summary>
    public static Table Rows(BroughtFile file, LengthUnit units = LengthUnit.Mm)
    {
        ImmutableArray<BroughtColumn> columns = file.What?.Columns ?? [];
        return new(
            [.. columns.Select(column => new Column(column.Name, Heading(column, units)))],
            [
                .. (file.What?.Rows ?? []).Select(row =>
                    (ImmutableArray<Cell>)[.. columns.Select((column, i) => CellOf(row, column, i))]
                ),
            ]
        );
    }

    private static string Heading(BroughtColumn column, LengthUnit units) =>
        column.Name.Replace("_mm", units == LengthUnit.Mm ? " mm" : "", StringComparison.Ordinal).Replace('_', ' ');

    private static Cell CellOf(BroughtRow row, BroughtColumn column, int i) =>
        column.IsNumber && double.TryParse(row.Written[i], CultureInfo.InvariantCulture, out double number)
            ? Cell.Of(number, _ => row.Shown[i])
            : Cell.Of(row.Written[i], row.Shown[i].ReplaceLineEndings(" "), "");
}
