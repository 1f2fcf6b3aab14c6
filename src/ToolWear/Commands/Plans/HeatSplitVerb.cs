using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Results;

namespace ToolWear.Commands.Plans;

/// <summary>heat-split: where to spend the heats of a head, on the rough drift or on the finish drift.</summary>
internal static class HeatSplitVerb
{
    private static readonly Option<string?> Pattern = Common.Text(
        "--pattern",
        "P",
        "a pattern of the shop: costs, lives and heats are its own"
    );
    private static readonly Option<string?> RoughCost = Common.Text("--rough-cost", "C", "what a rough drift costs");
    private static readonly Option<string?> RoughLife = Common.Text("--rough-life", "N", "heats that it lasts");
    private static readonly Option<string?> FinishCost = Common.Text("--finish-cost", "C", "what a finish drift costs");
    private static readonly Option<string?> FinishLife = Common.Text("--finish-life", "N", "heats that it lasts");
    private static readonly Option<string?> HeatCost = Common.Text(
        "--heat-cost",
        "C",
        "fuel and time of a heat; nothing where not given"
    );
    private static readonly Option<string?> Least = Common.Text("--least", "N", "finish heats that are always needed");
    private static readonly Option<string?> More = Common.Text("--more", "N", "how many more without any rough heat");
    private static readonly Option<string?> Helps = Common.Text(
        "--helps",
        "N",
        "rough heats that take two thirds of those away"
    );

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "heat-split",
            "Says how many rough heats a head should have before the finish drift goes in, by what the two drifts cost a\n"
                + "heat. How finish heats fall is fitted from sessions that differ, or given by --least, --more, --helps.",
            "heat-split --rough-cost 25 --rough-life 60 --finish-cost 120 --finish-life 250 --heat-cost 1.5 --least 2 --more 10 --helps 2.5",
            [Pattern, RoughCost, RoughLife, FinishCost, FinishLife, HeatCost, Least, More, Helps],
            Run
        );

    private static void Run(Call call)
    {
        double heat = call.Or(HeatCost, 0);
        if (call.Get(Pattern) is { } name)
        {
            Refuse(call, "go without --pattern", RoughCost, RoughLife, FinishCost, FinishLife);
            using Bench bench = call.ToRead();
            PatternDescribed pattern =
                bench.Shop.Patterns.GetValueOrDefault(name)
                ?? throw RefusedException.WrongData(Words.NoPattern(name, bench.Shop));
            ShopLives lives = new(ShopForecasts.Of(bench.Shop));
            double rough = AHeat(lives, pattern, Place.Rough) + heat;
            double finish = AHeat(lives, pattern, Place.Finish) + heat;
            Answer(call, rough, finish, Given(call) ?? Fitted(bench.Shop, pattern));
        }
        else
        {
            Answer(
                call,
                (call.Need(RoughCost) / Life(call, RoughLife)) + heat,
                (call.Need(FinishCost) / Life(call, FinishLife)) + heat,
                Given(call) ?? throw RefusedException.WrongUsage("--least, --more and --helps are wanted, or --pattern")
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
        Func<double, string> money = FigureOptions.Decimals(2);
        call.Print(
            new Calculated([
                new("whole_heats", "Rough heats a head", Cell.Of(split.WholeHeats)),
                new("cost_at_whole", "Cost of its heats", Cell.Of(split.CostAtWhole, money)),
                new("cost_without", "With none", Cell.Of(split.CostWithout, money)),
                new("saving", "Saved on a head", Cell.Of(split.Saving, money)),
                new("rough_heats", "Best, not in whole heats", Cell.Of(split.RoughHeats, money)),
                new("cost_at_best", "Cost there", Cell.Of(split.CostAtBest, money)),
                new("cost_a_rough_heat", "A rough heat costs", Cell.Of(split.CostARoughHeat, money)),
                new("cost_a_finish_heat", "A finish heat costs", Cell.Of(split.CostAFinishHeat, money)),
                new("least_finish_heats", "Finish heats always needed", Cell.Of(falls.Least, money)),
                new("more_without_rough", "More without rough heats", Cell.Of(falls.More, money)),
                new("rough_heats_that_help", "Rough heats that take 2/3 away", Cell.Of(falls.Helps, money)),
                new("sessions", "Sessions it rests on", Cell.Of(falls.Sessions, n => n > 0 ? Words.About(n) : "given")),
            ]),
            $"\n{Words.SplitBasis}\n"
        );
    }

    private static double AHeat(ShopLives lives, PatternDescribed pattern, Place place)
    {
        ToolPlace? tools = pattern
            .Stages.Where(stage => stage.Place == place && stage.Form is not null)
            .Select(stage => (ToolPlace?)new ToolPlace(stage.Eye, stage.Place, stage.Form!.Name))
            .FirstOrDefault();
        return tools is not { } there ? throw RefusedException.WrongData(Words.NoStageAt(pattern.Pattern, place))
            : ToolingCosts.AHeat(PlaceCost.Usual(lives.Shop, there).Total, lives.At(there).NewLife) is Estimate aHeat
                ? aHeat.Value
            : throw RefusedException.WrongData(Words.NoCostOf(there));
    }

    private static FinishHeatsFit Fitted(Shop shop, PatternDescribed pattern) =>
        FinishHeatsFit.Of(FinishHeatsFit.InSessions(shop, pattern)) switch
        {
            FinishHeatsFit fit => fit,
            NotEnoughData missing => throw RefusedException.WrongData(Words.SplitMissing(missing)),
            _ => throw new InvalidOperationException("neither a fit nor a reason"),
        };

    private static FinishHeatsFit? Given(Call call)
    {
        ImmutableArray<Option<string?>> options = [Least, More, Helps];
        return options.All(option => call.Get(option) is null)
            ? null
            : new FinishHeatsFit(call.Need(Least), call.Need(More), call.Need(Helps), 0, 0);
    }

    private static double Life(Call call, Option<string?> option) =>
        call.Need(option) is > 0 and var life
            ? life
            : throw RefusedException.WrongUsage($"{option.Name}: heats above zero");

    private static void Refuse(Call call, string why, params ReadOnlySpan<Option<string?>> options)
    {
        foreach (Option<string?> option in options)
        {
            if (call.Get(option) is not null)
            {
                throw RefusedException.WrongUsage($"{option.Name}: figures {why}");
            }
        }
    }
}
