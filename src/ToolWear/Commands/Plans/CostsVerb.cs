using System.CommandLine;
using System.Text.Json;
using ToolWear.Commands.Calls;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Plans;
using ToolWear.Wording;

namespace ToolWear.Commands.Plans;

/// <summary>costs: what tooling costs a heat and a head, and whether a rework pays.</summary>
internal static class CostsVerb
{
    private static readonly Option<ToolMark?> Reforge = Said.Tool(
        "--reforge",
        "TOOL",
        "whether re-forging this tool pays, with --hours and --gains"
    );
    private static readonly Option<double?> Hours = Said.Number("--hours", "H", "hours that the rework takes");
    private static readonly Option<double?> Gains = Said.Number(
        "--gains",
        "N",
        "weighted heats that it gains",
        gains => gains > 0 ? null : "heats above zero"
    );
    private static readonly Option<double?> Cost = Said.Number("--cost", "C", "what else the rework costs");

    public static Verb Verb { get; } =
        new(
            "costs",
            "Shows what tools cost: to make, a heat, a head.",
            "costs --reforge H4 --hours 0.4 --gains 20",
            [Reforge, Hours, Gains, Cost],
            Run,
            "Costs are in the shop's own money at its own hourly rate (set hour_rate), as forecast and as found on scrapped tools. As csv it gives the tools, as json both. --reforge says whether a rework or a new tool is the cheaper heat."
        );

    private static void Run(Call call)
    {
        if (call.Get(Reforge) is { } mark)
        {
            Weigh(call, call.Tool(mark));
            return;
        }

        call.Without("goes with --reforge", Hours, Gains, Cost);
        ToolingCosts costs = ToolingCosts.Of(new ShopLives(call.Forecasts));
        Table places = CostTables.Places.Over(costs.Places);
        Table heads = CostTables.Heads.Over(costs.Heads);
        call.Print(
            call.Format switch
            {
                "csv" => places.ToCsv(call.HasSemicolons),
                "json" => JsonPen.Of(json => Write(json, places, heads)),
                _ => Words.ShopHeading(call.Shop, call.Units)
                    + $"{call.Text(places)}\n{PlanWords.HeadCostHeading}\n\n{call.Text(heads)}\n"
                    + string.Concat(costs.Places.SelectMany(PlanWords.CostAssumptions).Select(line => line + "\n"))
                    + $"{PlanWords.CostBasis}\n",
            }
        );
    }

    private static void Weigh(Call call, ToolInShop tool)
    {
        ToolPlace place = ToolPlace.Of(tool.Tool);
        PlaceCost cost = PlaceCost.Usual(call.Shop, place);
        if (cost.Total is not { } total)
        {
            throw RefusedException.WrongData(PlanWords.NoCostOf(place));
        }

        double rework = (call.Need(Hours) * (double)(call.Shop.Settings.HourRate ?? 0)) + (call.Get(Cost) ?? 0);
        Estimate life = new ShopLives(call.Forecasts).At(place).NewLife;
        ReforgeOrScrap answer = ReforgeOrScrap.Of(rework, call.Need(Gains), (double)total, life);
        call.Print(
            DecisionTables.Reforge.Of(new(tool.Mark, answer)),
            after: $"\n{PlanWords.ReforgeBasis}\n{Cautions.RestoringCautions}\n"
        );
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
}
