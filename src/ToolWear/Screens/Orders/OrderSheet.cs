using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.Orders;

/// <summary>An order that is being entered or changed, question by question.</summary>
public sealed class OrderSheet
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
    {
        (this.shop, this.today, this.before) = (shop, today, before);
        ImmutableArray<Question> questions =
        [
            new(Words.PatternAsked, Words.PatternMeaning, [.. shop.Patterns.Keys]),
            new(Words.HeadsAsked, Words.HeadsMeaning, []),
            new(Words.DueAsked, Words.DueMeaning, []),
            new(Words.OrderAsked, Words.OrderMeaning, []),
        ];
        // the name of an order that there is stays: under another name it would be another order
        Guided = new GuidedLine(before is null ? questions : questions[..Name]);
        Guided.Offer(Pattern, before?.Pattern ?? shop.Patterns.Keys.First());
        Guided.Offer(Heads, (before?.Heads)?.ToString(CultureInfo.InvariantCulture) ?? "");
        Guided.Offer(Due, Iso(before?.DueOn ?? today.AddDays(UsualDays)));
    }

    /// <summary>The questions and answers.</summary>
    public GuidedLine Guided { get; }

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

    /// <summary>Takes the answer that is typed, and offers a name once pattern and due day are known.</summary>
    /// <returns>True where it was the last question.</returns>
    public bool Next()
    {
        bool isLast = Guided.Next();
        if (before is null && Guided.At == Name && Guided[Name].Length == 0)
        {
            Guided.Offer(Name, FreeName(Guided[Pattern]));
        }

        return isLast;
    }

    /// <summary>The order that the answers come to.</summary>
    /// <param name="refusal">The question that was answered wrongly and why, where one was.</param>
    /// <returns>The order; null where an answer is wrong.</returns>
    public OrderDescribed? Order(out (int At, string Why)? refusal)
    {
        refusal = null;
        string name = before?.Order ?? Guided[Name].Trim();
        if (!int.TryParse(Guided[Heads], NumberStyles.None, CultureInfo.InvariantCulture, out int heads) || heads == 0)
        {
            refusal = (Heads, Words.NoHeadsOfOrder(Guided[Heads]));
        }
        else if (ReadDay(Guided[Due].Trim(), today) is not { } due)
        {
            refusal = (Due, Words.NoDay(Guided[Due]));
        }
        else if (before is null && shop.Orders.GetValueOrDefault(name) is { State: OrderState.Open })
        {
            refusal = (Name, Words.OrderThere(name));
        }
        else
        {
            return new OrderDescribed(name, Guided[Pattern], heads, due, OrderState.Open);
        }

        return null;
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

    private string FreeName(string pattern)
    {
        string Nth(int n) => n == 1 ? pattern : string.Create(CultureInfo.InvariantCulture, $"{pattern} {n}");
        return Enumerable.Range(1, shop.Orders.Count + 1).Select(Nth).First(name => !shop.Orders.ContainsKey(name));
    }

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
