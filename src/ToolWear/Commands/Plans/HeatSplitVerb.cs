using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Doors;
using ToolWear.Results.Plans;
using ToolWear.Wording;

namespace ToolWear.Commands.Plans;

/// <summary>heat-split: where to spend the heats of a head, on the rough drift or on the finish drift.</summary>
internal static class HeatSplitVerb
{
    private static readonly Option<string?> Pattern = Said.Pattern(
        "a pattern of the shop: costs, lives and heats are its own"
    );
    private static readonly Option<double?> RoughCost = Said.Number("--rough-cost", "C", "what a rough drift costs");
    private static readonly Option<double?> RoughLife = Said.Number(
        "--rough-life",
        "N",
        "heats that it lasts",
        AboveZero
    );
    private static readonly Option<double?> FinishCost = Said.Number("--finish-cost", "C", "what a finish drift costs");
    private static readonly Option<double?> FinishLife = Said.Number(
        "--finish-life",
        "N",
        "heats that it lasts",
        AboveZero
    );
    private static readonly Option<double?> HeatCost = Said.Number(
        "--heat-cost",
        "C",
        "fuel and time of a heat; nothing where not given"
    );
    private static readonly Option<double?> Least = Said.Number("--least", "N", "finish heats that are always needed");
    private static readonly Option<double?> More = Said.Number("--more", "N", "how many more without any rough heat");
    private static readonly Option<double?> Helps = Said.Number(
        "--helps",
        "N",
        "rough heats that take two thirds of those away"
    );

    public static Verb Verb { get; } =
        new(
            "heat-split",
            "Weighs rough heats against finish heats.",
            "heat-split --rough-cost 25 --rough-life 60 --finish-cost 120 --finish-life 250 --heat-cost 1.5 --least 2 --more 10 --helps 2.5",
            [Pattern, RoughCost, RoughLife, FinishCost, FinishLife, HeatCost, Least, More, Helps],
            Run,
            "It says how many rough heats a head should have before the finish drift goes in, by what the two drifts cost a heat. How finish heats fall is fitted from sessions that differ, or given by --least, --more, --helps."
        );

    private static void Run(Call call)
    {
        double heat = call.Get(HeatCost) ?? 0;
        if (call.Get(Pattern) is { } name)
        {
            call.Without("goes without --pattern", RoughCost, RoughLife, FinishCost, FinishLife);
            PatternDescribed pattern = Call.Named("pattern", call.Shop.Patterns, name);
            ShopLives lives = new(call.Forecasts);
            double rough = AHeat(lives, pattern, Place.Rough) + heat;
            double finish = AHeat(lives, pattern, Place.Finish) + heat;
            Answer(call, rough, finish, Given(call) ?? Fitted(call.Shop, pattern));
        }
        else
        {
            Answer(
                call,
                (call.Need(RoughCost) / call.Need(RoughLife)) + heat,
                (call.Need(FinishCost) / call.Need(FinishLife)) + heat,
                Given(call) ?? throw RefusedException.WrongUsage("give --least, --more and --helps, or --pattern")
            );
        }
    }

    private static void Answer(Call call, double rough, double finish, FinishHeatsFit falls)
    {
        HeatSplit split = HeatSplit.TryFor(
            rough,
            finish,
            falls.Least,
            falls.More,
            falls.Helps,
            out HeatSplit? found,
            out string? refusal
        )
            ? found
            : throw RefusedException.WrongUsage(refusal);
        call.Print(DecisionTables.HeatSplit.Of(new(split, falls)), after: $"\n{SplitBasis}\n");
    }

    private static double AHeat(ShopLives lives, PatternDescribed pattern, Place place)
    {
        ToolPlace? tools = pattern
            .Stages.Where(stage => stage.Place == place && stage.Form is not null)
            .Select(stage => (ToolPlace?)new ToolPlace(stage.Eye, stage.Place, stage.Form!.Name))
            .FirstOrDefault();
        return tools is not { } there ? throw RefusedException.WrongData(NoStageAt(pattern.Pattern, place))
            : ToolingCosts.AHeat(PlaceCost.Usual(lives.Shop, there).Total, lives.At(there).NewLife) is Estimate aHeat
                ? aHeat.Value
            : throw RefusedException.WrongData(PlanWords.NoCostOf(there));
    }

    private static FinishHeatsFit Fitted(Shop shop, PatternDescribed pattern) =>
        FinishHeatsFit.Of(FinishHeatsFit.InSessions(shop, pattern)) switch
        {
            FinishHeatsFit fit => fit,
            NotEnoughData missing => throw RefusedException.WrongData(SplitMissing(missing)),
            _ => throw new InvalidOperationException("neither a fit nor a reason"),
        };

    private static FinishHeatsFit? Given(Call call) =>
        call.Has(Least) || call.Has(More) || call.Has(Helps)
            ? new FinishHeatsFit(call.Need(Least), call.Need(More), call.Need(Helps), 0, 0)
            : null;

    private static string? AboveZero(double life) => life > 0 ? null : "heats above zero";

    private const string SplitBasis =
        "The cheaper of the two whole numbers about the best. A drift's heat costs its making over its life, and fuel and time.";

    private static string NoStageAt(string pattern, Place place) =>
        $"pattern {pattern} has no stage with a {Places.Words.Word(place)} tool";

    private static string SplitMissing(NotEnoughData missing) =>
        $"{Words.Missing(missing)} Give --least, --more and --helps.";
}
