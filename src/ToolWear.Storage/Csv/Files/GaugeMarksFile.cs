using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Files;

/// <summary>gauge-marks.csv: where the tools are measured.</summary>
internal sealed class GaugeMarksFile()
    : SetFile(
        "gauge-marks.csv",
        "tool! gauge! wears! measures from_mark_mm start_mm least_mm greatest_mm resolution_mm"
    )
{
    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop) =>
        shop.Tools.SelectMany(tool =>
            tool.GaugeMarks.Select(gauge =>
                (CsvCell[])
                    [
                        CsvCell.Text(tool.Mark.Text),
                        CsvCell.Text(gauge.Name),
                        CsvCell.Word(GaugeMark.WearsWords, (Wears?)gauge.Wears),
                        CsvCell.Word(GaugeMark.MeasuresWords, gauge.Measures),
                        CsvCell.Mm(gauge.FromMark),
                        CsvCell.Mm(gauge.Start),
                        CsvCell.Mm(gauge.Least),
                        CsvCell.Mm(gauge.Greatest),
                        CsvCell.Mm(gauge.Resolution),
                    ]
            )
        );

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop)
    {
        ToolRead? tool = shop.Tool(row, "tool", row.NeedMark("tool"));
        GaugeMark gauge = new(
            row.NeedName("gauge"),
            row.NeedWord("wears", GaugeMark.WearsWords),
            row.Word("measures", GaugeMark.MeasuresWords),
            row.Distance("from_mark_mm"),
            row.Size("start_mm"),
            row.Size("least_mm"),
            row.Size("greatest_mm"),
            row.Size("resolution_mm")
        );
        tool?.Add(row, gauge);
    }
}
