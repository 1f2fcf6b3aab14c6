using ToolWear.Core.Ledger;

namespace ToolWear.Storage.Csv.Files;

/// <summary>findings.csv: what was found when tools were looked over.</summary>
internal sealed class FindingsFile() : EventFile("findings.csv", "tool! on! finding! by note")
{
    /// <inheritdoc />
    protected override IReadOnlyList<CsvCell>? Cells(LedgerEntry what, ShopToWrite shop) =>
        what is not ToolLookedOver e
            ? null
            :
            [
                CsvCell.Text(e.Tool.Text),
                CsvCell.Day(e.On),
                CsvCell.Word(ToolLookedOver.FindingWords, (Finding?)e.Finding),
                CsvCell.Text(e.By),
                CsvCell.Text(e.Note),
            ];

    /// <inheritdoc />
    protected override LedgerEntry Entry(CsvRow row, ShopRead shop)
    {
        ToolLookedOver entry = new(
            row.NeedMark("tool"),
            row.NeedPastDay("on"),
            row.NeedWord("finding", ToolLookedOver.FindingWords),
            row.Text("by"),
            row.Note("note")
        );
        shop.Tool(row, "tool", entry.Tool);
        return entry;
    }
}
