using ToolWear.Core.Ledger;
using ToolWear.Core.Sections;

namespace ToolWear.Storage.Csv.Files;

/// <summary>bars.csv: the stock rack.</summary>
internal sealed class BarsFile() : SetFile("bars.csv", "bar! steel! section! a_mm! b_mm length_mm lot price_a_kg")
{
    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop) =>
        shop.Shop.Bars.Values.Select(e =>
            (CsvCell[])
                [
                    CsvCell.Text(e.Bar),
                    CsvCell.Text(e.Steel),
                    CsvCell.Word(SectionKinds.Words, (SectionKind?)e.Section),
                    CsvCell.Mm(e.A),
                    CsvCell.Mm(e.B),
                    CsvCell.Mm(e.Length),
                    CsvCell.Text(e.Lot),
                    CsvCell.Amount(e.PriceAKg),
                ]
        );

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop)
    {
        BarDescribed entry = new(
            row.NeedName("bar"),
            row.NeedText("steel"),
            row.NeedWord("section", SectionKinds.Words),
            row.NeedSize("a_mm"),
            row.Size("b_mm"),
            row.Size("length_mm"),
            row.Text("lot"),
            row.Amount("price_a_kg")
        );
        shop.Once(row, "bar", entry.Bar);
        if (!row.IsFaulty)
        {
            shop.Descriptions.Add(new(row, "bar", entry));
        }
    }
}
