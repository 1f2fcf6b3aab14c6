using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.Orders;

/// <summary>The open orders: adding, changing, dropping.</summary>
/// <param name="host">Where it is shown.</param>
public sealed class OrdersScreen(Host host) : GuidedScreen(host)
{
    private readonly ListPlace place = new();
    private (Shop Shop, DateOnly Day, OrderBook Book)? known;
    private int width = 80;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Orders;

    /// <inheritdoc />
    protected override string ListHeading => Words.OrdersHeading;

    /// <inheritdoc />
    protected override int Count => Orders.Length;

    private OrderBook Book
    {
        get
        {
            if (known is not { } last || !ReferenceEquals(last.Shop, Sitting.Shop) || last.Day != Sitting.Today)
            {
                known = (Sitting.Shop, Sitting.Today, OrderBook.Of(Sitting.Shop, Sitting.Today));
            }

            return known.Value.Book;
        }
    }

    private ImmutableArray<OrderOutlook> Orders => Book.Orders;

    private OrderDescribed Chosen => Orders[Math.Clamp(place.Chosen, 0, Orders.Length - 1)].Order;

    private int Rows => OrdersText.RowsFor(width, Room, Book, place.Chosen);

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Row => Entry is not null || !Orders.IsEmpty,
            Need.MorePages => Entry is null && !Orders.IsEmpty && Orders.Length > Rows,
            _ => base.Has(need),
        };

    /// <inheritdoc />
    protected override void DoInList(Act act, int which)
    {
        switch (act)
        {
            case Act.Move or Act.Page:
                place.Move(act, which, Orders.Length, Rows);
                break;
            case Act.Add:
                Begin(new OrderSheet(Sitting, null));
                break;
            case Act.Enter:
                Begin(new OrderSheet(Sitting, Chosen));
                break;
            case Act.Drop:
                Settle(OrderState.Dropped, Words.OrderDropped(Chosen.Order));
                break;
            case Act.Finish:
                Settle(OrderState.Done, Words.OrderFinished(Chosen.Order));
                break;
            case Act.GoPatterns:
                Host.Go(ScreenName.Patterns);
                break;
            default:
                Host.Go(Host.Home);
                break;
        }
    }

    /// <inheritdoc />
    protected override void ComposeList(Picture body)
    {
        width = body.Width;
        OrdersText.Draw(body, Book, place, !Sitting.Shop.Patterns.IsEmpty);
    }

    /// <inheritdoc />
    protected override void Entered(GuidedEntry entered)
    {
        OrderDescribed order = ((OrderSheet)entered).Made!;
        place.Choose(Orders.ToList().FindIndex(each => each.Order == order), Orders.Length);
        Sitting.Say(Words.OrderEntered(order.Order, order.Heads, order.Pattern, order.DueOn), Ink.Done);
    }

    private void Settle(OrderState state, string said)
    {
        if (Sitting.Record(Chosen with { State = state }))
        {
            Sitting.Say(said, Ink.Done);
        }
    }
}
