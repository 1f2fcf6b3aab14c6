using ToolWear.Core.Ledger;

namespace ToolWear.Storage.Csv.Files;

/// <summary>reworks.csv: what was done to tools.</summary>
internal sealed class ReworksFile()
    : EventFile("reworks.csv", "tool! on! what! gauge before_mm after_mm hours cost note")
{
    /// <inheritdoc />
    protected override IReadOnlyList<CsvCell>? Cells(LedgerEntry what, ShopToWrite shop) =>
        what is not ToolReworked e
            ? null
            :
            [
                CsvCell.Text(e.Tool.Text),
                CsvCell.Day(e.On),
                CsvCell.Word(ToolReworked.WhatWords, (Rework?)e.What),
                CsvCell.Text(e.Gauge),
                CsvCell.Mm(e.Before),
                CsvCell.Mm(e.After),
                CsvCell.Amount(e.Hours),
                CsvCell.Amount(e.Cost),
                CsvCell.Text(e.Note),
            ];

    /// <inheritdoc />
    protected override LedgerEntry Entry(CsvRow row, ShopRead shop)
    {
        ToolReworked entry = new(
            row.NeedMark("tool"),
            row.NeedPastDay("on"),
            row.NeedWord("what", ToolReworked.WhatWords),
            row.Name("gauge"),
            row.Size("before_mm"),
            row.Size("after_mm"),
            row.Amount("hours"),
            row.Amount("cost"),
            row.Note("note")
        );
        shop.NeedGauge(row, shop.Tool(row, "tool", entry.Tool), entry.Gauge);
        return entry;
    }
}
