using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Files;

/// <summary>stock-takes.csv: tools looked for, and whether they were there.</summary>
internal sealed class StockTakesFile() : EventFile("stock-takes.csv", "tool! on! seen! by")
{
    /// <inheritdoc />
    protected override IReadOnlyList<CsvCell>? Cells(LedgerEntry what, ShopToWrite shop) =>
        what is ToolLookedFor e
            ? [CsvCell.Text(e.Tool.Text), CsvCell.Day(e.On), CsvCell.YesNo(e.Seen), CsvCell.Text(e.By)]
            : null;

    /// <inheritdoc />
    protected override LedgerEntry Entry(CsvRow row, ShopRead shop)
    {
        ToolMark tool = row.NeedMark("tool");
        DateOnly on = row.NeedPastDay("on");
        bool? seen = row.YesNo("seen");
        if (seen is null && row.Peek("seen").Length == 0)
        {
            row.Fault("seen", "yes or no is wanted: whether the tool was there");
        }

        ToolLookedFor entry = new(tool, on, seen ?? false, row.Text("by"));
        shop.Tool(row, "tool", tool);
        return entry;
    }
}
