using ToolWear.Core.Ledger;

namespace ToolWear.Storage.Csv.Files;

/// <summary>readings.csv: sizes of tools at their gauge marks, cold.</summary>
internal sealed class ReadingsFile()
    : EventFile("readings.csv", "tool! gauge! on! session size_mm! resolution_mm by note")
{
    /// <inheritdoc />
    protected override IReadOnlyList<CsvCell>? Cells(LedgerEntry what, ShopToWrite shop) =>
        what is not ToolMeasured e
            ? null
            :
            [
                CsvCell.Text(e.Tool.Text),
                CsvCell.Text(e.Gauge),
                CsvCell.Day(e.On),
                CsvCell.Text(e.Session),
                CsvCell.Mm(e.Size),
                CsvCell.Mm(e.Resolution),
                CsvCell.Text(e.By),
                CsvCell.Text(e.Note),
            ];

    /// <inheritdoc />
    protected override LedgerEntry Entry(CsvRow row, ShopRead shop)
    {
        ToolMeasured entry = new(
            row.NeedMark("tool"),
            row.NeedName("gauge"),
            row.NeedPastDay("on"),
            row.Name("session"),
            row.NeedSize("size_mm"),
            row.Size("resolution_mm"),
            row.Text("by"),
            row.Note("note")
        );
        shop.NeedSession(row, entry.Session);
        shop.NeedGauge(row, shop.Tool(row, "tool", entry.Tool), entry.Gauge);
        return entry;
    }
}
