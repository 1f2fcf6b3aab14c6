using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.Orders;

/// <summary>The open orders: adding, changing, dropping.</summary>
/// <param name="host">Where it is shown.</param>
public sealed class OrdersScreen(Host host) : Screen(host)
{
    private readonly ListPlace place = new();
    private (Shop Shop, DateOnly Day, OrderBook Book)? known;
    private OrderSheet? sheet;
    private int width = 80;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Orders;

    /// <inheritdoc />
    public override string Heading => Words.OrdersHeading;

    /// <inheritdoc />
    public override TypedLine? Line => sheet?.Guided.Line;

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
    public override void Open() => sheet = null;

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Row => sheet is not null || !Orders.IsEmpty,
            Need.Choice => sheet?.Guided.HasChoice ?? Orders.Length > 1,
            Need.MorePages => sheet is null && !Orders.IsEmpty && Orders.Length > Rows,
            Need.Recorded => sheet?.Guided.At > 0 || base.Has(need),
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        sheet is null ? base.WordsOf(row) : Words.GuidedKey(row, base.WordsOf(row));

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Move when sheet is not null:
                sheet.Guided.Choose(which == 0 ? -1 : 1);
                break;
            case Act.Move or Act.Page:
                place.Move(act, which, Orders.Length, Rows);
                break;
            case Act.Add:
                sheet = OrderSheet.New(Sitting.Shop, Sitting.Today);
                break;
            case Act.Enter when sheet is null:
                sheet = OrderSheet.Change(Sitting.Shop, Sitting.Today, Chosen);
                break;
            case Act.Enter when sheet.Next():
                Take(sheet);
                break;
            case Act.Drop:
                Settle(OrderState.Dropped, Words.OrderDropped(Chosen.Order));
                break;
            case Act.Finish:
                Settle(OrderState.Done, Words.OrderFinished(Chosen.Order));
                break;
            case Act.Back when sheet is not null:
                sheet = null;
                break;
            case Act.Back:
                Host.Go(Host.Home);
                break;
            default:
                break;
        }
    }

    /// <inheritdoc />
    public override bool StepBack() => sheet?.Guided.Back() == true;

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        width = body.Width;
        if (sheet is not null)
        {
            GuidedText.Draw(body, sheet.Guided);
        }
        else
        {
            OrdersText.Draw(body, Book, place);
        }
    }

    private void Take(OrderSheet answered)
    {
        OrderDescribed? order = answered.Order(out (int At, string Why)? refusal);
        if (refusal is { } wrong)
        {
            answered.Guided.Go(wrong.At);
            Sitting.Say(wrong.Why, Ink.Warn);
        }
        else if (Sitting.Record(order!))
        {
            sheet = null;
            place.Choose(
                Math.Max(0, Orders.IndexOf(Orders.FirstOrDefault(each => each.Order == order))),
                Orders.Length
            );
            Sitting.Say(Words.OrderEntered(order!.Order, order.Heads, order.Pattern, order.DueOn), Ink.Done);
        }
    }

    private void Settle(OrderState state, string said)
    {
        if (Sitting.Record(Chosen with { State = state }))
        {
            Sitting.Say(said, Ink.Done);
        }
    }
}
