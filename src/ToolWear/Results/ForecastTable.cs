using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear;

namespace ToolWear.Results;

/// <summary>The forecast of every gauge mark, with the pinned columns.</summary>
internal static class ForecastTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("kind", null),
        new("group", null),
        new("tool", "Tool"),
        new("gauge", "Gauge"),
        new("heats_now", "Heats"),
        new("readings", "Read"),
        new("wear_now_mm", "Worn"),
        new("limit_mm", "Of"),
        new("rate_mm_per_heat", null),
        new("heats_left", "Left"),
        new("left_lo80", null),
        new("left_hi80", null),
        new("left_lo90", "from"),
        new("left_hi90", "to"),
        new(null, ""),
        new("life_heats", null),
        new("chance_past_limit", "Past"),
        new("line_rate_mm_per_heat", "A heat"),
        new("line_se", null),
        new("line_readings", null),
        new(null, "What is not known"),
        new("p_first_cut", null),
        new("p_faster", null),
        new("p_slower", null),
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="gauges">The gauge marks.</param>
    /// <param name="units">The unit for people.</param>
    /// <param name="load">How hard the planned work is against the usual, above zero; heats left are heats of that work.</param>
    /// <returns>A row for each.</returns>
    public static Table Of(IEnumerable<GaugeForecast> gauges, LengthUnit units, double load = 1) =>
        new(
            Columns,
            [
                .. gauges.Select(gauge =>
                    Row(gauge.History.Wear, gauge.Alone, gauge.Outlook, gauge.FollowedToItsLimit, units, load)
                ),
            ]
        );

    /// <summary>Makes the table of histories that come from no store.</summary>
    /// <param name="histories">The histories with their forecasts.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>A row for each.</returns>
    public static Table Of(IEnumerable<Forecasted> histories, LengthUnit units) =>
        new(
            Columns,
            [
                .. histories.Select(each =>
                    Row(each.History, ThisToolAlone.Of(each.History), each.Outlook, each.FollowedToItsLimit, units, 1)
                ),
            ]
        );

    private static ImmutableArray<Cell> Row(
        WearHistory wear,
        ThisToolAlone alone,
        Estimated outlook,
        bool isFollowed,
        LengthUnit units,
        double load
    )
    {
        Forecast? forecast = outlook as Forecast;
        // a tool without sizes has no wear in mm
        Forecast? sized = wear.LimitMm is null ? null : forecast;
        KindTraits? traits = (forecast as SisterForecast)?.Traits;
        LineThroughStart? line = alone.Line;
        // files hold what would be left were it not past its limit; people are told that it is
        HeatsLeft? left = forecast?.HeatsLeftIfNotPast.AtLoad(load);
        string Left(double heats) => forecast is { AtOrPastLimit: true } ? Words.Past : Words.About(heats);
        string Wear(double mm) => SizeShown.Wear(mm, units);
        string Rate(double mm) => SizeShown.Rate(mm, units);
        return
        [
            Cell.Of(wear.Kind),
            Cell.Of(wear.Group),
            Cell.Of(wear.Tool),
            Cell.Of(wear.Gauge),
            Cell.Of(wear.HeatsNow),
            Cell.Of(wear.Last.Readings.Length),
            Cell.Of(sized?.WearNowMm, Wear),
            Cell.Of(wear.LimitMm, Wear),
            Cell.Of((sized?.RateMmPerHeat as Estimate)?.Value, Rate),
            Cell.Of(left?.Q50, Left),
            Cell.Of(left?.Q10, Left),
            Cell.Of(left?.Q90, Left),
            Cell.Of(left?.Q05, Left),
            Cell.Of(left?.Q95, Left),
            Cell.Of(forecast is null || isFollowed ? "" : Words.NotFollowedMark, none: ""),
            Cell.Of((forecast?.LifeHeats as Estimate)?.Value, Words.About),
            Cell.Of(forecast?.ChancePastLimitNow, Percent),
            Cell.Of(line?.Slope, Rate),
            Cell.Of(line?.SlopeSe, Rate),
            Cell.Of(line?.Readings),
            Cell.Of(NotKnown(wear, outlook)),
            Cell.Of(traits?.ChanceOfFirstCut),
            Cell.Of(traits?.ChanceOfFaster),
            Cell.Of(traits?.ChanceOfSlower),
        ];
    }

    /// <summary>A chance in words of hundreds.</summary>
    /// <param name="chance">0 to 1.</param>
    /// <returns>For example "12%".</returns>
    public static string Percent(double chance) => (chance * 100).ToString("0", CultureInfo.InvariantCulture) + "%";

    private static string? NotKnown(WearHistory wear, Estimated outlook) =>
        outlook is NotEnoughData missing ? missing.Why
        : wear.GuessIsAssumed ? Words.Guess(wear, outlook)
        : null;
}
