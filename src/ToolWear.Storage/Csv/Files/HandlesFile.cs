using ToolWear.Core.Ledger;

namespace ToolWear.Storage.Csv.Files;

/// <summary>handles.csv: the handles that go into the eyes.</summary>
internal sealed class HandlesFile()
    : SetFile("handles.csv", "handle! length_mm! width_mm! taper seat_tolerance_mm note")
{
    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop) =>
        shop.Shop.Handles.Values.Select(e =>
            (CsvCell[])
                [
                    CsvCell.Text(e.Name),
                    CsvCell.Mm(e.Length),
                    CsvCell.Mm(e.Width),
                    CsvCell.Number(e.Taper),
                    CsvCell.Mm(e.SeatTolerance),
                    CsvCell.Text(e.Note),
                ]
        );

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop)
    {
        HandleDescribed entry = new(
            row.NeedName("handle"),
            row.NeedSize("length_mm"),
            row.NeedSize("width_mm"),
            row.Number("taper"),
            row.Size("seat_tolerance_mm"),
            row.Note("note")
        );
        shop.Once(row, "handle", entry.Name);
        if (!row.IsFaulty)
        {
            shop.Descriptions.Add(new(row, "handle", entry));
        }
    }
}
