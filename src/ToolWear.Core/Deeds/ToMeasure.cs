using System.Collections.Immutable;
using ToolWear.Core.Findings;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Core.Deeds;

/// <summary>What to measure: which tools, in which order, at which gauge marks.</summary>
public static class ToMeasure
{
    /// <summary>The tools in service: those that worked since they were last read, the ones of the last session first.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>All tools in service by their numbers, and how many of them want measuring.</returns>
    public static (ImmutableArray<long> Tools, int Wanting) List(Shop shop)
    {
        string? last = shop.Sessions.Values.MaxBy(each => (each.On, each.Opening))?.Name;
        ILookup<bool, ToolInShop> wants = shop
            .Tools.Values.Where(tool => tool.State == ToolState.InService)
            .Order(RackOrder.Instance)
            .ToLookup(tool => Wants(shop, tool));
        return (
            [
                .. wants[true]
                    .OrderByDescending(tool => last is not null && tool.WorkedIn(last))
                    .Select(tool => tool.Id),
                .. wants[false].Select(tool => tool.Id),
            ],
            wants[true].Count()
        );
    }

    // no reading says anything of a tool that is done with; one that was mended wants a look
    private static bool Wants(Shop shop, ToolInShop tool) =>
        LookedOver.Of(shop, tool) is var seen
        && seen.Unread is not { Rule.Wear: WearSays.Nothing }
        && (seen.Mended is not null || HeatsSince(shop, tool) > 0);

    /// <summary>The gauge marks that are read: those with a scrap size, or all where none has one.</summary>
    /// <param name="tool">The tool.</param>
    /// <returns>The gauge marks, none where it has none.</returns>
    public static ImmutableArray<GaugeMark> Gauges(Tool tool) =>
        tool.GaugeMarks.Any(gauge => gauge.ScrapSize is not null)
            ? [.. tool.GaugeMarks.Where(gauge => gauge.ScrapSize is not null)]
            : tool.GaugeMarks;

    /// <summary>Weighted heats since the gauge mark that was read longest ago.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>Heats, 0 where it has not worked since or has no gauge mark.</returns>
    public static double HeatsSince(Shop shop, ToolInShop tool)
    {
        ImmutableArray<GaugeMark> gauges = Gauges(tool.Tool);
        return ShopHistories
            .Of(shop, tool)
            .Where(history => gauges.Contains(history.Gauge))
            .Select(history => history.HeatsSinceKnown)
            .DefaultIfEmpty(0)
            .Max();
    }
}
