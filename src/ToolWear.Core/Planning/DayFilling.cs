using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Planning;

/// <summary>Fills one day after another with heads of the open orders.</summary>
internal sealed class DayFilling(
    Shop shop,
    IReadOnlyDictionary<string, double> aDay,
    IReadOnlyDictionary<ToolPlace, Waiting> waits
)
{
    private const double Rounding = 1e-9;

    private readonly ImmutableSortedDictionary<string, ImmutableArray<HeatsAHead>> stages = HeatsAHead.Of(shop);
    private readonly Dictionary<ToolPlace, double> used = [];
    private readonly HashSet<(string Order, ToolPlace Place)> waited = [];

    /// <summary>The places that an order waited for.</summary>
    internal ImmutableArray<ToolPlace> WaitsOf(string order) =>
        [.. waited.Where(each => each.Order == order).Select(each => each.Place)];

    /// <summary>Takes as many heads from the queue as the day gives. A day is one; a head takes its share of it, and what is
    /// left goes to the next order.</summary>
    internal ImmutableArray<HeadsOfOrder> Fill(LinkedList<(OrderDescribed Order, int Left)> queue, DateOnly day)
    {
        ImmutableArray<HeadsOfOrder>.Builder done = ImmutableArray.CreateBuilder<HeadsOfOrder>();
        double left =
            1
            - shop.SessionsOn(day)
                .Where(session => session is { Heads: > 0, Opened.Pattern: not null })
                .Sum(session =>
                    session.Heads!.Value / SessionCalendar.Capacity(shop, session.Opened.Pattern!).HeadsADay
                );
        bool isWholeDay = left >= 1;
        LinkedListNode<(OrderDescribed Order, int Left)>? node = queue.First;
        while (node is not null)
        {
            (OrderDescribed order, int wanted) = node.Value;
            double capacity = aDay[order.Pattern];
            // a head that takes longer than a day still gets forged, on a day of its own
            int fits = Math.Max(done.Count == 0 && isWholeDay ? 1 : 0, (int)Math.Floor((left * capacity) + Rounding));
            if (fits <= 0)
            {
                break;
            }

            int heads = Allowed(order, Math.Min(fits, wanted), day);
            LinkedListNode<(OrderDescribed Order, int Left)>? next = node.Next;
            if (heads > 0)
            {
                done.Add(new HeadsOfOrder(order, heads));
                left -= heads / capacity;
                node.Value = (order, wanted - heads);
            }

            if (heads == wanted)
            {
                queue.Remove(node);
            }
            else if (heads == fits)
            {
                break;
            }

            node = next;
        }

        return done.ToImmutable();
    }

    // heads for which the tools on hand last, where new ones cannot be ready yet
    private int Allowed(OrderDescribed order, int heads, DateOnly day)
    {
        (ToolPlace Place, double AHead)[] needs =
        [
            .. stages[order.Pattern]
                .Where(stage =>
                    stage.Tools is { } place && waits.TryGetValue(place, out Waiting wait) && day < wait.ReadyOn
                )
                .GroupBy(stage => stage.Tools!.Value)
                .Select(place => (place.Key, place.Sum(stage => stage.Weighted)))
                .Where(place => place.Item2 > 0),
        ];
        foreach ((ToolPlace place, double aHead) in needs)
        {
            double on = waits[place].Heats - used.GetValueOrDefault(place);
            int lasts = Math.Max(0, (int)Math.Floor((on / aHead) + Rounding));
            if (lasts < heads)
            {
                waited.Add((order.Order, place));
                heads = lasts;
            }
        }

        foreach ((ToolPlace place, double aHead) in needs)
        {
            used[place] = used.GetValueOrDefault(place) + (heads * aHead);
        }

        return heads;
    }
}
