using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Storage.Csv.Written;

namespace ToolWear.Storage.Csv;

/// <summary>The whole shop as a set of CSV files: its present meaning, for spreadsheets and for another store.</summary>
/// <remarks>
/// Export, import into an empty store, export gives the same bytes. Crossed-out entries are not carried, nor are heads by
/// stage, for which the set has no column: a session keeps the heads that it finished.
/// </remarks>
public static class CsvSet
{
    /// <summary>The name of the table of tools in use.</summary>
    public static string ToolsInUse => CsvFiles.InUse.Name;

    /// <summary>The names of the files that an export writes where they have rows.</summary>
    public static ImmutableArray<string> FileNames { get; } =
    [.. CsvFiles.All.Select(file => file.Name).Where(name => name != ToolsInUse)];

    /// <summary>Writes a shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The files that have rows, and shop.csv and tools.csv always.</returns>
    public static IReadOnlyList<CsvFile> Export(Shop shop) =>
        [
            .. Tables(shop)
                .Where(table =>
                    table.Rows.Count > 0 || CsvFiles.All.Any(file => file.Name == table.Name && file.IsAlwaysWritten)
                )
                .Select(table => new CsvFile(table.Name, CsvTable.ToBytes(table.Columns, table.Rows))),
        ];

    /// <summary>What stands in each file, whether or not it has rows.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>Name, columns and rows of the files in their order.</returns>
    public static IEnumerable<(
        string Name,
        IReadOnlyList<string> Columns,
        IReadOnlyList<IReadOnlyList<CsvCell>> Rows
    )> Tables(Shop shop)
    {
        ShopToWrite ready = new(shop);
        foreach (SetFile file in CsvFiles.All.Where(file => file != CsvFiles.InUse))
        {
            yield return (file.Name, [.. file.Columns.Select(column => column.Name)], [.. file.Rows(ready)]);
        }
    }

    /// <summary>Reads a set of files, all or nothing.</summary>
    /// <param name="files">The files; those whose name does not end in .csv are passed over.</param>
    /// <param name="today">The shop's day: nothing may have happened after it.</param>
    /// <returns>The entries for an empty store, or the faults.</returns>
    public static CsvImported Import(IEnumerable<CsvFile> files, DateOnly today)
    {
        CsvFaults faults = new();
        ShopRead read = new();
        List<CsvFile> tables = [.. files.Where(file => file.Name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))];
        RefuseUnknown(tables, faults);
        foreach (SetFile file in CsvFiles.All)
        {
            foreach (CsvFile table in tables.Where(table => table.Name == file.Name))
            {
                ReadFile(file, table, read, today, faults);
            }
        }

        return Tried(read, today, faults);
    }

    private static void RefuseUnknown(List<CsvFile> tables, CsvFaults faults)
    {
        string known = string.Join(", ", CsvFiles.All.Select(file => file.Name));
        foreach (CsvFile table in tables.Where(table => !CsvFiles.All.Any(file => file.Name == table.Name)))
        {
            faults.Add(table.Name, 1, "", $"no file of this name belongs to the set; there are {known}");
        }

        if (tables.Count == 0)
        {
            faults.Add("tools.csv", 1, "", $"there is no file of the set here; it is made of {known}");
        }
    }

    private static void ReadFile(SetFile file, CsvFile table, ShopRead read, DateOnly today, CsvFaults faults)
    {
        CsvSheet sheet = CsvSheet.Read(table, file.Columns, today, faults);
        if (!sheet.IsWhole)
        {
            read.Broken.Add(file.Name);
        }

        foreach (CsvRow row in sheet.Rows)
        {
            file.Read(row, read);
        }
    }

    private static CsvImported Tried(ShopRead read, DateOnly today, CsvFaults faults)
    {
        ImmutableArray<LedgerEntry> entries = new Trial(read, today).Run();
        return new(faults.Count == 0 ? entries : [], faults.Shown, faults.More);
    }
}
