using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Lifetimes;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.Core.Planning.Decisions;

/// <summary>When to pull tools of a sort early, and whether to change this one before its next session.</summary>
/// <param name="Failures">How many of the sort cracked or broke on record.</param>
/// <param name="HeatsFromNew">The heats of the tool since it was made; null where nobody knows.</param>
/// <param name="Age">An <see cref="AgeReplacement"/>, or why nothing can be said.</param>
/// <param name="SessionHeats">Weighted heats of the session.</param>
/// <param name="Before">A <see cref="ChangeBeforeSession"/>, or why nothing can be said.</param>
public sealed record EarlyPulling(
    int Failures,
    double? HeatsFromNew,
    Estimated Age,
    double SessionHeats,
    Estimated Before
)
{
    // beyond this share of its heats hardly anything of a tool is left to lose
    private const double AlmostNone = 1e-4;

    /// <summary>Weighted heats from new at which tools of its sort cracked or broke, the fewest first.</summary>
    public ImmutableArray<double> FailedAt { get; private init; } = [];

    /// <summary>Weighs a tool of the shop.</summary>
    /// <param name="lives">The lives of the shop's tools.</param>
    /// <param name="tool">The tool with its forecasts.</param>
    /// <param name="costPlanned">cp, what a planned change costs, above zero.</param>
    /// <param name="costFailure">cf, what a failure costs, above zero.</param>
    /// <param name="sessionHeats">Weighted heats of the session; null for the tool's usual one.</param>
    /// <returns>The answer.</returns>
    public static EarlyPulling Of(
        ShopLives lives,
        ToolForecast tool,
        double costPlanned,
        double costFailure,
        double? sessionHeats
    )
    {
        ShopFailures onRecord = ShopFailures.Of(lives.Shop, tool.Tool.Tool);
        SuddenFailures failures = SuddenFailures.Of(onRecord.Lives, lives.Guess(ToolPlace.Of(tool.Tool.Tool)));
        double s = sessionHeats ?? tool.UsualSession;
        double? used = ShopFailures.HeatsFromNew(lives.Shop, tool.Tool);
        Estimated before = used is not { } n
            ? new NotEnoughData(0, 1, "nobody knows its heats from new")
            : ChangeBeforeSession.Of(
                1 - failures.ChanceStanding(n, s),
                MeanLeft(tool, failures, n),
                lives.At(ToolPlace.Of(tool.Tool.Tool)).MeanNewLife,
                costPlanned,
                costFailure,
                onRecord.Failures
            );
        return new EarlyPulling(
            onRecord.Failures,
            used,
            AgeReplacement.Of(SuddenLife.Of(failures), costPlanned, costFailure, onRecord.Failures),
            s,
            before
        )
        {
            FailedAt = [.. onRecord.Lives.Where(life => life.Failed).Select(life => life.Heats).Order()],
        };
    }

    // the integral of the chance that it is still in service, in steps of a heat, two, four as it goes on
    private static double MeanLeft(ToolForecast tool, SuddenFailures failures, double n)
    {
        double Chance(double k) => (1 - (tool.ChancePastLimit(k) ?? 0)) * failures.ChanceStanding(n, k);
        double sum = 0;
        double from = 0;
        double chance = Chance(0);
        for (double step = 1; chance > AlmostNone && from < HeatsLeft.Most; step = Math.Max(1, from / 16))
        {
            double next = Chance(from + step);
            sum += step * (chance + next) / 2;
            (from, chance) = (from + step, next);
        }

        return sum;
    }
}
