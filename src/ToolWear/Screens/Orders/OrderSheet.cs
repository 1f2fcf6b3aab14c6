using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.Orders;

/// <summary>An order that is being entered or changed, question by question.</summary>
public sealed class OrderSheet : GuidedEntry
{
    private const int Pattern = 0;
    private const int Heads = 1;
    private const int Due = 2;
    private const int Name = 3;
    private const int UsualDays = 28;

    private readonly Shop shop;
    private readonly DateOnly today;
    private readonly OrderDescribed? before;

    private OrderSheet(Shop shop, DateOnly today, OrderDescribed? before)
        // the name of an order that there is stays: under another name it would be another order
        : base(new GuidedLine(before is null ? Questions(shop) : Questions(shop)[..Name]))
    {
        (this.shop, this.today, this.before) = (shop, today, before);
        Guided.Offer(Pattern, before?.Pattern ?? shop.Patterns.Keys.First());
        Guided.Offer(Heads, (before?.Heads)?.ToString(CultureInfo.InvariantCulture) ?? "");
        Guided.Offer(Due, Iso(before?.DueOn ?? today.AddDays(UsualDays)));
    }

    /// <inheritdoc />
    public override string Heading => before is null ? Words.NewOrderHeading : Words.ChangeOrderHeading(before.Order);

    /// <summary>The order that was entered; null before.</summary>
    public OrderDescribed? Order { get; private set; }

    /// <summary>A new order.</summary>
    /// <param name="shop">The shop; it has a pattern.</param>
    /// <param name="today">The shop's day.</param>
    /// <returns>The sheet.</returns>
    public static OrderSheet New(Shop shop, DateOnly today) => new(shop, today, null);

    /// <summary>A change of an order.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="today">The shop's day.</param>
    /// <param name="order">The order as it is.</param>
    /// <returns>The sheet.</returns>
    public static OrderSheet Change(Shop shop, DateOnly today, OrderDescribed order) => new(shop, today, order);

    /// <summary>Takes the answer that is typed, and offers a name once the pattern is known.</summary>
    /// <returns>True where it was the last question.</returns>
    public override bool Next()
    {
        bool isLast = base.Next();
        if (before is null && Guided.At == Name && Guided[Name].Length == 0)
        {
            Guided.Offer(Name, FreeName(Guided[Pattern]));
        }

        return isLast;
    }

    /// <inheritdoc />
    public override bool Take(AnswersRead read, Sitting sitting)
    {
        string name = before?.Order ?? read.Text(Name) ?? "";
        if (
            !int.TryParse(read.Text(Heads), NumberStyles.None, CultureInfo.InvariantCulture, out int heads)
            || heads == 0
        )
        {
            read.Refuse(Heads, Words.NoHeadsOfOrder(Guided[Heads]));
        }

        if (ReadDay(read.Text(Due) ?? "", today) is not { } due)
        {
            read.Refuse(Due, Words.NoDay(Guided[Due]));
            return false;
        }

        if (before is null && shop.Orders.GetValueOrDefault(name) is { State: OrderState.Open })
        {
            read.Refuse(Name, Words.OrderThere(name));
        }

        Order = new OrderDescribed(name, read.Text(Pattern) ?? "", heads, due, OrderState.Open);
        return read.Refusal is null && sitting.Record(Order);
    }

    /// <summary>Reads a day as a smith types it.</summary>
    /// <param name="text">"2027-01-15", "01-15" for the next such day, "+28" for in so many days.</param>
    /// <param name="today">The shop's day.</param>
    /// <returns>The day; null where it is none.</returns>
    public static DateOnly? ReadDay(string text, DateOnly today)
    {
        const int mostDays = 3650;
        CultureInfo invariant = CultureInfo.InvariantCulture;
        if (text.StartsWith('+'))
        {
            return int.TryParse(text[1..], NumberStyles.None, invariant, out int days) && days <= mostDays
                ? today.AddDays(days)
                : null;
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", invariant, DateTimeStyles.None, out DateOnly day))
        {
            return day;
        }

        foreach (int year in (int[])[today.Year, today.Year + 1])
        {
            string whole = string.Create(invariant, $"{year}-{text}");
            if (DateOnly.TryParseExact(whole, "yyyy-M-d", invariant, DateTimeStyles.None, out day) && day >= today)
            {
                return day;
            }
        }

        return null;
    }

    private static ImmutableArray<Question> Questions(Shop shop) =>
        [
            new(Words.PatternAsked, Words.PatternMeaning, [.. shop.Patterns.Keys]),
            new(Words.HeadsAsked, Words.HeadsMeaning, []),
            new(Words.DueAsked, Words.DueMeaning, []),
            new(Words.OrderAsked, Words.OrderMeaning, []),
        ];

    private string FreeName(string pattern)
    {
        string Nth(int n) => n == 1 ? pattern : string.Create(CultureInfo.InvariantCulture, $"{pattern} {n}");
        return Enumerable.Range(1, shop.Orders.Count + 1).Select(Nth).First(name => !shop.Orders.ContainsKey(name));
    }

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
