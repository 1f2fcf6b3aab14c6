using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Wear.Histories;

/// <summary>Makes the histories that forecasts start from out of the ledger.</summary>
public static class ShopHistories
{
    /// <summary>The histories of one tool, a gauge mark each.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>One for each of its gauge marks, in their order.</returns>
    public static ImmutableArray<GaugeHistory> Of(Shop shop, ToolInShop tool)
    {
        ImmutableArray<(HistoryPlace Place, Entered Entered)> history = WithEyes(shop, tool);
        return [.. tool.Tool.GaugeMarks.Select(gauge => GaugeWalk.Of(shop, tool, gauge, history))];
    }

    private static ImmutableArray<(HistoryPlace Place, Entered Entered)> WithEyes(Shop shop, ToolInShop tool)
    {
        (HistoryPlace, Entered)[] eyes =
        [
            .. shop
                .EyesMeasured.Where(eye => shop.EyeMakers.GetValueOrDefault(eye.Number) == tool.Id)
                .Select(eye => (shop.PlaceOf(tool, eye), eye)),
        ];
        ImmutableArray<(HistoryPlace Place, Entered Entered)> history = shop.HistoryOf(tool);
        return eyes.Length == 0 ? history : [.. history.Concat(eyes).OrderBy(each => each.Item1)];
    }

    /// <summary>Weighted heats of a tool's next session, as its last three went; ten where it had none yet.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>Weighted heats, above zero.</returns>
    public static double UsualSession(Shop shop, ToolInShop tool)
    {
        // common practice, no source: an evening's work of one tool
        const double assumed = 10;
        double[] last =
        [
            .. shop.HistoryOf(tool)
                .Select(each => each.Entered.What)
                .OfType<HeatsWorked>()
                .GroupBy(heats => heats.Session, StringComparer.Ordinal)
                .Select(session => session.Sum(heats => shop.Weighted(tool.Tool, heats)))
                .TakeLast(3),
        ];
        double mean = last.Length == 0 ? 0 : last.Average();
        return mean > 0 ? mean : assumed;
    }
}
