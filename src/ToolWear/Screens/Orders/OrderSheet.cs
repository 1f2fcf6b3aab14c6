using System.Globalization;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.Orders;

/// <summary>An order that is being entered or changed, question by question.</summary>
internal sealed class OrderSheet : FieldSheet<OrderDescribed>
{
    private const string NewOrderHeading = "A new order";

    private const int UsualDays = 28;

    /// <summary>Begins.</summary>
    /// <param name="sitting">The sitting; its shop has a pattern.</param>
    /// <param name="before">The order as it is; null for a new one.</param>
    public OrderSheet(Sitting sitting, OrderDescribed? before)
        : base(OrderFields.Table, sitting, before ?? OrderFields.Table.Blank, before is null)
    {
        Heading = before is null ? NewOrderHeading : ChangeOrderHeading(before.Order);
        if (before is null)
        {
            OrderDescribed usual = OrderFields.Table.Blank with
            {
                Pattern = sitting.Shop.Patterns.Keys.First(),
                DueOn = sitting.Today.AddDays(UsualDays),
            };
            Offer(usual, "pattern", "due_on");
        }
    }

    /// <inheritdoc />
    public override string Heading { get; }

    /// <summary>Takes the answer that is typed, and offers a name once the pattern is known.</summary>
    /// <returns>True where it was the last question.</returns>
    public override bool Next()
    {
        bool isLast = base.Next();
        if (IsNew && Open == "order" && Answer("order").Length == 0)
        {
            Offer("order", FreeName(Answer("pattern")));
        }

        return isLast;
    }

    /// <inheritdoc />
    protected override FieldFault? FaultIn(OrderDescribed thing, Shop shop) =>
        IsNew && shop.Orders.GetValueOrDefault(thing.Order) is { State: OrderState.Open }
            ? new("order", OrderThere(thing.Order))
            : null;

    private string FreeName(string pattern)
    {
        string Nth(int n) => n == 1 ? pattern : string.Create(CultureInfo.InvariantCulture, $"{pattern} {n}");
        Shop shop = Sitting.Shop;
        return Enumerable.Range(1, shop.Orders.Count + 1).Select(Nth).First(name => !shop.Orders.ContainsKey(name));
    }

    private static string ChangeOrderHeading(string order) => $"Order {order}";

    private static string OrderThere(string order) => $"there is an open order {order} already: change that one";
}
