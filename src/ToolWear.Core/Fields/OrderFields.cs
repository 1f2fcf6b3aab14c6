using ToolWear.Core.Ledger;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Core.Fields;

/// <summary>The fields of an order.</summary>
public static class OrderFields
{
    /// <summary>The table.</summary>
    public static FieldTable<OrderDescribed> Table { get; } =
        new FieldTable<OrderDescribed>("orders.csv", new("", "", 0, default, OrderState.Open))
            .Key("order", Name, o => o.Order, (o, v) => o with { Order = v! })
            .Means("what you call the order", "Name")
            .Called("order no", "order number")
            .Needs("pattern", Name, o => o.Pattern, (o, v) => o with { Pattern = v! })
            .Means("what is forged, such as hatchet", "Pattern", Kept.Patterns)
            .Needs("heads", Whole(1, 100_000), o => o.Heads, (o, v) => o with { Heads = v!.Value })
            .Means("how many heads are still to be forged", "Heads")
            .Called("count", "how many", "quantity", "qty")
            .Needs("due_on", Day, o => o.DueOn, (o, v) => o with { DueOn = v!.Value })
            .Means(
                "the day they are due, such as 2027-01-15; you can also type 01-15 for the next such day, +28 for in 28 days",
                "Due"
            )
            .Called("due date", "wanted by", "day", "date")
            .Maybe(
                "state",
                Word(OrderDescribed.StateWords),
                o => o.State,
                (o, v) => o with { State = v ?? OrderState.Open }
            )
            .Means("where the order stands")
            .Called("status");
}
