using System.Globalization;
using ToolWear.Core.Planning;
using ToolWear.Wording;
using Row = ToolWear.Results.Column<ToolWear.Core.Planning.OrderOutlook>;

namespace ToolWear.Results.Plans;

/// <summary>The open orders, the first due first.</summary>
internal static class OrderTable
{
    public static Columns<OrderOutlook> Columns { get; } =
    [
        Row.Text("order", "Order", order => order.Order.Order),
        Row.Text("pattern", "Pattern", order => order.Order.Pattern),
        Row.Number("heads", "Heads", order => order.Order.Heads),
        Row.Number("heats", "Heats", order => order.Heats, Quantity.Heats),
        Row.Text("heats_from", "By", order => order.IsLearned ? "records" : "first guess")
            .Means("where the heats a head come from: records, first guess"),
        new("due_on", "Due", (order, _) => Day(order.Order.DueOn)),
        new Row("done_on", "Done by", (order, _) => Day(order.DoneOn)).Means(
            "the session day on which an order is done"
        ),
        new Row("heads_late", "Late", (order, _) => Cell.Of(order.HeadsLate, Late)).Means(
            "heads of an order that come after its due day"
        ),
    ];

    private static Cell Day(DateOnly? day) =>
        Cell.Of(
            day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            day is { } known ? Words.Weekday(known) : null
        );

    private static string Late(double heads) => heads > 0 ? $"{Words.About(heads)} heads late" : "";
}
