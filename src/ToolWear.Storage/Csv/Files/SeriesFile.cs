using ToolWear.Core.Ledger;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Files;

/// <summary>series.csv: what the tools of one place in the series for an eye are made like.</summary>
internal sealed class SeriesFile()
    : SetFile(
        "series.csv",
        "eye! place! form! section! length_mm width_mm radius_mm taper_length taper_width guess_heats steel treated "
            + "ready_days note"
    )
{
    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop) =>
        shop.Shop.Series.Values.Select(s =>
            (CsvCell[])
                [
                    CsvCell.Text(s.Eye),
                    PlaceCell.Of(s.Place),
                    CsvCell.Text(s.Form.Name),
                    CsvCell.Word(SectionKinds.Words, (SectionKind?)s.Section),
                    CsvCell.Mm(s.Length),
                    CsvCell.Mm(s.Width),
                    CsvCell.Mm(s.Radius),
                    CsvCell.Number(s.TaperLength),
                    CsvCell.Number(s.TaperWidth),
                    CsvCell.Number(s.GuessHeats),
                    CsvCell.Text(s.Steel),
                    CsvCell.YesNo(s.Treated),
                    CsvCell.Count(s.ReadyDays),
                    CsvCell.Text(s.Note),
                ]
        );

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop)
    {
        Series series = new(
            row.NeedName("eye"),
            row.Place("place"),
            row.NeedForm("form"),
            row.NeedWord("section", SectionKinds.Words),
            row.Size("length_mm"),
            row.Size("width_mm"),
            row.Distance("radius_mm"),
            row.Number("taper_length"),
            row.Number("taper_width"),
            row.Number("guess_heats"),
            row.Text("steel"),
            row.YesNo("treated"),
            row.Count("ready_days"),
            row.Note("note")
        );
        shop.Once(row, "place", $"{series.Eye} {Places.Words.Word(series.Place)} {series.Form.Name}");
        if (!row.IsFaulty)
        {
            shop.Descriptions.Add(new(row, "eye", new SeriesDescribed(series)));
        }
    }
}
