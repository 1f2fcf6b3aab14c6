using System.Collections.Immutable;
using System.Text.Json;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

public sealed class SisterForecastTests
{
    // the likelihoods are summed in single precision, and what cannot weigh anything is left out
    private const double CaseTolerance = 1e-4;
    private const double ChanceTolerance = 1e-5;
    private const double HistoryTolerance = 2e-4;

    // cases.json, "sisters": computed by an independent program in C
    [Theory]
    [InlineData("s01")]
    [InlineData("s02")]
    [InlineData("s03")]
    [InlineData("s04")]
    [InlineData("s05")]
    [InlineData("s06")]
    [InlineData("s07")]
    [InlineData("s08")]
    [InlineData("s11")]
    [InlineData("s12")]
    [InlineData("s13")]
    [InlineData("s14")]
    public void The_forecasts_of_a_case_agree(string id)
    {
        List<WearHistory> kind = Histories.Case(id);
        SisterForecasts forecasts = SisterForecasts.Of(kind);
        JsonElement expected = Published.Json("wear/cases.json").GetProperty(id).GetProperty("expected");
        int tools = 0;
        foreach (JsonProperty tool in expected.GetProperty("sisters").EnumerateObject())
        {
            int i = kind.FindIndex(history => history.Tool == tool.Name);
            Agrees(tool.Value, Assert.IsType<SisterForecast>(forecasts.Tools[i]), $"{id} {tool.Name}");
            tools++;
        }

        Assert.Equal(kind.Count, tools);
    }

    // reference_predictions.csv: tool T1 of each of 66 simulated histories, computed by an independent program in C
    [Fact]
    public void The_forecasts_of_the_simulated_histories_agree()
    {
        List<WearHistory> all = Histories.Read("wear/histories/readings.csv", "wear/histories/tools.csv");
        ImmutableDictionary<string, SisterForecasts> forecasts = SisterForecasts.OfAll(
            all,
            TestContext.Current.CancellationToken
        );
        List<Row> predictions = Published.Rows("wear/histories/reference_predictions.csv");
        Assert.Equal(66, predictions.Count);
        foreach (Row row in predictions)
        {
            string kind = row["history"];
            int i = all.Where(history => history.Kind == kind).ToList().FindIndex(history => history.Tool == "T1");
            SisterForecast forecast = Assert.IsType<SisterForecast>(forecasts[kind].Tools[i]);
            HeatsLeft left = forecast.HeatsLeftIfNotPast;
            Near.Relative(row.Number("remaining"), left.Q50, HistoryTolerance, $"{kind} remaining");
            Near.Relative(row.Number("lo80"), left.Q10, HistoryTolerance, $"{kind} lo80");
            Near.Relative(row.Number("hi80"), left.Q90, HistoryTolerance, $"{kind} hi80");
            Near.Relative(row.Number("lo90"), left.Q05, HistoryTolerance, $"{kind} lo90");
            Near.Relative(row.Number("hi90"), left.Q95, HistoryTolerance, $"{kind} hi90");
            Near.Relative(row.Number("rate"), Middle(forecast.RateMmPerHeat), HistoryTolerance, $"{kind} rate");
            Assert.Equal(row.Number("chance_past_limit"), forecast.ChancePastLimitNow, ChanceTolerance);
        }
    }

    // cases.json s05 and s13: the fitted wear and its band, and how likely each reading is a gross error
    [Theory]
    [InlineData("s05")]
    [InlineData("s13")]
    public void The_bands_and_suspects_of_a_case_agree(string id)
    {
        List<WearHistory> kind = Histories.Case(id);
        SisterForecasts forecasts = SisterForecasts.Of(kind);
        JsonElement expected = Published.Json("wear/cases.json").GetProperty(id).GetProperty("expected");
        foreach (JsonElement band in expected.GetProperty("band").EnumerateArray())
        {
            int i = kind.FindIndex(history => history.Tool == band.GetProperty("tool").GetString());
            SisterForecast forecast = Assert.IsType<SisterForecast>(forecasts.Tools[i]);
            double heats = band.GetProperty("heats").GetDouble();
            WearBand ours = forecast.Bands(band.GetProperty("segment").GetInt32() - 1, [heats])[0];
            Near.Either(band.GetProperty("fitted").GetDouble(), ours.FittedMm, CaseTolerance, 1e-6, $"{id} {heats}");
            Near.Either(band.GetProperty("low80").GetDouble(), ours.Low80Mm, CaseTolerance, 1e-6, $"{id} {heats} low");
            Near.Either(
                band.GetProperty("high80").GetDouble(),
                ours.High80Mm,
                CaseTolerance,
                1e-6,
                $"{id} {heats} high"
            );
        }

        foreach (JsonProperty tool in expected.GetProperty("suspects").EnumerateObject())
        {
            int i = kind.FindIndex(history => history.Tool == tool.Name);
            double[] gross = [.. tool.Value.EnumerateArray().Select(x => x.GetProperty("chance_gross").GetDouble())];
            Assert.Equal(
                gross.Where(chance => chance > 0.5),
                Assert.IsType<SisterForecast>(forecasts.Tools[i]).Suspect.Select(suspect => suspect.Chance),
                (one, other) => Math.Abs(one - other) < ChanceTolerance
            );
        }
    }

    private static void Agrees(JsonElement expected, SisterForecast forecast, string what)
    {
        double[] probs = Numbers(expected, "probs");
        double[] remaining = Numbers(expected, "remaining");
        double[] life = Numbers(expected, "life_heats");
        HeatsLeft left = forecast.HeatsLeftIfNotPast;
        Dictionary<double, double?> ours = new()
        {
            [0.05] = left.Q05,
            [0.10] = left.Q10,
            [0.5] = left.Q50,
            [0.9] = left.Q90,
            [0.95] = left.Q95,
        };
        for (int i = 0; i < probs.Length; i++)
        {
            if (ours.TryGetValue(probs[i], out double? k))
            {
                Near.Relative(remaining[i], k, CaseTolerance, $"{what} remaining at {probs[i]}");
            }
        }

        Estimate lifeHeats = Assert.IsType<Estimate>(forecast.LifeHeats);
        Near.Relative(life[0], lifeHeats.Low90, CaseTolerance, $"{what} life low");
        Near.Relative(life[3], lifeHeats.Value, CaseTolerance, $"{what} life");
        Near.Relative(life[^1], lifeHeats.High90, CaseTolerance, $"{what} life high");
        Number("rate_median", Middle(forecast.RateMmPerHeat));
        Near.Either(expected.GetProperty("wear_now").GetDouble(), forecast.WearNowMm, CaseTolerance, 1e-6, what);
        Assert.Equal(
            expected.GetProperty("prob_over_limit_now").GetDouble(),
            forecast.ChancePastLimitNow,
            ChanceTolerance
        );
        // the case gives these two in mm
        Hyper("sigma", forecast.LimitMm * forecast.Traits.Sigma);
        Hyper("phi", forecast.LimitMm * forecast.Traits.Phi);
        Hyper("tau", forecast.Traits.Tau);
        Hyper("b1", forecast.Traits.Power);
        Chance("p_first_cut", forecast.Traits.ChanceOfFirstCut);
        Chance("p_faster", forecast.Traits.ChanceOfFaster);
        Chance("p_slower", forecast.Traits.ChanceOfSlower);
        void Chance(string name, double actual) =>
            Assert.Equal(expected.GetProperty("hyper").GetProperty(name).GetDouble(), actual, ChanceTolerance);
        void Number(string name, double actual) =>
            Near.Relative(expected.GetProperty(name).GetDouble(), actual, CaseTolerance, $"{what} {name}");
        void Hyper(string name, double actual) =>
            Near.Relative(
                expected.GetProperty("hyper").GetProperty(name).GetDouble(),
                actual,
                CaseTolerance,
                $"{what} {name}"
            );
    }

    private static double Middle(Estimated estimated) => Assert.IsType<Estimate>(estimated).Value;

    private static double[] Numbers(JsonElement element, string name) =>
        [.. element.GetProperty(name).EnumerateArray().Select(number => number.GetDouble())];
}
