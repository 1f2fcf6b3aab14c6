using System.Text.Json;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Tests.Wear;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

/// <summary>The order book of 120 pieces, worked out in R by convolution (reference-data/wear/cases.json, s10).</summary>
public sealed class WorkedExampleTests
{
    private static readonly JsonElement Case = Published.Json("wear/cases.json").GetProperty("s10");
    private static readonly JsonElement In = Case.GetProperty("input");
    private static readonly JsonElement Out = Case.GetProperty("expected");

    [Fact]
    public void The_cover_by_number_of_new_tools_agrees()
    {
        Replacements plan = Plan();
        double[] expected = [.. Out.GetProperty("cover_by_r").EnumerateArray().Select(C => C.GetDouble())];
        for (int r = 0; r < expected.Length; r++)
        {
            // beyond the last r the certainty is 1 to twelve digits
            double actual = r < plan.Cover.Length ? plan.Cover[r] : 1;
            Near.Relative(expected[r], actual, 1e-6, $"C_{r}");
        }
    }

    [Fact]
    public void Six_are_needed_and_five_and_a_bit_expected()
    {
        Replacements plan = Plan();
        Assert.Equal(Number(Out, "need"), plan.Needed);
        Near.Relative(Number(Out, "expected_new_tools"), plan.Expected, 1e-6, "expected");
        Assert.Equal(plan.Cover[plan.Needed - 1], plan.SureWithOneFewer);
    }

    [Fact]
    public void The_mean_life_agrees_and_nothing_cracks()
    {
        Near.Relative(Number(Out, "new_tool_mean_life"), NewTool().MeanHeats, 1e-9, "mean life");
        Assert.Equal(Number(Out, "P_crack_first"), NewTool().ChanceCracksFirst);
    }

    [Fact]
    public void The_age_to_pull_it_agrees()
    {
        JsonElement expected = Out.GetProperty("age_replacement");
        AgeReplacement age = Assert.IsType<AgeReplacement>(
            AgeReplacement.Of(NewTool(), Number(In, "cost_planned"), Number(In, "cost_failure"), failures: 2)
        );
        Near.Relative(Number(expected, "t"), age.AtHeats, 1e-6, "t");
        Near.Relative(Number(expected, "cost"), age.CostAHeat, 1e-6, "cost");
        Near.Relative(Number(expected, "run_to_failure"), age.RunToFailureAHeat, 1e-6, "run to failure");
    }

    [Fact]
    public void The_split_of_heats_agrees()
    {
        JsonElement of = In.GetProperty("split");
        JsonElement expected = Out.GetProperty("split");
        double cr = (Number(of, "Cr") / Number(of, "Nr")) + Number(of, "ct");
        double cf = (Number(of, "Cf") / Number(of, "Nf")) + Number(of, "ct");
        Assert.True(
            HeatSplit.TryFor(
                cr,
                cf,
                Number(of, "hmin"),
                Number(of, "A"),
                Number(of, "s"),
                out HeatSplit? split,
                out string? refusal
            ),
            refusal
        );
        Near.Relative(Number(expected, "cost_per_rough_heat"), split.CostARoughHeat, 1e-9, "cr");
        Near.Relative(Number(expected, "cost_per_finish_heat"), split.CostAFinishHeat, 1e-9, "cf");
        Near.Relative(Number(expected, "h_star"), split.RoughHeats, 1e-6, "h*");
        Near.Relative(Number(expected, "cost_at_h_star"), split.CostAtBest, 1e-6, "cost at h*");
        Assert.Equal(Number(expected, "best_integer"), split.WholeHeats);
        Near.Relative(Number(expected, "cost_best_integer"), split.CostAtWhole, 1e-6, "cost at the whole number");
        Near.Relative(Number(expected, "cost_at_0"), split.CostWithout, 1e-9, "cost without");
    }

    private static double Number(JsonElement of, string name) => of.GetProperty(name).GetDouble();

    private static LogNormalLife NewTool() =>
        Lives.LogNormal(Number(In, "wear_life_median"), Number(In, "wear_life_sdlog"));

    private static Replacements Plan()
    {
        LogNormalLife life = NewTool();
        Estimated plan = Replacements.Of(
            In.GetProperty("in_service_used").EnumerateArray().Select(used => life.Used(used.GetDouble())),
            life.Used(0),
            Number(In, "demand_heats"),
            Number(In, "level")
        );
        return Lives.Needs(plan);
    }
}
