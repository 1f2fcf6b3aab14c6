using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Planning;

/// <summary>Counts heads that a session finished off the open orders of its pattern, the first due first.</summary>
public static class OrderCountOff
{
    /// <summary>The orders as they stand after the heads.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="pattern">The pattern that was forged; null where nobody said.</param>
    /// <param name="heads">Heads finished; null where nobody counted.</param>
    /// <returns>Each order that has fewer heads to go, or is done; none where no open order is of the pattern. An order
    /// that is done keeps the heads it had left.</returns>
    public static ImmutableArray<OrderDescribed> Of(Shop shop, string? pattern, int? heads)
    {
        ImmutableArray<OrderDescribed>.Builder after = ImmutableArray.CreateBuilder<OrderDescribed>();
        int left = heads ?? 0;
        foreach (
            OrderDescribed order in shop
                .Orders.Values.Where(order => order.State == OrderState.Open && order.Pattern == pattern)
                .OrderBy(order => order.DueOn)
                .ThenBy(order => order.Order, StringComparer.Ordinal)
                .TakeWhile(_ => left > 0)
        )
        {
            after.Add(
                left >= order.Heads ? order with { State = OrderState.Done } : order with { Heads = order.Heads - left }
            );
            left -= Math.Min(left, order.Heads);
        }

        return after.ToImmutable();
    }
}
