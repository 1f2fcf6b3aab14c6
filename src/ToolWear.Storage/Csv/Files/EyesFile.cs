using ToolWear.Core.Ledger;
using ToolWear.Core.Sections;

namespace ToolWear.Storage.Csv.Files;

/// <summary>eyes.csv: the eyes that are made, in mm and mm per mm of depth.</summary>
internal sealed class EyesFile()
    : SetFile(
        "eyes.csv",
        "eye! section! length_mm! width_mm! nose_radius_mm depth_mm taper_length taper_width fit driven "
            + "least_length_mm greatest_length_mm least_width_mm greatest_width_mm handle"
    )
{
    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop) =>
        shop.Shop.Eyes.Values.Select(e =>
            (CsvCell[])
                [
                    CsvCell.Text(e.Name),
                    CsvCell.Word(SectionKinds.Words, (SectionKind?)e.Section),
                    CsvCell.Mm(e.Length),
                    CsvCell.Mm(e.Width),
                    CsvCell.Mm(e.NoseRadius),
                    CsvCell.Mm(e.Depth),
                    CsvCell.Number(e.TaperLength),
                    CsvCell.Number(e.TaperWidth),
                    CsvCell.Word(EyeDescribed.FitWords, e.Fit),
                    CsvCell.Word(EyeDescribed.DrivenWords, e.Driven),
                    CsvCell.Mm(e.LeastLength),
                    CsvCell.Mm(e.GreatestLength),
                    CsvCell.Mm(e.LeastWidth),
                    CsvCell.Mm(e.GreatestWidth),
                    CsvCell.Text(e.Handle),
                ]
        );

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop)
    {
        EyeDescribed entry = new(
            row.NeedName("eye"),
            row.NeedWord("section", SectionKinds.Words),
            row.NeedSize("length_mm"),
            row.NeedSize("width_mm"),
            row.Distance("nose_radius_mm"),
            row.Size("depth_mm"),
            row.Number("taper_length"),
            row.Number("taper_width"),
            row.Word("fit", EyeDescribed.FitWords),
            row.Word("driven", EyeDescribed.DrivenWords),
            row.Distance("least_length_mm"),
            row.Size("greatest_length_mm"),
            row.Distance("least_width_mm"),
            row.Size("greatest_width_mm"),
            row.Text("handle")
        );
        shop.Once(row, "eye", entry.Name);
        if (!row.IsFaulty)
        {
            shop.Descriptions.Add(new(row, "eye", entry));
        }
    }
}
