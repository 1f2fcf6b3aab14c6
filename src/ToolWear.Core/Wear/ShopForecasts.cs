using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Verdicts;

namespace ToolWear.Core.Wear;

/// <summary>The whole shop as it stands: every tool that is not scrapped with its forecasts and its verdict.</summary>
/// <param name="Shop">The shop it was made from.</param>
/// <param name="Tools">The tools in service, then those set aside, each in the order of the rack.</param>
/// <param name="VerdictsById">The verdicts by the tool's number.</param>
public sealed record ShopForecasts(
    Shop Shop,
    ImmutableArray<ToolForecast> Tools,
    ImmutableDictionary<long, Judged> VerdictsById
)
{
    /// <summary>The tools in service.</summary>
    public IEnumerable<ToolForecast> InService => Tools.Where(each => each.Tool.State == ToolState.InService);

    /// <summary>Makes the forecasts of a shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The forecasts.</returns>
    public static ShopForecasts Of(Shop shop)
    {
        ImmutableArray<ToolForecast> tools =
        [
            .. shop
                .Tools.Values.Where(tool => tool.State != ToolState.Scrapped)
                .OrderBy(tool => tool.State)
                .ThenBy(tool => tool, RackOrder.Instance)
                .Select(tool => ToolForecast.Of(shop, tool)),
        ];
        return new(shop, tools, ShopVerdicts.Of(shop, tools));
    }

    /// <summary>The verdict of a tool.</summary>
    /// <param name="tool">One of <see cref="Tools"/>.</param>
    /// <returns>Its verdict.</returns>
    public Judged VerdictOf(ToolForecast tool) => VerdictsById[tool.Tool.Id];
}
