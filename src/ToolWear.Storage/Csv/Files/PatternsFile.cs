using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Files;

/// <summary>patterns.csv: what is forged, a row for each stage.</summary>
internal sealed class PatternsFile() : SetFile("patterns.csv", "pattern! stage! eye form place work heats_a_head load")
{
    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop) =>
        shop.Shop.Patterns.Values.SelectMany(pattern =>
            pattern.Stages.Select(stage =>
                (CsvCell[])
                    [
                        CsvCell.Text(pattern.Pattern),
                        CsvCell.Text(stage.Name),
                        CsvCell.Text(stage.Eye),
                        CsvCell.Text(stage.Form?.Name),
                        PlaceCell.Of(stage.Place),
                        CsvCell.Word(Works.Words, stage.Work),
                        CsvCell.Number(stage.HeatsAHead),
                        CsvCell.Number(stage.Load),
                    ]
            )
        );

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop)
    {
        string name = row.NeedName("pattern");
        PatternStage stage = new(
            row.NeedName("stage"),
            row.Text("eye"),
            row.Form("form"),
            row.Place("place"),
            row.Word("work", Works.Words),
            row.Number("heats_a_head"),
            row.Number("load")
        );
        if (row.IsFaulty)
        {
            shop.Doubt("pattern", name);
        }

        PatternRead? pattern = shop.Patterns.Find(each => each.Name == name);
        if (pattern is null)
        {
            pattern = new(row, name, []);
            shop.Patterns.Add(pattern);
        }

        pattern.Stages.Add(stage);
    }
}
