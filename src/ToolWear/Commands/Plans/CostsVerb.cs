using System.CommandLine;
using System.Text.Json;
using ToolWear.Commands.Calls;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Pens;
using ToolWear.Results;

namespace ToolWear.Commands.Plans;

/// <summary>costs: what tooling costs a heat and a head, and whether a rework pays.</summary>
internal static class CostsVerb
{
    private static readonly Option<string?> Reforge = Common.Text(
        "--reforge",
        "TOOL",
        "whether re-forging this tool pays, with --hours and --gains"
    );
    private static readonly Option<string?> Hours = Common.Text("--hours", "H", "hours that the rework takes");
    private static readonly Option<string?> Gains = Common.Text("--gains", "N", "weighted heats that it gains");
    private static readonly Option<string?> Cost = Common.Text("--cost", "C", "what else the rework costs");

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "costs",
            "Shows what tools cost to make, a heat and a head, as forecast and as found on scrapped ones, in the shop's\n"
                + "own money at its own hourly rate (set hour_rate). As csv the tools; as json both. With --reforge says\n"
                + "whether a rework is the cheaper heat or a new tool.",
            "costs --reforge H4 --hours 0.4 --gains 20",
            [Reforge, Hours, Gains, Cost],
            Run
        );

    private static void Run(Call call)
    {
        using Bench bench = call.ToRead();
        if (call.Get(Reforge) is { } mark)
        {
            Weigh(call, bench.Shop, Call.Find(bench.Shop, Call.ReadMark(mark)));
            return;
        }

        if ((call.Get(Hours) ?? call.Get(Gains) ?? call.Get(Cost)) is not null)
        {
            throw RefusedException.WrongUsage("--hours, --gains and --cost go with --reforge");
        }

        ToolingCosts costs = ToolingCosts.Of(new ShopLives(ShopForecasts.Of(bench.Shop)));
        Table places = CostTables.Places(costs);
        Table heads = CostTables.Heads(costs);
        switch (call.Format())
        {
            case "csv":
                call.Print(places.ToCsv());
                break;
            case "json":
                call.Print(JsonPen.Of(json => Write(json, places, heads)));
                break;
            default:
                call.Print(
                    Words.ShopHeading(bench.Shop, call.Units(bench.Shop))
                        + $"{places.ToText()}\n{Words.HeadCostHeading}\n\n{heads.ToText()}\n"
                        + string.Concat(costs.Places.SelectMany(Words.CostAssumptions).Select(line => line + "\n"))
                        + $"{Words.CostBasis}\n"
                );
                break;
        }
    }

    private static void Weigh(Call call, Shop shop, ToolInShop tool)
    {
        double gains = call.Need(Gains);
        if (gains <= 0)
        {
            throw RefusedException.WrongUsage("--gains: heats above zero");
        }

        ToolPlace place = ToolPlace.Of(tool.Tool);
        PlaceCost cost = PlaceCost.Usual(shop, place);
        if (cost.Total is not { } total)
        {
            throw RefusedException.WrongData(Words.NoCostOf(place));
        }

        double rework = (call.Need(Hours) * (double)shop.Settings.HourRate) + call.Or(Cost, 0);
        Estimate life = new ShopLives(ShopForecasts.Of(shop)).At(place).NewLife;
        ReforgeOrScrap answer = ReforgeOrScrap.Of(rework, gains, (double)total, life);
        FigureOptions.Print(
            call,
            new Calculated([
                new("tool", "Tool", Cell.Of(tool.Mark.Text)),
                new("reforge", "Answer", Cell.Of(answer.Reforge ? "yes" : "no", Words.ReforgeAnswer(answer))),
                new("rework_a_heat", "Rework, a heat", Cell.Of(answer.ReworkAHeat, FigureOptions.Decimals(2))),
                new("new_a_heat", "New one, a heat", Cell.Of(answer.NewAHeat.Value, FigureOptions.Decimals(2))),
                new("new_a_heat_lo90", "from", Cell.Of(answer.NewAHeat.Low90, FigureOptions.Decimals(2))),
                new("new_a_heat_hi90", "to", Cell.Of(answer.NewAHeat.High90, FigureOptions.Decimals(2))),
            ]),
            $"\n{Words.ReforgeBasis}\n{Words.RestoringCautions}\n"
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
