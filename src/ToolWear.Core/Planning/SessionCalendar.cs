using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Planning;

/// <summary>Heads of an order forged on a day.</summary>
/// <param name="Order">The order.</param>
/// <param name="Heads">How many heads, above zero.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct HeadsOfOrder(OrderDescribed Order, int Heads);

/// <summary>A day at the hammer.</summary>
/// <param name="On">The day.</param>
/// <param name="Heads">What is forged, in the order of due dates.</param>
public sealed record SessionDay(DateOnly On, ImmutableArray<HeadsOfOrder> Heads);

/// <summary>How many heads of a pattern a day gives.</summary>
/// <param name="Pattern">The pattern's name.</param>
/// <param name="HeadsADay">Heads a day, above zero: the average of the busier half of the closed sessions.</param>
/// <param name="Sessions">How many closed sessions taught it; 0 where the shop's setting counts.</param>
public sealed record PatternCapacity(string Pattern, double HeadsADay, int Sessions);

/// <summary>An open order and the day on which it will be done.</summary>
/// <param name="Order">The order.</param>
/// <param name="DoneOn">The day of its last head; null where that lies beyond what is reckoned, some fifty years.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct OrderDone(OrderDescribed Order, DateOnly? DoneOn);

/// <summary>An order that cannot be done in time.</summary>
/// <param name="Order">The order.</param>
/// <param name="HeadsLate">Heads that come after its day.</param>
/// <param name="DoneOn">The day of the last head; null where that lies beyond what is reckoned.</param>
/// <param name="WaitsFor">The places whose new tools it waits for; none where the days at the hammer alone are too few.</param>
public sealed record LateOrder(
    OrderDescribed Order,
    int HeadsLate,
    DateOnly? DoneOn,
    ImmutableArray<ToolPlace> WaitsFor
)
{
    /// <summary>How many days late its last head is; null where that lies beyond what is reckoned.</summary>
    public int? DaysLate => DoneOn?.DayNumber - Order.DueOn.DayNumber;
}

/// <summary>What the tools of a place have left until a new one can be ready.</summary>
/// <param name="ReadyOn">The first day on which a new one can be ready.</param>
/// <param name="Heats">Weighted heats that those on hand give until then.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Waiting(DateOnly ReadyOn, double Heats);

/// <summary>The days at the hammer that the open orders take.</summary>
/// <param name="Days">The days, first to last.</param>
/// <param name="Orders">The open orders by due date, with the day on which each will be done.</param>
/// <param name="Late">What cannot be done in time.</param>
/// <param name="Capacities">Heads a day by pattern, with where the figure comes from.</param>
public sealed record SessionCalendar(
    ImmutableArray<SessionDay> Days,
    ImmutableArray<OrderDone> Orders,
    ImmutableArray<LateOrder> Late,
    ImmutableArray<PatternCapacity> Capacities
)
{
    private const int MostDays = 20_000;

    /// <summary>Fills the days with the open orders, the first due first.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="from">The first day that may be worked; what was forged on it already takes its share of it.</param>
    /// <param name="waits">Places whose tools do not last until new ones are ready: heads that need more wait.</param>
    /// <returns>The calendar.</returns>
    public static SessionCalendar Of(Shop shop, DateOnly from, IReadOnlyDictionary<ToolPlace, Waiting>? waits = null)
    {
        OrderDescribed[] open =
        [
            .. shop
                .Orders.Values.Where(order => order.State == OrderState.Open)
                .OrderBy(order => order.DueOn)
                .ThenBy(order => order.Order, StringComparer.Ordinal),
        ];
        ImmutableArray<PatternCapacity> capacities =
        [
            .. open.Select(order => order.Pattern)
                .Distinct(StringComparer.Ordinal)
                .Select(name => Capacity(shop, name)),
        ];
        Dictionary<string, double> aDay = capacities.ToDictionary(
            each => each.Pattern,
            each => each.HeadsADay,
            StringComparer.Ordinal
        );
        DayFilling filling = new(shop, aDay, waits ?? ImmutableDictionary<ToolPlace, Waiting>.Empty);
        LinkedList<(OrderDescribed Order, int Left)> queue = new(open.Select(order => (order, order.Heads)));
        ImmutableArray<SessionDay>.Builder days = ImmutableArray.CreateBuilder<SessionDay>();
        for (DateOnly day = from; queue.Count > 0 && day.DayNumber - from.DayNumber < MostDays; day = day.AddDays(1))
        {
            if (shop.Settings.IsHammerDay(day.DayOfWeek) && filling.Fill(queue, day) is { IsEmpty: false } heads)
            {
                days.Add(new SessionDay(day, heads));
            }
        }

        ILookup<string, (DateOnly On, int Heads)> forged = days.SelectMany(day =>
                day.Heads.Select(each => (day.On, each.Order, each.Heads))
            )
            .ToLookup(each => each.Order.Order, each => (each.On, each.Heads), StringComparer.Ordinal);
        return new SessionCalendar(
            days.ToImmutable(),
            [.. open.Select(order => new OrderDone(order, DoneOn(order, [.. forged[order.Order]])))],
            [
                .. open.Select(order => LateOf(order, [.. forged[order.Order]], filling.WaitsOf(order.Order)))
                    .OfType<LateOrder>(),
            ],
            capacities
        );
    }

    internal static PatternCapacity Capacity(Shop shop, string pattern)
    {
        int[] heads =
        [
            .. shop
                .Sessions.Values.Where(each => !each.IsOpen && each.Heads > 0 && each.Opened.Pattern == pattern)
                .Select(each => each.Heads!.Value),
        ];
        // the last day of an order is seldom a full one: the fuller half says what a day gives
        return heads.Length > 0
            ? new PatternCapacity(pattern, heads.OrderDescending().Take((heads.Length + 1) / 2).Average(), heads.Length)
            : new PatternCapacity(pattern, shop.Settings.HeadsADay, 0);
    }

    private static DateOnly? DoneOn(OrderDescribed order, (DateOnly On, int Heads)[] forged) =>
        forged.Sum(each => each.Heads) == order.Heads ? forged[^1].On : null;

    private static LateOrder? LateOf(
        OrderDescribed order,
        (DateOnly On, int Heads)[] forged,
        ImmutableArray<ToolPlace> waits
    )
    {
        int inTime = forged.Where(each => each.On <= order.DueOn).Sum(each => each.Heads);
        return inTime < order.Heads ? new LateOrder(order, order.Heads - inTime, DoneOn(order, forged), waits) : null;
    }
}
