using System.Collections.Immutable;
using ToolWear.Core.Planning;

namespace ToolWear.Results;

/// <summary>The open orders by due date.</summary>
internal static class OrderTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("order", "Order"),
        new("pattern", "Pattern"),
        new("heads", "Heads"),
        new("heats", "Heats"),
        new("heats_from", "By"),
        new("due_on", "Due"),
        new("done_on", "Done by"),
        new("heads_late", "Late"),
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="book">The open orders.</param>
    /// <returns>A row for each order, the first due first.</returns>
    public static Table Of(OrderBook book) => new(Columns, [.. book.Orders.Select(Row)]);

    private static ImmutableArray<Cell> Row(OrderOutlook order) =>
        [
            Cell.Of(order.Order.Order),
            Cell.Of(order.Order.Pattern),
            Cell.Of(order.Order.Heads),
            Cell.Of(order.Heats, Words.About),
            Cell.Of(order.IsLearned ? "records" : "first guess"),
            Cell.Of(Iso(order.Order.DueOn), Words.Weekday(order.Order.DueOn)),
            Cell.Of(order.DoneOn is { } done ? Iso(done) : null, order.DoneOn is { } day ? Words.Weekday(day) : null),
            Cell.Of(order.HeadsLate, late => late > 0 ? $"{Words.About(late)} heads late" : ""),
        ];

    private static string Iso(DateOnly day) =>
        day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
