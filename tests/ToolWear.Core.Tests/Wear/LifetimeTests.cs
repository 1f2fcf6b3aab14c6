using System.Collections.Immutable;
using System.Text.Json;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Lifetimes;
using ToolWear.Core.Wear.Sisters;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

public sealed class LifetimeTests
{
    private const double CaseTolerance = 1e-6;
    private const double NineDigits = 1e-9;

    // kaplan_meier_tables.csv: R survival survfit; aml Miller 1997, ovarian Edmunson et al. 1979, NIST 8.4.1.3
    [Theory]
    [InlineData("aml", "aml.csv", "time", "status")]
    [InlineData("ovarian", "ovarian.csv", "futime", "fustat")]
    [InlineData("nist_8.4.1.3", "nist_apr413_life.csv", "hours", "failed")]
    public void The_share_that_survives_agrees_with_R(string set, string file, string heats, string failed)
    {
        ImmutableArray<SurvivalStep> steps = SurvivalCurve.Of(Lives(file, heats, failed));
        List<Row> expected = [.. Published.Rows("kaplan_meier_tables.csv").Where(row => row["case"] == set)];
        Assert.Equal(expected.Count, steps.Length);
        foreach ((Row row, SurvivalStep step) in expected.Zip(steps))
        {
            Assert.Equal(row.Number("time"), step.Heats);
            Assert.Equal((int)row.Number("at_risk"), step.AtRisk);
            Assert.Equal((int)row.Number("events"), step.Failed);
            Near.Relative(row.Number("S"), step.Surviving, NineDigits, "S");
            Near.Relative(row.Number("greenwood_se"), step.Se, NineDigits, "se");
        }
    }

    [Fact]
    public void A_tool_that_came_in_used_tells_nothing_of_the_heats_before()
    {
        WatchedLife[] known = [new(40, true), new(60, true), new(80, false)];
        double median = WeibullWithPrior.Of(known, 60).MedianLife;
        // watched for no heat: nothing is learned
        Assert.Equal(median, WeibullWithPrior.Of([.. known, new(70, false, 70)], 60).MedianLife, 1e-9);
        // watched from 65 to 70 it tells less than watched from new
        double late = WeibullWithPrior.Of([.. known, new(70, false, 65)], 60).MedianLife;
        double whole = WeibullWithPrior.Of([.. known, new(70, false)], 60).MedianLife;
        Assert.True(median < late && late < whole, $"{median} {late} {whole}");
    }

    [Fact]
    public void Where_nothing_survives_there_is_no_error()
    {
        List<WatchedLife> lives =
        [
            .. Published
                .Rows("aml.csv")
                .Where(row => row["x"] == "Nonmaintained")
                .Select(row => new WatchedLife(row.Number("time"), row["status"] == "1")),
        ];
        SurvivalStep last = SurvivalCurve.Of(lives)[^1];
        Assert.Equal(new SurvivalStep(45, 1, 1, 0, null, null, null), last);
    }

    // by hand: A fails at 5, B enters at 5 and fails at 8, C enters at 3 and stops at 6, D fails at 8 from new
    [Fact]
    public void A_tool_is_at_risk_only_after_its_watch_began()
    {
        ImmutableArray<SurvivalStep> steps = SurvivalCurve.Of([
            new(5, true),
            new(8, true, 5),
            new(6, false, 3),
            new(8, true),
        ]);
        Assert.Equal([(5.0, 3, 1), (8.0, 2, 2)], steps.Select(step => (step.Heats, step.AtRisk, step.Failed)));
        Near.Relative(2.0 / 3, steps[0].Surviving, 1e-15, "S");
        Assert.Equal(0, steps[1].Surviving);
    }

    // NIST/SEMATECH e-Handbook 8.4.1.3: eta 606.5280, beta 1.7208, -log L 75.135; standard errors by R survreg
    [Fact]
    public void The_weibull_fit_gives_the_published_values()
    {
        WeibullFit fit = Fit(Lives("nist_apr413_life.csv", "hours", "failed"));
        Assert.Equal(606.5280, fit.Scale, 0.001);
        Assert.Equal(1.7208, fit.Shape, 0.00005);
        Assert.Equal(-75.135, fit.LogLikelihood, 0.0005);
        Near.Relative(Published.Expected("nist_apr413_life", "se_ln_eta"), fit.SeOfLogScale, 1e-6, "se ln eta");
        Near.Relative(Published.Expected("nist_apr413_life", "se_ln_sigma"), fit.SeOfLogShape, 1e-6, "se ln shape");
    }

    // R survival survreg
    [Theory]
    [InlineData("aml (both arms together)", "aml.csv", "time", "status", "1")]
    [InlineData("ovarian", "ovarian.csv", "futime", "fustat", "1")]
    [InlineData("lung", "lung.csv", "time", "status", "2")]
    public void The_weibull_fit_agrees_with_R(string set, string file, string heats, string failed, string yes)
    {
        WeibullFit fit = Fit(Lives(file, heats, failed, yes));
        Near.Relative(Published.Expected(set, "weibull_shape"), fit.Shape, 1e-8, "shape");
        Near.Relative(Published.Expected(set, "weibull_eta"), fit.Scale, 1e-8, "scale");
        Near.Relative(Published.Expected(set, "weibull_loglik"), fit.LogLikelihood, 1e-9, "log likelihood");
    }

    // cases.json s09: survfit and survreg of R, the grid by an independent program
    [Fact]
    public void The_lifetimes_of_the_case_agree()
    {
        List<WatchedLife> lives = Lives("wear/s09.csv", "heats", "failed");
        JsonElement expected = Published.Json("wear/cases.json").GetProperty("s09").GetProperty("expected");
        JsonElement km = expected.GetProperty("km");
        ImmutableArray<SurvivalStep> steps = SurvivalCurve.Of(lives);
        Column(km, "heats", steps, step => step.Heats);
        Column(km, "S", steps, step => step.Surviving);
        Column(km, "se_greenwood", steps, step => step.Se);
        Column(km, "lo95_loglog", steps, step => step.Low95);
        Column(km, "hi95_loglog", steps, step => step.High95);
        WeibullFit fit = Fit(lives);
        JsonElement mle = expected.GetProperty("weibull_mle");
        Check(mle, "shape", fit.Shape);
        Check(mle, "scale", fit.Scale);
        Check(mle, "loglik", fit.LogLikelihood);
        Check(mle, "se_log_scale", fit.SeOfLogScale);
        Check(mle, "se_log_shape", fit.SeOfLogShape);
        Check(expected, "mle_B10", fit.HeatsAtFailed(0.1));
        WeibullWithPrior curve = WeibullWithPrior.Of(lives, 60);
        JsonElement bayes = expected.GetProperty("weibull_bayes");
        Check(bayes, "mean_shape", curve.MeanShape);
        Check(bayes, "mean_log_shape", curve.MeanLogShape);
        Check(bayes, "mean_log_scale", curve.MeanLogScale);
        Check(bayes, "median_life", curve.MedianLife);
        Check(bayes, "B10", curve.B10);
        Check(bayes, "S_at_30", curve.Surviving(30));
        Check(bayes, "S_at_90", curve.Surviving(90));
        Check(bayes, "cond_S_30_more_given_60", curve.Surviving(90) / curve.Surviving(60));
    }

    [Fact]
    public void A_fit_takes_two_failures_at_different_heats()
    {
        Assert.Equal(
            new NotEnoughData(1, 2, "a curve takes two tools that failed"),
            WeibullFit.Of([new(5, true), new(9, false)])
        );
        Assert.IsType<NotEnoughData>(WeibullFit.Of([]));
        Assert.IsType<NotEnoughData>(WeibullFit.Of([new(5, true), new(5, true)]));
        Assert.IsType<WeibullFit>(WeibullFit.Of([new(5, true), new(6, true)]));
    }

    [Fact]
    public void A_watch_from_zero_heats_is_no_late_watch()
    {
        List<WatchedLife> lives = Lives("wear/s09.csv", "heats", "failed");
        List<WatchedLife> late = [.. lives.Select(life => new WatchedLife(life.Heats, life.Failed, life.Heats / 2))];
        Assert.Equal(Fit(lives), Fit([.. lives.Select(life => new WatchedLife(life.Heats, life.Failed, 0))]));
        Assert.NotEqual(Fit(lives).Shape, Fit(late).Shape, 0.01);
    }

    // exponential with late entry: the rate is failures over heats watched, whatever the shape would be
    [Fact]
    public void The_score_of_a_late_watch_is_the_slope_of_its_likelihood()
    {
        List<WatchedLife> late =
        [
            new(20, true, 5),
            new(35, true, 10),
            new(50, false, 20),
            new(61, true),
            new(70, true, 30),
        ];
        WeibullFit fit = Fit(late);
        double LogLikelihood(double b, double eta) =>
            late.Sum(life =>
                (life.Failed ? Math.Log(b / eta * Math.Pow(life.Heats / eta, b - 1)) : 0)
                - Math.Pow(life.Heats / eta, b)
                + Math.Pow(life.FromHeats / eta, b)
            );
        double top = LogLikelihood(fit.Shape, fit.Scale);
        Near.Relative(top, fit.LogLikelihood, 1e-10, "log likelihood");
        foreach ((double db, double de) in new[] { (1.001, 1.0), (0.999, 1.0), (1.0, 1.001), (1.0, 0.999) })
        {
            Assert.True(LogLikelihood(fit.Shape * db, fit.Scale * de) < top, $"{db} {de}");
        }
    }

    [Fact]
    public void Cracks_take_from_the_heats_that_wear_leaves()
    {
        List<WatchedLife> lives = Lives("wear/s09.csv", "heats", "failed");
        SuddenFailures cracks = SuddenFailures.Of(lives, 60);
        Assert.Equal(6, cracks.Failures);
        Assert.Equal(cracks.WithPrior.Surviving(50), cracks.Surviving(50));
        List<WearHistory> kind = Histories.Case("s03");
        SisterForecast wear = Assert.IsType<SisterForecast>(SisterForecasts.Of(kind).Tools[0]);
        double both = cracks.ChanceInService(wear, 27, 10);
        double expected = (1 - wear.ChancePastLimit(10)) * cracks.Surviving(37) / cracks.Surviving(27);
        Near.Relative(expected, both, 1e-12, "S(10)");
        Assert.True(cracks.HeatsLeft(wear, 27).Q50 < wear.HeatsLeft.Q50);
    }

    [Fact]
    public void From_eight_failures_on_the_fit_is_used()
    {
        List<WatchedLife> lives = Lives("nist_apr413_life.csv", "hours", "failed");
        SuddenFailures cracks = SuddenFailures.Of(lives, 300);
        Assert.Equal(Fit(lives).Surviving(200), cracks.Surviving(200));
    }

    [Fact]
    public void Without_any_tool_the_prior_stands()
    {
        WeibullWithPrior prior = WeibullWithPrior.Of([], 60);
        Near.Relative(Math.Log(1.5), prior.MeanLogShape, 1e-9, "ln shape");
        Near.Relative(Math.Log(120), prior.MeanLogScale, 1e-9, "ln scale");
        Assert.Equal(1, prior.Surviving(0));
    }

    [Theory]
    [InlineData(double.NaN, true, 0)]
    [InlineData(-1, false, 0)]
    [InlineData(0, true, 0)]
    [InlineData(5, true, 6)]
    [InlineData(5, true, -1)]
    public void A_life_that_cannot_be_is_refused(double heats, bool failed, double from) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new WatchedLife(heats, failed, from));

    private static List<WatchedLife> Lives(string file, string heats, string failed, string yes = "1") =>
        [.. Published.Rows(file).Select(row => new WatchedLife(row.Number(heats), row[failed] == yes))];

    private static WeibullFit Fit(IReadOnlyCollection<WatchedLife> lives) =>
        Assert.IsType<WeibullFit>(WeibullFit.Of(lives));

    private static void Check(JsonElement element, string name, double actual) =>
        Near.Relative(element.GetProperty(name).GetDouble(), actual, CaseTolerance, name);

    private static void Column(
        JsonElement element,
        string name,
        ImmutableArray<SurvivalStep> steps,
        Func<SurvivalStep, double?> figure
    )
    {
        double[] expected = [.. element.GetProperty(name).EnumerateArray().Select(number => number.GetDouble())];
        Assert.Equal(expected.Length, steps.Length);
        for (int i = 0; i < expected.Length; i++)
        {
            Near.Relative(expected[i], figure(steps[i]), CaseTolerance, $"{name} {i}");
        }
    }
}
