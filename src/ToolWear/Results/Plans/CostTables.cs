using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Wording;
using Head = ToolWear.Results.Column<ToolWear.Core.Planning.HeadCost>;
using Tool = ToolWear.Results.Column<ToolWear.Core.Planning.PlaceHeatCost>;

namespace ToolWear.Results.Plans;

/// <summary>What tooling costs a heat and a head.</summary>
internal static class CostTables
{
    /// <summary>What the tools of each place cost.</summary>
    public static Columns<PlaceHeatCost> Places { get; } =
    [
        .. Tool.Tools("Tool", place => place.Tools),
        Tool.Number("cost", "Cost", place => (double?)place.Cost.Total, Quantity.Money)
            .Means("what a batch or a tool cost"),
        Tool.Text("not_noted", null, place => string.Join("; ", Words.Unknown(place.Cost)))
            .Means("parts of the cost that nobody ever noted"),
        Tool.Text("of_other_eyes", null, place => string.Join("; ", place.Cost.Borrowed))
            .Means("tools of other eyes that serve"),
        Tool.Number("life_heats", "Life", place => place.Life.Value, Quantity.Heats),
        Tool.Number("life_lo90", "from", place => place.Life.Low90, Quantity.Heats)
            .Means("nine times in ten it lasts at least so many heats"),
        Tool.Number("life_hi90", "to", place => place.Life.High90, Quantity.Heats)
            .Means("nine times in ten it lasts at most so many heats"),
        Tool.Number("cost_a_heat", "A heat", place => (place.CostAHeat as Estimate)?.Value, Quantity.Money)
            .Means("tooling for one heat"),
        Tool.Number("cost_a_heat_lo90", "from", place => (place.CostAHeat as Estimate)?.Low90, Quantity.Money)
            .Means("nine times in ten at least so much"),
        Tool.Number("cost_a_heat_hi90", "to", place => (place.CostAHeat as Estimate)?.High90, Quantity.Money)
            .Means("nine times in ten at most so much"),
        Tool.Number("scrapped", "Scrapped", place => place.Scrapped)
            .Means("scrapped tools: in costs those whose lives are known, in year those scrapped in it"),
        Tool.Number("true_life_heats", "True life", place => place.TrueLife, Quantity.Heats)
            .Means("the life as found on scrapped tools"),
        Tool.Number("true_cost_a_heat", "True a heat", place => place.TrueCostAHeat, Quantity.Money)
            .Means("tooling for one heat as found on scrapped tools"),
        Tool.Text("steel", null, place => place.Steel),
        .. Parts<PlaceHeatCost>(place => place.Cost, _ => 1),
    ];

    /// <summary>The parts of a cost, which add up to it.</summary>
    public static IEnumerable<Column<T>> Parts<T>(Func<T, PlaceCost> cost, Func<T, int> number) =>
        [
            Column<T>.Number("steel_cost", null, row => (double?)(cost(row).Steel * number(row)), Quantity.Money),
            Column<T>
                .Number("hours_cost", null, row => (double?)(cost(row).HoursCost * number(row)), Quantity.Money)
                .Means("what its hours cost at the shop's hourly rate"),
            Column<T>.Number("treat_cost", null, row => (double?)(cost(row).Treatment * number(row)), Quantity.Money),
        ];

    /// <summary>What a head of each pattern costs.</summary>
    public static Columns<HeadCost> Heads { get; } =
    [
        Head.Text("pattern", "Pattern", head => head.Pattern),
        Head.Number("cost_a_head", "A head", head => (head.CostAHead as Estimate)?.Value, Quantity.Money)
            .Means("tooling for one head"),
        Head.Number("cost_a_head_lo90", "from", head => (head.CostAHead as Estimate)?.Low90, Quantity.Money)
            .Means("nine times in ten at least so much"),
        Head.Number("cost_a_head_hi90", "to", head => (head.CostAHead as Estimate)?.High90, Quantity.Money)
            .Means("nine times in ten at most so much"),
        Head.Number("true_cost_a_head", "True a head", head => head.TrueCostAHead, Quantity.Money)
            .Means("tooling for one head as found on scrapped tools"),
        Head.Number("true_stages", "at stages", head => head.TrueStages).Means("stages that the found cost covers"),
        Head.Number("stages", "of", head => head.Stages).Means("stages of a pattern"),
        Head.Text("without_stages", "Without", head => string.Join("; ", head.WithoutStages), none: "")
            .Means("stages that nothing is known of"),
    ];
}
