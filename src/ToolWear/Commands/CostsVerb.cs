using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Tables;

namespace ToolWear.Commands;

/// <summary>costs: what tooling costs a heat and a head.</summary>
internal static class CostsVerb
{
    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "costs",
            "Shows what tools cost to make, a heat and a head, as forecast and as found on scrapped ones, in the shop's\n"
                + "own money at its own hourly rate (set hour_rate). As csv the tools; as json both.",
            "costs",
            [],
            Run
        );

    private static void Run(Call call)
    {
        using Bench bench = call.ToRead();
        ToolingCosts costs = ToolingCosts.Of(new ShopLives(ShopForecasts.Of(bench.Shop)));
        Table places = PlaceTable(costs);
        Table heads = HeadTable(costs);
        switch (call.Format())
        {
            case "csv":
                call.Print(places.ToCsv());
                break;
            case "json":
                call.Print(JsonText.Of(json => Write(json, places, heads)));
                break;
            default:
                call.Print(
                    Words.ShopHeading(bench.Shop, call.Units(bench.Shop))
                        + $"{places.ToText()}\nTooling a head, apart from bar, fuel and handle\n\n{heads.ToText()}\n{Words.CostBasis}\n"
                );
                break;
        }
    }

    private static void Write(Utf8JsonWriter json, Table places, Table heads)
    {
        json.WriteStartObject();
        json.WritePropertyName("tools");
        places.Write(json);
        json.WritePropertyName("heads");
        heads.Write(json);
        json.WriteEndObject();
    }

    private static Table PlaceTable(ToolingCosts costs) =>
        new(
            [
                new("eye", null),
                new("place", null),
                new("form", null),
                new(null, "Tool"),
                new("cost", "Cost"),
                new("not_noted", null),
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
            [.. costs.Places.Select(PlaceRow)]
        );

    private static ImmutableArray<Cell> PlaceRow(PlaceHeatCost place)
    {
        Func<double, string> money = FigureOptions.Decimals(2);
        Estimate? aHeat = place.CostAHeat as Estimate;
        return
        [
            Cell.Of(place.Tools.Eye),
            Cell.Of(place.Tools.Place == Place.None ? null : Places.Words.Word(place.Tools.Place)),
            Cell.Of(place.Tools.Form),
            Cell.Of(place.Tools.ToString()),
            Cell.Of((double?)place.Cost.Total, money),
            Cell.Of(string.Join("; ", Words.Unknown(place.Cost))),
            Cell.Of(place.Life.Value, Words.About),
            Cell.Of(place.Life.Low90, Words.About),
            Cell.Of(place.Life.High90, Words.About),
            Cell.Of(aHeat?.Value, money),
            Cell.Of(aHeat?.Low90, money),
            Cell.Of(aHeat?.High90, money),
            Cell.Of(place.Scrapped),
            Cell.Of(place.TrueLife, Words.About),
            Cell.Of(place.TrueCostAHeat, money),
        ];
    }

    private static Table HeadTable(ToolingCosts costs) =>
        new(
            [
                new("pattern", "Pattern"),
                new("cost_a_head", "A head"),
                new("cost_a_head_lo90", "from"),
                new("cost_a_head_hi90", "to"),
                new("without_stages", "Without"),
            ],
            [.. costs.Heads.Select(HeadRow)]
        );

    private static ImmutableArray<Cell> HeadRow(HeadCost head)
    {
        Func<double, string> money = FigureOptions.Decimals(2);
        Estimate? cost = head.CostAHead as Estimate;
        return
        [
            Cell.Of(head.Pattern),
            Cell.Of(cost?.Value, money),
            Cell.Of(cost?.Low90, money),
            Cell.Of(cost?.High90, money),
            Cell.Of(string.Join("; ", head.WithoutStages), shownIfEmpty: ""),
        ];
    }
}
