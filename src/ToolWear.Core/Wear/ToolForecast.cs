using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Core.Wear;

/// <summary>A tool with the forecasts of its gauge marks. Its own end is the earliest over them.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Gauges">One for each gauge mark, in their order.</param>
/// <param name="UsualSession">Weighted heats of its next usual session.</param>
public sealed record ToolForecast(ToolInShop Tool, ImmutableArray<GaugeForecast> Gauges, double UsualSession)
{
    /// <summary>The gauge mark that ends the tool first: the largest chance to be past its limit after the next usual session.</summary>
    /// <remarks>Where no forecast speaks, the first gauge mark with a limit; null where none has one.</remarks>
    public GaugeForecast? Deciding =>
        Gauges
            .Where(each => each.Forecast is not null)
            .OrderByDescending(each => each.Forecast!.ChancePastLimit(UsualSession))
            .ThenBy(each => each.Forecast!.HeatsLeft.Q50 ?? HeatsLeft.Most)
            .FirstOrDefault()
        ?? Gauges.FirstOrDefault(each => each.History.Wear.LimitMm is not null);

    /// <summary>F(k): the chance that the tool is past its limit after k more heats, the largest over its gauge marks.</summary>
    /// <param name="moreHeats">k in weighted heats, zero or more.</param>
    /// <returns>The chance, or null where no forecast speaks.</returns>
    public double? ChancePastLimit(double moreHeats) => Gauges.Max(each => each.Forecast?.ChancePastLimit(moreHeats));

    /// <summary>Forecasts a tool by its own line.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>Its forecasts.</returns>
    public static ToolForecast Of(Shop shop, ToolInShop tool) =>
        new(tool, [.. ShopHistories.Of(shop, tool).Select(ByItsOwnLine)], ShopHistories.UsualSession(shop, tool));

    private static GaugeForecast ByItsOwnLine(GaugeHistory history)
    {
        ThisToolAlone alone = ThisToolAlone.Of(history.Wear);
        return new(history, alone, alone.Forecast);
    }
}
