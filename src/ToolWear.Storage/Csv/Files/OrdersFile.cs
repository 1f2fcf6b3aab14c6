using ToolWear.Core.Ledger;

namespace ToolWear.Storage.Csv.Files;

/// <summary>orders.csv: what is to be forged, and by when.</summary>
internal sealed class OrdersFile() : SetFile("orders.csv", "order! pattern! heads! due_on! state")
{
    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop) =>
        shop.Shop.Orders.Values.Select(e =>
            (CsvCell[])
                [
                    CsvCell.Text(e.Order),
                    CsvCell.Text(e.Pattern),
                    CsvCell.Count(e.Heads),
                    CsvCell.Day(e.DueOn),
                    CsvCell.Word(OrderDescribed.StateWords, (OrderState?)e.State),
                ]
        );

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop)
    {
        OrderDescribed entry = new(
            row.NeedName("order"),
            row.NeedName("pattern"),
            row.NeedCount("heads"),
            row.NeedDay("due_on"),
            row.Word("state", OrderDescribed.StateWords) ?? OrderState.Open
        );
        shop.Once(row, "order", entry.Order);
        shop.NeedPattern(row, entry.Pattern);
        if (!row.IsFaulty)
        {
            shop.Orders.Add(new(row, "heads", entry));
        }
    }
}
