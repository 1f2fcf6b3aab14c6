using System.Collections.Immutable;
using ToolWear.Core.Findings;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.Core.Wear;

/// <summary>Which of several tools for the same work to use next: the most worn of those that may be offered.</summary>
/// <remarks>The one rule for rack, hammer, "as last time", the helper's sheet: <see cref="Judged.MayBeNext"/>.</remarks>
public static class NextToTake
{
    /// <summary>Picks one tool for each eye, place and form that has any to take.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The numbers of the tools to take.</returns>
    public static ImmutableHashSet<long> Of(ShopForecasts shop) =>
        [.. Twins(shop).Select(twins => Pick(shop, twins)).OfType<ToolForecast>().Select(each => each.Tool.Id)];

    /// <summary>The places of the rack that have tools in service and none to use next.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The tools of each, in the order of the rack.</returns>
    public static ImmutableArray<ImmutableArray<ToolForecast>> None(ShopForecasts shop) =>
        [.. Twins(shop).Where(twins => Pick(shop, twins) is null)];

    private static IEnumerable<ImmutableArray<ToolForecast>> Twins(ShopForecasts shop) =>
        shop
            .InService.GroupBy(each => (each.Tool.Tool.Eye, each.Tool.Tool.Place, each.Tool.Tool.Form))
            .Select(twins => twins.ToImmutableArray());

    private static ToolForecast? Pick(ShopForecasts shop, ImmutableArray<ToolForecast> twins) =>
        twins.Where(each => shop.VerdictOf(each).MayBeNext).MaxBy(Worn);

    /// <summary>The share of its limit that is gone at the gauge mark that ends it first.</summary>
    private static double Worn(ToolForecast tool)
    {
        double? wornMm = tool.Deciding?.WearNowMm ?? tool.Deciding?.History.LastKnownWearMm;
        return wornMm / tool.Deciding?.History.Wear.LimitMm ?? 0;
    }
}
