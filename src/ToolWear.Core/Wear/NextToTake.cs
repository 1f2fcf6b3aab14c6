using System.Collections.Immutable;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Core.Wear.Verdicts;

namespace ToolWear.Core.Wear;

/// <summary>Which of several tools for the same work to take next: the most worn, unless the session would take it past.</summary>
public static class NextToTake
{
    /// <summary>Picks one tool for each eye, place and form that has any to take.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The numbers of the tools to take.</returns>
    public static ImmutableHashSet<long> Of(ShopForecasts shop) =>
        [
            .. shop
                .InService.GroupBy(each => (each.Tool.Tool.Eye, each.Tool.Tool.Place, each.Tool.Tool.Form))
                .Select(twins => Pick(shop, [.. twins]))
                .OfType<ToolForecast>()
                .Select(each => each.Tool.Id),
        ];

    private static ToolForecast? Pick(ShopForecasts shop, ImmutableArray<ToolForecast> twins)
    {
        ToolForecast[] may = [.. twins.Where(each => shop.VerdictOf(each).Verdict >= Verdict.NearItsLimit)];
        return may.Where(each => shop.VerdictOf(each).Verdict > Verdict.NearItsLimit).MaxBy(Worn)
            ?? may.MinBy(each => each.ChancePastLimit(each.UsualSession));
    }

    /// <summary>The share of its limit that is gone at the gauge mark that ends it first.</summary>
    private static double Worn(ToolForecast tool)
    {
        double? wornMm = tool.Deciding?.WearNowMm ?? tool.Deciding?.History.LastKnownWearMm;
        return wornMm / tool.Deciding?.History.Wear.LimitMm ?? 0;
    }
}
