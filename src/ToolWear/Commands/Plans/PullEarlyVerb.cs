using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Doors;
using ToolWear.Results.Plans;
using ToolWear.Wording;

namespace ToolWear.Commands.Plans;

/// <summary>pull-early: when to take a tool out before it fails, where the records tell of sudden failures.</summary>
internal static class PullEarlyVerb
{
    private static readonly Argument<ToolMark?> Tool = Said.MaybeTool("a tool; or figures alone");
    private static readonly Option<double?> Planned = Said.Number(
        "--planned",
        "CP",
        "what a planned change costs; usually 5 minutes at the shop's hourly rate"
    );
    private static readonly Option<double?> Failure = Said.Number(
        "--failure",
        "CF",
        "what a failure costs; usually 20 minutes at that rate, and --head"
    );
    private static readonly Option<double?> Head = Said.Number("--head", "C", "what the spoilt head has cost so far");
    private static readonly Option<double?> Session = Said.Number(
        "--session",
        "S",
        "weighted heats of the next session; usually as the tool's last"
    );
    private static readonly Option<double?> Median = Said.Number(
        "--life-median",
        "M",
        "figures alone: heats by which half of such tools have failed"
    );
    private static readonly Option<double?> SdLog = Said.Number(
        "--life-sdlog",
        "S",
        "figures alone: the spread of the logarithm of the life"
    );

    public static Verb Verb { get; } =
        new(
            "pull-early",
            "Says when to pull a tool before it cracks.",
            "pull-early HS2 --planned 5 --failure 40",
            [Tool, Planned, Failure, Head, Session, Median, SdLog],
            Run,
            "It also says whether to change this tool before its next session. Where too few have failed it says so; then looking it over decides."
        );

    private static void Run(Call call)
    {
        if (call.Get(Tool) is not null == call.Has(Median))
        {
            throw RefusedException.WrongUsage("give one of TOOL and --life-median");
        }

        if (call.Get(Tool) is not { } mark)
        {
            FromFigures(call);
            return;
        }

        ToolInShop tool = call.Tool(mark);
        (double cp, double cf) = Costs(call);
        ShopForecasts forecasts = call.Forecasts;
        EarlyPulling answer = EarlyPulling.Of(
            new ShopLives(forecasts),
            forecasts.Of(tool.Id),
            cp,
            cf,
            call.Get(Session)
        );
        call.Print(
            DecisionTables.PullEarly.Of(new(tool.Mark, answer)),
            after: $"\n{PlanWords.FailedAt(answer)}\n{Cautions.ForecastCaution}\n"
        );
    }

    private static (double Planned, double Failure) Costs(Call call)
    {
        double minute = (double)(call.Shop.Settings.HourRate ?? 0) / 60;
        double cp = call.Get(Planned) ?? (ChangeBeforeSession.MinutesOfAChange * minute);
        double cf = call.Get(Failure) ?? ((ChangeBeforeSession.MinutesLost * minute) + (call.Get(Head) ?? 0));
        return cp > 0 && cf > 0
            ? (cp, cf)
            : throw RefusedException.WrongUsage(
                "give --planned and --failure, above zero; or set hour_rate, from which the usual follow"
            );
    }

    private static void FromFigures(Call call)
    {
        LogNormalLife life = LogNormalLife.TryMake(
            call.Need(Median),
            call.Need(SdLog),
            null,
            out LogNormalLife? found,
            out string? refusal
        )
            ? found
            : throw RefusedException.WrongUsage(refusal);
        double cp = call.Need(Planned);
        double cf = call.Need(Failure);
        if (cp <= 0 || cf <= 0)
        {
            throw RefusedException.WrongUsage("--planned and --failure: costs above zero");
        }

        // figures are taken as they are given
        AgeReplacement age = (AgeReplacement)AgeReplacement.Of(life, cp, cf, int.MaxValue);
        call.Print(DecisionTables.PullAt.Of(age));
    }
}
