using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Histories;
using ToolWear.Screens.ToolRack;

namespace ToolWear.Screens.CaliperRound;

/// <summary>What wants measuring: which tools, in which order, at which gauge marks.</summary>
public static class ToMeasure
{
    // a shop never changes, so what was worked out for it holds for every key until the next entry
    private static readonly ConditionalWeakTable<Shop, ConcurrentDictionary<long, double>> Since = [];

    /// <summary>The tools in service: those that worked since they were last read, the ones of the last session first.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>All tools in service, and how many of them want measuring.</returns>
    public static (ImmutableArray<long> Tools, int Wanting) List(Shop shop)
    {
        HashSet<string> last =
        [
            .. shop
                .Sessions.Values.OrderByDescending(each => (each.On, each.Opening))
                .Take(1)
                .Select(each => each.Name),
        ];
        (ToolInShop Tool, bool IsLast, double Heats)[] tools =
        [
            .. ToolRackText
                .InService(shop)
                .Select(tool =>
                    (
                        tool,
                        tool.Events.Exists(each => each.What is HeatsWorked heats && last.Contains(heats.Session)),
                        HeatsSince(shop, tool)
                    )
                ),
        ];
        (ToolInShop Tool, bool IsLast, double Heats)[] wanting =
        [
            .. tools.Where(each => each.Heats > 0).OrderByDescending(each => each.IsLast),
        ];
        return (
            [
                .. wanting.Select(each => each.Tool.Id),
                .. tools.Where(each => each.Heats <= 0).Select(each => each.Tool.Id),
            ],
            wanting.Length
        );
    }

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
    public static double HeatsSince(Shop shop, ToolInShop tool) =>
        Since.GetValue(shop, _ => []).GetOrAdd(tool.Id, _ => WorkOut(shop, tool));

    private static double WorkOut(Shop shop, ToolInShop tool)
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
