using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.Core.Deeds;

/// <summary>Reading a gauge mark with the caliper.</summary>
/// <param name="Entry">What is recorded; the session that it counts after is found where none was named.</param>
/// <param name="Doubt">Where it was expected, where it lies outside; null where it lies inside or nobody can say.</param>
public sealed record Measuring(ToolMeasured Entry, ExpectedReading? Doubt)
{
    /// <summary>A reading as it was said.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="before">The tool's forecast of before; null where there is none yet.</param>
    /// <param name="said">The reading; without a session it counts after the tool's last.</param>
    /// <returns>The deed.</returns>
    public static Measuring Of(Shop shop, ToolInShop tool, ToolForecast? before, ToolMeasured said) =>
        new(
            said with
            {
                Session = said.Session ?? SessionBefore(shop, tool, said.On),
            },
            Expected(shop, tool, before, said.Gauge) is { } expected && !expected.Holds(said.Size) ? expected : null
        );

    /// <summary>Where the next reading of a gauge mark is expected.</summary>
    /// <param name="shop">The shop; heats since the forecast count.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="before">The tool's forecast; null where there is none yet.</param>
    /// <param name="gauge">The gauge mark's name.</param>
    /// <returns>The range; null where no forecast speaks.</returns>
    public static ExpectedReading? Expected(Shop shop, ToolInShop tool, ToolForecast? before, string gauge) =>
        History(shop, tool, gauge) is { } history
            ? ExpectedReading.Of(
                before?.Gauges.FirstOrDefault(each => each.History.Gauge.Name == gauge),
                history.Wear.HeatsNow
            )
            : null;

    /// <summary>The readings of a gauge mark.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="gauge">The gauge mark's name.</param>
    /// <returns>Its history; null where the tool has no such gauge mark.</returns>
    public static GaugeHistory? History(Shop shop, ToolInShop tool, string? gauge) =>
        ShopHistories.Of(shop, tool).FirstOrDefault(each => each.Gauge.Name == gauge);

    /// <summary>The last session a tool worked in by a day, unless it was reworked since: then the day itself counts.</summary>
    private static string? SessionBefore(Shop shop, ToolInShop tool, DateOnly on)
    {
        LedgerEntry? last = shop.HistoryOf(tool)
            .Where(each => each.Place.Day <= on)
            .Select(each => each.Entered.What)
            .LastOrDefault(what => what is HeatsWorked or ToolReworked);
        return (last as HeatsWorked)?.Session;
    }
}
