using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;
using ToolWear.Core.Wear.Verdicts;

namespace ToolWear.Core.Wear;

/// <summary>The whole shop as it stands: every tool with its forecasts, and the verdicts of those that are not scrapped.</summary>
/// <param name="Shop">The shop it was made from.</param>
/// <param name="All">Every tool there ever was, by its number; scrapped ones are sisters to the others.</param>
/// <param name="Tools">The tools in service, then those set aside, each in the order of the rack.</param>
/// <param name="VerdictsById">The verdicts by the tool's number.</param>
public sealed record ShopForecasts(
    Shop Shop,
    ImmutableSortedDictionary<long, ToolForecast> All,
    ImmutableArray<ToolForecast> Tools,
    ImmutableDictionary<long, Judged> VerdictsById
)
{
    /// <summary>The measured eyes beside the drifts that made them.</summary>
    public EyesMade Eyes { get; } = EyesMade.Of(Shop, All);

    /// <summary>The tools in service.</summary>
    public IEnumerable<ToolForecast> InService => Tools.Where(each => each.Tool.State == ToolState.InService);

    /// <summary>Makes the forecasts of a shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="stop">Stops between two kinds of tool.</param>
    /// <returns>The forecasts.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ShopForecasts Of(Shop shop, CancellationToken stop = default)
    {
        ImmutableArray<GaugeHistory> histories =
        [
            .. shop.Tools.Values.SelectMany(tool => ShopHistories.Of(shop, tool)),
        ];
        ImmutableArray<Forecasted> forecasts = Forecasted.InOrder([.. histories.Select(each => each.Wear)], stop);
        KindMemo.KeepOf(histories.Select(each => each.Wear.Kind).Distinct(StringComparer.Ordinal).Count());
        ILookup<long, GaugeForecast> gauges = histories.Zip(forecasts, Gauge).ToLookup(gauge => gauge.History.Tool.Id);
        ImmutableSortedDictionary<long, ToolForecast> all = shop
            .Tools.Values.AsParallel()
            .WithCancellation(stop)
            .Select(tool => new ToolForecast(tool, [.. gauges[tool.Id]], ShopHistories.UsualSession(shop, tool)))
            .ToArray()
            .ToImmutableSortedDictionary(forecast => forecast.Tool.Id, forecast => forecast);
        ImmutableArray<ToolForecast> tools =
        [
            .. all
                .Values.Where(each => each.Tool.State != ToolState.Scrapped)
                .OrderBy(each => each.Tool.State)
                .ThenBy(each => each.Tool, RackOrder.Instance),
        ];
        return new(shop, all, tools, ShopVerdicts.Of(shop, tools));
    }

    /// <summary>The verdict of a tool.</summary>
    /// <param name="tool">One of <see cref="Tools"/>.</param>
    /// <returns>Its verdict.</returns>
    public Judged VerdictOf(ToolForecast tool) => VerdictsById[tool.Tool.Id];

    private static GaugeForecast Gauge(GaugeHistory history, Forecasted forecasted) =>
        new(history, ThisToolAlone.Of(history.Wear), forecasted.Outlook, forecasted.FollowedToItsLimit);
}
