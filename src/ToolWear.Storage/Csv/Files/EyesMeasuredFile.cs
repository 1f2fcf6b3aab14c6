using ToolWear.Core.Ledger;

namespace ToolWear.Storage.Csv.Files;

/// <summary>eyes-measured.csv: finished eyes, measured cold.</summary>
internal sealed class EyesMeasuredFile()
    : EventFile("eyes-measured.csv", "eye! on! session tool where length_mm width_mm handle_fits")
{
    /// <inheritdoc />
    protected override IReadOnlyList<CsvCell>? Cells(LedgerEntry what, ShopToWrite shop) =>
        what is not EyeMeasured e
            ? null
            :
            [
                CsvCell.Text(e.Eye),
                CsvCell.Day(e.On),
                CsvCell.Text(e.Session),
                CsvCell.Text(e.Tool?.Text),
                CsvCell.Word(EyeMeasured.WhereWords, e.Where),
                CsvCell.Mm(e.Length),
                CsvCell.Mm(e.Width),
                CsvCell.Word(EyeMeasured.FitsWords, e.HandleFits),
            ];

    /// <inheritdoc />
    protected override LedgerEntry Entry(CsvRow row, ShopRead shop)
    {
        EyeMeasured entry = new(
            row.NeedText("eye"),
            row.NeedPastDay("on"),
            row.Name("session"),
            row.Mark("tool"),
            row.Word("where", EyeMeasured.WhereWords),
            row.Size("length_mm"),
            row.Size("width_mm"),
            row.Word("handle_fits", EyeMeasured.FitsWords)
        );
        shop.NeedSession(row, entry.Session);
        if (entry.Tool is { } tool)
        {
            shop.Tool(row, "tool", tool);
        }

        return entry;
    }
}
