using ToolWear.Core.Ledger;

namespace ToolWear.Storage.Csv.Files;

/// <summary>scrapped.csv: how tools ended.</summary>
internal sealed class ScrappedFile() : EventFile("scrapped.csv", "tool! on! cause! into note")
{
    /// <inheritdoc />
    protected override IReadOnlyList<CsvCell>? Cells(LedgerEntry what, ShopToWrite shop) =>
        what is not ToolScrapped e
            ? null
            :
            [
                CsvCell.Text(e.Tool.Text),
                CsvCell.Day(e.On),
                CsvCell.Word(ToolScrapped.CauseWords, (ScrapCause?)e.Cause),
                CsvCell.Text(e.Into?.Text),
                CsvCell.Text(e.Note),
            ];

    /// <inheritdoc />
    protected override LedgerEntry Entry(CsvRow row, ShopRead shop)
    {
        ToolScrapped entry = new(
            row.NeedMark("tool"),
            row.NeedPastDay("on"),
            row.NeedWord("cause", ToolScrapped.CauseWords),
            row.Mark("into"),
            row.Note("note")
        );
        shop.Tool(row, "tool", entry.Tool);
        if (entry.Into is { } into)
        {
            shop.Tool(row, "into", into);
        }

        return entry;
    }

    /// <inheritdoc />
    protected override void Doubt(CsvRow row, ShopRead shop) => shop.Doubt("tool", row.Peek("tool"));
}
