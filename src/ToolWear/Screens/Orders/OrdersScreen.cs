using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;
using ToolWear.Wording;

namespace ToolWear.Screens.Orders;

/// <summary>The open orders: adding, changing, dropping.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class OrdersScreen(Host host) : GuidedScreen(host)
{
    private const string OrdersHeading = "Orders";

    private (Shop Shop, DateOnly Day, SessionCalendar? Days, OrderBook Book)? known;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Orders;

    /// <inheritdoc />
    protected override string ListHeading => OrdersHeading;

    /// <inheritdoc />
    protected override int Count => Orders.Length;

    private OrderBook Book
    {
        get
        {
            // the forge list knows which tools a day waits for; until it is worked out the hammer's days stand
            Sitting.Plans.Want(Sitting.Shop);
            SessionCalendar? days = Sitting.Plans is { IsBehind: false, IsStopped: false, Latest: { } list }
                ? list.Calendar
                : null;
            (Shop shop, DateOnly today) = (Sitting.Shop, Sitting.Today);
            if (known is not { } last || !ReferenceEquals(last.Shop, shop) || last.Day != today || last.Days != days)
            {
                known = (shop, today, days, OrderBook.Of(shop, today, days));
            }

            return known.Value.Book;
        }
    }

    private ImmutableArray<OrderOutlook> Orders => Book.Orders;

    private OrderDescribed Chosen => Orders[Math.Clamp(List.Chosen, 0, Orders.Length - 1)].Order;

    /// <inheritdoc />
    protected override void DoInList(Act act, int which)
    {
        switch (act)
        {
            case Act.Add:
                Begin(new OrderSheet(Sitting, null));
                break;
            case Act.Enter:
                Begin(new OrderSheet(Sitting, Chosen));
                break;
            case Act.Drop:
                Settle(OrderState.Dropped, OrderDropped(Chosen.Order));
                break;
            case Act.Finish:
                Settle(OrderState.Done, OrderFinished(Chosen.Order));
                break;
            default:
                base.DoInList(act, which);
                break;
        }
    }

    /// <inheritdoc />
    protected override void ComposeList(Picture body) =>
        OrdersText.Draw(body, Book, List, !Sitting.Shop.Patterns.IsEmpty);

    /// <inheritdoc />
    protected override void Entered(GuidedEntry entered)
    {
        OrderDescribed order = ((OrderSheet)entered).Made!;
        List.Choose(Orders.ToList().FindIndex(each => each.Order == order), Orders.Length);
        Sitting.Say(OrderEntered(order.Order, order.Heads, order.Pattern, order.DueOn), Ink.Done);
    }

    private void Settle(OrderState state, string said)
    {
        if (Sitting.Record(Chosen with { State = state }))
        {
            Sitting.Say(said, Ink.Done);
        }
    }

    private static string OrderEntered(string order, int heads, string pattern, DateOnly due) =>
        $"Order {order}: {heads} {pattern} by {Words.Weekday(due)}.";

    private static string OrderDropped(string order) => $"Order {order} is dropped.";

    private static string OrderFinished(string order) => $"Order {order} is done.";
}
