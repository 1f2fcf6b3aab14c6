using CsCheck;
using MathNet.Numerics.Distributions;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Core.Planning.Lives;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

public sealed class ReplacementLaws
{
    private static readonly Gen<(double Median, double SdLog, double Shape, double Scale)> Figures = Gen.Select(
        Gen.Double[5, 80],
        Gen.Double[0.05, 0.8],
        Gen.Double[0.6, 4],
        Gen.Double[20, 300]
    );

    [Fact]
    public void The_cover_never_falls_with_more_tools_nor_rises_with_more_heats() =>
        Figures.Sample(
            f =>
            {
                LogNormalLife life = Lives.LogNormal(f.Median, f.SdLog, Lives.Weibull(f.Shape, f.Scale));
                Replacements plan = Lives.Needs(Replacements.Of([life.Used(10)], life.Used(0), 60, 0.9));
                Replacements more = Lives.Needs(Replacements.Of([life.Used(10)], life.Used(0), 75, 0.9));
                Assert.True(plan.Cover.Zip(plan.Cover.Skip(1)).All(pair => pair.First <= pair.Second + 1e-15));
                Assert.True(plan.Cover.Zip(more.Cover).All(pair => pair.Second <= pair.First + 1e-15));
                Assert.True(plan.Needed <= more.Needed);
                Assert.True(plan.Cover[plan.Needed] >= 0.9);
                Assert.True(plan.Needed == 0 || plan.Cover[plan.Needed - 1] < 0.9);
            },
            iter: 100
        );

    [Fact]
    public void Whole_heats_are_a_distribution_whatever_is_added() =>
        Figures.Sample(
            f =>
            {
                LogNormalLife life = Lives.LogNormal(f.Median, f.SdLog);
                WholeHeats sum = WholeHeats.Of(life.Used(0), 70).And(WholeHeats.Of(life.Used(5), 70));
                double whole = 0;
                foreach (double p in sum.Chances)
                {
                    Assert.True(p >= 0);
                    whole += p;
                }

                Assert.Equal(1, whole, 12);
            },
            iter: 200
        );

    [Fact]
    public void The_convolution_agrees_with_drawn_lives()
    {
        const int draws = 40_000;
        LogNormalLife life = Lives.LogNormal(25, 0.5, Lives.Weibull(2, 60));
        Replacements plan = Lives.Needs(Replacements.Of([life.Used(0)], life.Used(0), 100, 0.9));
        Random chance = new(20261);
        int[] covered = new int[plan.Cover.Length];
        for (int i = 0; i < draws; i++)
        {
            double sum = 0;
            for (int r = 0; r < covered.Length; r++)
            {
                double worn = 25 * Math.Exp(0.5 * Normal.Sample(chance, 0, 1));
                double cracked = Weibull.Sample(chance, 2, 60);
                sum += Math.Floor(Math.Min(worn, cracked));
                covered[r] += sum >= 100 ? 1 : 0;
            }
        }

        for (int r = 0; r < covered.Length; r++)
        {
            double C = plan.Cover[r];
            double se = Math.Sqrt(C * (1 - C) / draws);
            Assert.True(Math.Abs(((double)covered[r] / draws) - C) <= (3 * se) + (1.0 / draws), $"C_{r} {C}");
        }
    }

    [Fact]
    public void The_chance_to_crack_first_and_the_mean_agree_with_drawn_lives()
    {
        const int draws = 100_000;
        LogNormalLife life = Lives.LogNormal(60, 0.3, Lives.Weibull(1.8, 120));
        Random chance = new(20262);
        double sum = 0;
        double squares = 0;
        int cracked = 0;
        for (int i = 0; i < draws; i++)
        {
            double worn = 60 * Math.Exp(0.3 * Normal.Sample(chance, 0, 1));
            double crack = Weibull.Sample(chance, 1.8, 120);
            cracked += crack < worn ? 1 : 0;
            double end = Math.Min(crack, worn);
            sum += end;
            squares += end * end;
        }

        double mean = sum / draws;
        double se = Math.Sqrt(((squares / draws) - (mean * mean)) / draws);
        Assert.True(Math.Abs(mean - life.MeanHeats) <= 3 * se, $"{mean} {life.MeanHeats}");
        double p = life.ChanceCracksFirst;
        Assert.True(Math.Abs(((double)cracked / draws) - p) <= 3 * Math.Sqrt(p * (1 - p) / draws), $"{cracked} {p}");
    }

    [Fact]
    public void A_life_that_hardly_wears_is_its_cracks()
    {
        WeibullLife cracks = Lives.Weibull(1.8, 120);
        LogNormalLife life = Lives.LogNormal(100_000, 0.1, cracks);
        Assert.Equal(cracks.MeanHeats, life.MeanHeats, 6);
        Assert.Equal(1, life.ChanceCracksFirst, 9);
    }

    [Fact]
    public void The_density_is_the_slope_of_the_surviving_share() =>
        Figures.Sample(
            f =>
            {
                LogNormalLife life = Lives.LogNormal(f.Median, f.SdLog, Lives.Weibull(f.Shape, f.Scale));
                double t = f.Median;
                double slope = (life.Surviving(t - 1e-4) - life.Surviving(t + 1e-4)) / 2e-4;
                Assert.Equal(slope, life.Density(t), 6);
            },
            iter: 200
        );

    [Fact]
    public void A_tool_that_does_not_last_a_heat_covers_nothing() =>
        Assert.IsType<NotEnoughData>(Replacements.Of([], _ => 1, 5, 0.9));

    [Fact]
    public void No_demand_needs_no_tool()
    {
        Replacements plan = Lives.Needs(Replacements.Of([], _ => 1, 0, 0.9));
        Assert.Equal(0, plan.Needed);
        Assert.Equal(0, plan.Expected);
        Assert.Null(plan.SureWithOneFewer);
    }

    [Theory]
    [InlineData(90, "0.9")]
    [InlineData(0, "0.9")]
    [InlineData(double.NaN, "0.9")]
    [InlineData(95, "0.95")]
    public void A_certainty_that_is_no_share_is_refused_with_the_right_form(double sure, string right) =>
        Assert.Contains(right, Replacements.RefuseSure(sure), StringComparison.Ordinal);

    [Fact]
    public void The_best_split_is_no_dearer_than_its_neighbours() =>
        Gen.Select(Gen.Double[0.5, 5], Gen.Double[0.5, 5], Gen.Double[0, 12], Gen.Double[0.5, 6])
            .Sample(
                (cr, cf, A, s) =>
                {
                    Assert.True(HeatSplit.TryFor(cr, cf, 1, A, s, out HeatSplit? split, out string? refusal), refusal);
                    double Cost(double h) => (cr * h) + (cf * (1 + (A * Math.Exp(-h / s))));
                    Assert.True(split.CostAtBest <= Cost(split.RoughHeats + 0.01) + 1e-12);
                    Assert.True(split.CostAtBest <= Cost(Math.Max(0, split.RoughHeats - 0.01)) + 1e-12);
                    Assert.True(Enumerable.Range(0, 60).All(h => split.CostAtWhole <= Cost(h) + 1e-12));
                },
                iter: 300
            );

    [Fact]
    public void A_rework_pays_where_its_heat_is_cheaper()
    {
        // 10 for 20 heats against 40 for 60 (45 to 90): by hand
        ReforgeOrScrap answer = ReforgeOrScrap.Of(10, 20, 40, new Estimate(60, 45, 90));
        Assert.True(answer.Reforge);
        Assert.Equal(0.5, answer.ReworkAHeat);
        Assert.Equal(40.0 / 60, answer.NewAHeat.Value);
        Assert.Equal(40.0 / 90, answer.NewAHeat.Low90);
        Assert.Equal(40.0 / 45, answer.NewAHeat.High90);
        Assert.False(ReforgeOrScrap.Of(15, 20, 40, new Estimate(60, 45, null)).Reforge);
    }

    [Theory]
    [InlineData(0.1, true)] // 120 x 0.1 = 12 against 20 x 30/60 = 10
    [InlineData(0.05, false)]
    public void A_tool_is_changed_before_a_session_where_its_failure_would_cost_more(double chance, bool change) =>
        Assert.Equal(
            change,
            Assert.IsType<ChangeBeforeSession>(ChangeBeforeSession.Of(chance, 30, 60, 20, 120, failures: 3)).Change
        );
}
