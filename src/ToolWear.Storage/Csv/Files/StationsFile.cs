using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Storage.Csv.Files;

/// <summary>stations.csv: the bodies of the tools, section by section from the shank mark on.</summary>
internal sealed class StationsFile()
    : SetFile("stations.csv", "tool! part! from_mark_mm! section! a_mm! b_mm radius_mm large_radius_mm")
{
    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop) =>
        shop.Tools.SelectMany(tool =>
            tool.Stations.Select(station =>
                (CsvCell[])
                    [
                        CsvCell.Text(tool.Mark.Text),
                        CsvCell.Word(BodyParts.Words, (BodyPart?)station.Part),
                        CsvCell.Mm(station.FromMark),
                        .. SectionCells.Of(station.Section),
                    ]
            )
        );

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop)
    {
        ToolRead? tool = shop.Tool(row, "tool", row.NeedMark("tool"));
        BodyPart part = row.NeedWord("part", BodyParts.Words);
        Length fromMark = row.NeedDistance("from_mark_mm");
        Section? section = SectionCells.Read(row);
        tool?.Add(row, section is null || row.IsFaulty ? null : new Station(part, fromMark, section));
    }
}
