using System.Collections.Immutable;
using System.Text.Json;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

public sealed class SisterForecastTests
{
    private const double CaseTolerance = 1e-5;
    private const double HistoryTolerance = 1e-4;

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
            // there the rate is that over the whole expected life of this tool: limit / (now + median remaining)
            double rate = forecast.LimitMm / (forecast.HeatsNow + left.Q50!.Value);
            Near.Relative(row.Number("rate"), rate, HistoryTolerance, $"{kind} rate");
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
        Number("rate_median", Assert.IsType<Estimate>(forecast.RateMmPerHeat).Value);
        Number("wear_now", forecast.WearNowMm);
        // far below any chance that matters the case is that of dropped cells
        Near.Either(
            expected.GetProperty("prob_over_limit_now").GetDouble(),
            forecast.ChancePastLimitNow,
            CaseTolerance,
            1e-9,
            $"{what} chance"
        );
        // the case gives these two in mm
        Hyper("sigma", forecast.LimitMm * forecast.Traits.Sigma);
        Hyper("phi", forecast.LimitMm * forecast.Traits.Phi);
        Hyper("tau", forecast.Traits.Tau);
        Hyper("b", forecast.Traits.Power);
        Hyper("p_b_below_1", forecast.Traits.ChanceRunsIn);
        Hyper("p_b_above_1", forecast.Traits.ChanceSpeedsUp);

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

    private static double[] Numbers(JsonElement element, string name) =>
        [.. element.GetProperty(name).EnumerateArray().Select(number => number.GetDouble())];
}
