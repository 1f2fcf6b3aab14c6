using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Planning;

/// <summary>An open order: what it takes, and when it will be done.</summary>
/// <param name="Order">The order.</param>
/// <param name="Heats">Heats at the fire that its heads take over all stages, as worked.</param>
/// <param name="IsLearned">Whether the shop's records taught the heats a head of some stage.</param>
/// <param name="DoneOn">The day of its last head; null where that lies beyond what is reckoned.</param>
/// <param name="HeadsLate">Heads that come after its due day, zero where it is done in time.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct OrderOutlook(
    OrderDescribed Order,
    double Heats,
    bool IsLearned,
    DateOnly? DoneOn,
    int HeadsLate
);

/// <summary>The open orders by due date, with what they take and whether they can be done in time.</summary>
/// <param name="Orders">The open orders, the first due first.</param>
/// <param name="Calendar">The days at the hammer that they fill.</param>
/// <param name="Stages">Heats a head by stage, for each pattern that an open order is of.</param>
public sealed record OrderBook(
    ImmutableArray<OrderOutlook> Orders,
    SessionCalendar Calendar,
    ImmutableSortedDictionary<string, ImmutableArray<HeatsAHead>> Stages
)
{
    /// <summary>Looks through the open orders.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="from">The first day that may be worked.</param>
    /// <param name="planned">The days of the forge list, which wait for tools; null while nobody knows it: then those that
    /// the hammer alone could do.</param>
    /// <returns>The book; empty where no order is open.</returns>
    public static OrderBook Of(Shop shop, DateOnly from, SessionCalendar? planned = null)
    {
        SessionCalendar calendar = planned ?? SessionCalendar.Of(shop, from);
        ImmutableSortedDictionary<string, ImmutableArray<HeatsAHead>> all = HeatsAHead.Of(shop);
        ImmutableSortedDictionary<string, ImmutableArray<HeatsAHead>> stages =
            calendar.Capacities.ToImmutableSortedDictionary(
                capacity => capacity.Pattern,
                capacity => all[capacity.Pattern],
                StringComparer.Ordinal
            );
        Dictionary<string, int> late = calendar.Late.ToDictionary(
            each => each.Order.Order,
            each => each.HeadsLate,
            StringComparer.Ordinal
        );
        return new OrderBook(
            [.. calendar.Orders.Select(each => Of(each, stages, late.GetValueOrDefault(each.Order.Order)))],
            calendar,
            stages
        );
    }

    private static OrderOutlook Of(
        OrderDone done,
        ImmutableSortedDictionary<string, ImmutableArray<HeatsAHead>> stages,
        int late
    )
    {
        ImmutableArray<HeatsAHead> aHead = stages[done.Order.Pattern];
        return new OrderOutlook(
            done.Order,
            done.Order.Heads * aHead.Sum(stage => stage.Heats),
            aHead.Any(stage => stage.IsLearned),
            done.DoneOn,
            late
        );
    }
}
