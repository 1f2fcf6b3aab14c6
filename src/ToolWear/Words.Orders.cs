using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;

namespace ToolWear;

/// <content>What is said of orders.</content>
public static partial class Words
{
    internal const string OrdersHeading = "Orders";
    internal const string NewOrderHeading = "A new order";
    internal const string NoOrders = "No order is open.";
    internal const string NoOrdersYet = $"{NoOrders} a enters one.";
    internal const string NoOrdersNoPatterns =
        $"{NoOrders} An order is so many heads of a pattern: p leads to the patterns, enter one first.";

    internal const string AboutOrders =
        "The open orders by due date: heads, heats at the fire they take by the records or else by first guess, and the day the last head will be done if the hammer runs on its days. What cannot be done in time is said.";

    /// <summary>A day with its weekday.</summary>
    /// <param name="day">The day.</param>
    /// <returns>For example "Fri 2026-12-04".</returns>
    public static string Weekday(DateOnly day) => day.ToString("ddd yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>Heats a head at a stage, and where the figure comes from.</summary>
    /// <param name="stage">The stage.</param>
    /// <returns>For example "cheeks 3.2 by 10 sessions, spread 0.4 (first guess 3)".</returns>
    public static string HeatsOfStage(HeatsAHead stage)
    {
        string guess = stage.Stage.HeatsAHead is { } first ? $"first guess {Heats(first)}" : "no first guess";
        string spread = stage.Spread is { } sd and > 0
            ? $", spread {sd.ToString("0.#", CultureInfo.InvariantCulture)}"
            : "";
        return stage.IsLearned
                ? $"{stage.Stage.Name} {Heats(stage.Heats)} by {stage.Sessions} sessions{spread} ({guess})"
            : stage.Stage.HeatsAHead is null ? $"{stage.Stage.Name} not known"
            : $"{stage.Stage.Name} {Heats(stage.Heats)}, first guess";
    }

    /// <summary>Heads were counted off an order.</summary>
    /// <param name="before">The order before.</param>
    /// <param name="after">The order after.</param>
    /// <returns>A line without a full stop.</returns>
    public static string CountedOff(OrderDescribed before, OrderDescribed after) =>
        after.State == OrderState.Done
            ? $"order {after.Order} is done, its last {CountOf(before.Heads, "head")} with it"
            : $"order {after.Order}: {CountOf(before.Heads - after.Heads, "head")} off, {after.Heads} to go";

    internal static string AskCountOff(ImmutableArray<(OrderDescribed Before, OrderDescribed After)> orders) =>
        "Count them off the orders? "
        + string.Join("; ", orders.Select(each => CountedOff(each.Before, each.After)))
        + ". Enter does, n leaves the orders as they are.";

    internal static string OrderEntered(string order, int heads, string pattern, DateOnly due) =>
        $"Order {order}: {heads} {pattern} by {Weekday(due)}.";

    internal static string ChangeOrderHeading(string order) => $"Order {order}";

    internal static string OrderDropped(string order) => $"Order {order} is dropped.";

    internal static string OrderFinished(string order) => $"Order {order} is done.";

    internal static string OrderThere(string order) => $"there is an open order {order} already: change that one";
}
