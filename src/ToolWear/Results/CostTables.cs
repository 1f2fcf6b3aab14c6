using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Tools;

namespace ToolWear.Results;

/// <summary>What tooling costs a heat and a head.</summary>
internal static class CostTables
{
    private static readonly Func<double, string> Money = value => value.ToString("F2", CultureInfo.InvariantCulture);

    /// <summary>What the tools of each place cost.</summary>
    /// <param name="costs">The costs.</param>
    /// <returns>A row for each place.</returns>
    public static Table Places(ToolingCosts costs) =>
        new(
            [
                new("eye", null),
                new("place", null),
                new("form", null),
                new(null, "Tool"),
                new("cost", "Cost"),
                new("not_noted", null),
                new("of_other_eyes", null),
                new("life_heats", "Life"),
                new("life_lo90", "from"),
                new("life_hi90", "to"),
                new("cost_a_heat", "A heat"),
                new("cost_a_heat_lo90", "from"),
                new("cost_a_heat_hi90", "to"),
                new("scrapped", "Scrapped"),
                new("true_life_heats", "True life"),
                new("true_cost_a_heat", "True a heat"),
            ],
            [.. costs.Places.Select(Row)]
        );

    /// <summary>What a head of each pattern costs.</summary>
    /// <param name="costs">The costs.</param>
    /// <returns>A row for each pattern.</returns>
    public static Table Heads(ToolingCosts costs) =>
        new(
            [
                new("pattern", "Pattern"),
                new("cost_a_head", "A head"),
                new("cost_a_head_lo90", "from"),
                new("cost_a_head_hi90", "to"),
                new("true_cost_a_head", "True a head"),
                new("true_stages", "at stages"),
                new("stages", "of"),
                new("without_stages", "Without"),
            ],
            [.. costs.Heads.Select(Row)]
        );

    private static ImmutableArray<Cell> Row(PlaceHeatCost place)
    {
        Estimate? aHeat = place.CostAHeat as Estimate;
        return
        [
            Cell.Of(place.Tools.Eye),
            Cell.Of(place.Tools.Place == Place.None ? null : Core.Tools.Places.Words.Word(place.Tools.Place)),
            Cell.Of(place.Tools.Form),
            Cell.Of(place.Tools.ToString()),
            Cell.Of((double?)place.Cost.Total, Money),
            Cell.Of(string.Join("; ", Words.Unknown(place.Cost))),
            Cell.Of(string.Join("; ", place.Cost.Borrowed)),
            Cell.Of(place.Life.Value, Words.About),
            Cell.Of(place.Life.Low90, Words.About),
            Cell.Of(place.Life.High90, Words.About),
            Cell.Of(aHeat?.Value, Money),
            Cell.Of(aHeat?.Low90, Money),
            Cell.Of(aHeat?.High90, Money),
            Cell.Of(place.Scrapped),
            Cell.Of(place.TrueLife, Words.About),
            Cell.Of(place.TrueCostAHeat, Money),
        ];
    }

    private static ImmutableArray<Cell> Row(HeadCost head)
    {
        Estimate? cost = head.CostAHead as Estimate;
        return
        [
            Cell.Of(head.Pattern),
            Cell.Of(cost?.Value, Money),
            Cell.Of(cost?.Low90, Money),
            Cell.Of(cost?.High90, Money),
            Cell.Of(head.TrueCostAHead, Money),
            Cell.Of(head.TrueStages),
            Cell.Of(head.Stages),
            Cell.Of(string.Join("; ", head.WithoutStages), none: ""),
        ];
    }
}
