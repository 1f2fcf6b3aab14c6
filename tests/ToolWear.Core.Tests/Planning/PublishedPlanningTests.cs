using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Tests.Wear;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

/// <summary>Loss tables, renewal functions and ages of replacement from print (tests/reference-data, each with its source).</summary>
public sealed class PublishedPlanningTests
{
    // G. Cachon and C. Terwiesch, Matching Supply with Demand, statistics tutorial, Poisson table of mean 1.25.
    // Tools with exponential lives fail as a Poisson process, so with n new ones after the first the tools too few
    // are the loss L(n). Heats are whole, lives rounded to the nearest: the grid of 8000 heats costs about 1e-7.
    [Fact]
    public void Tools_too_few_are_the_poisson_loss()
    {
        const int heats = 8000;
        WeibullLife life = Lives.Weibull(1, heats / 1.25);
        Replacements plan = Lives.Needs(Replacements.Of([], k => Nearest(life, k), heats, 0.5));
        foreach (Row row in Published.Rows("poisson_1_25_loss.csv").Take(7))
        {
            int q = (int)row.Number("q");
            Near.Either(row.Number("loss"), plan.ExpectedShort(q + 1), 0, 2e-4, $"L({q})");
            Near.Either(row.Number("cdf"), plan.Cover[q + 1], 0, 2e-4, $"P(D <= {q})");
        }
    }

    // The renewal function M counts the failures to be expected; with the first tool that makes M + 1 tools begun.
    // The table was computed to about 1e-4 (its source file says how).
    [Theory]
    [MemberData(nameof(Renewals))]
    public void Tools_to_be_expected_are_the_renewal_function(double shape, double times, double M)
    {
        const int scale = 1500;
        WeibullLife life = Lives.Weibull(shape, scale);
        Replacements plan = Lives.Needs(Replacements.Of([], k => Nearest(life, k), scale * times, 0.5));
        Near.Either(M, plan.Expected - 1, 0, 5e-4, $"M({times}) of shape {shape}");
    }

    public static TheoryData<double, double, double> Renewals()
    {
        TheoryData<double, double, double> renewals = [];
        foreach (Row row in Published.Rows("weibull_renewal_function.csv"))
        {
            renewals.Add(row.Number("shape"), row.Number("t_over_eta"), row.Number("M"));
        }

        return renewals;
    }

    // R. E. Barlow and F. Proschan's age replacement; the problem of shape 3, scale 10 stands in E. Gutierrez-Miravete's
    // slides (Rensselaer at Hartford), digits computed (see the source file).
    [Fact]
    public void Ages_of_replacement_agree()
    {
        foreach (Row row in Published.Rows("age_replacement.csv"))
        {
            WeibullLife life = Lives.Weibull(row.Number("shape"), row.Number("scale"));
            AgeReplacement age = Assert.IsType<AgeReplacement>(
                AgeReplacement.Of(life, row.Number("cost_planned"), row.Number("cost_failure"), failures: 2)
            );
            Near.Relative(row.Number("T_opt"), age.AtHeats, 1e-6, "T");
            Near.Relative(row.Number("cost_rate"), age.CostAHeat, 1e-6, "cost");
            Near.Relative(row.Number("cost_rate_run_to_failure"), age.RunToFailureAHeat, 1e-6, "run to failure");
            Near.Relative(row.Number("MTTF"), life.MeanHeats, 1e-6, "mean");
        }
    }

    // The newsvendor problem of mean 1000, sd 200, short 40, over 10: ratio 0.8, so 1168.324, rounded up 1169 (a textbook
    // problem; figures computed). Here the demand is the life of one tool, and the least number of heats that it does
    // not outlive with that chance is looked for.
    [Fact]
    public void The_least_whole_number_at_the_newsvendor_ratio_agrees()
    {
        const double ratio = 40.0 / (40 + 10);
        WholeHeats life = WholeHeats.Of(k => MathNet.Numerics.Distributions.Normal.CDF(1000, 200, k), 3000);
        double sum = 0;
        int q = 0;
        while (sum < ratio)
        {
            sum += life.Chances[q];
            q++;
        }

        Assert.Equal(1169, q);
    }

    [Fact]
    public void Nothing_is_said_of_pulling_early_below_two_failures() =>
        Assert.IsType<ToolWear.Core.Measure.NotEnoughData>(AgeReplacement.Of(Lives.Weibull(3, 10), 1, 11, failures: 1));

    [Fact]
    public void Failures_that_strike_at_random_are_run_to_failure()
    {
        AgeReplacement age = Assert.IsType<AgeReplacement>(AgeReplacement.Of(Lives.Weibull(1, 50), 1, 11, failures: 9));
        Assert.Null(age.AtHeats);
        Assert.Equal(age.RunToFailureAHeat, age.CostAHeat);
    }

    // whole heats are rounded down in a plan; half a heat earlier rounds them to the nearest
    private static double Nearest(WeibullLife life, double k) => 1 - life.Surviving(Math.Max(0, k - 0.5));
}
