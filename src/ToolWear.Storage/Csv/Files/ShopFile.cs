using ToolWear.Core.Ledger;

namespace ToolWear.Storage.Csv.Files;

/// <summary>shop.csv: what the shop said of itself.</summary>
internal sealed class ShopFile() : SetFile("shop.csv", "setting! value!")
{
    /// <inheritdoc />
    public override bool IsAlwaysWritten => true;

    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop) =>
        shop.Shop.Settings.Said.Select(said => (CsvCell[])[CsvCell.Text(said.Key), CsvCell.Text(said.Value)]);

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop)
    {
        SettingChanged entry = new(row.NeedText("setting"), row.NeedText("value"));
        shop.Once(row, "setting", entry.Setting);
        if (!row.IsFaulty)
        {
            shop.Descriptions.Add(new(row, "setting", entry));
        }
    }
}
