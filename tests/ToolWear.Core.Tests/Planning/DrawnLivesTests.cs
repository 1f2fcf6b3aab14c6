using ToolWear.Core.Tests.Wear;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

public sealed class DrawnLivesTests
{
    private const int Draws = 8000;

    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    public void The_share_of_draws_used_up_agrees_with_the_forecast(int seed)
    {
        List<WearHistory> kind = [.. SimulatedKind.Of(seed, tools: 5, groups: 2), Planned("G0"), Planned("G9")];
        SisterForecasts forecasts = SisterForecasts.Of(kind);
        DrawnLives drawn = DrawnLives.Of(kind, Draws, seed);
        for (int tool = 0; tool < kind.Count; tool++)
        {
            SisterForecast forecast = Assert.IsType<SisterForecast>(forecasts.Tools[tool]);
            double[] heats = drawn.HeatsLeft(tool, tool)!;
            foreach (double k in (double[])[1, 8, 20, 45, 90])
            {
                double F = forecast.ChancePastLimit(k);
                double share = heats.Count(each => each <= k) / (double)Draws;
                double se = Math.Sqrt(F * (1 - F) / Draws);
                // 105 comparisons in all: 3.5 standard errors, and one draw where the chance is next to nothing
                Assert.True(
                    Math.Abs(share - F) <= (3.5 * se) + (1.0 / Draws),
                    $"{kind[tool].Tool} at {k}: {share} {F}"
                );
            }
        }
    }

    [Theory]
    [InlineData(21)]
    [InlineData(22)]
    public void New_tools_last_as_the_forecast_of_one_without_a_heat_says(int seed)
    {
        List<WearHistory> kind = SimulatedKind.Of(seed, tools: 5, groups: 2);
        DrawnLives drawn = DrawnLives.Of(kind, Draws, seed);
        foreach (string group in (string[])["G0", "G9"])
        {
            WearHistory planned = Planned(group) with { Kind = kind[0].Kind };
            SisterForecast forecast = Assert.IsType<SisterForecast>(SisterForecasts.Of([.. kind, planned]).Tools[^1]);
            DrawnNewLives lives = drawn.NewTools(planned);
            double[] heats = [.. Enumerable.Range(0, Draws).Select(i => lives.Heats(i, 7))];
            foreach (double k in (double[])[8, 20, 45, 90, 150])
            {
                double F = forecast.ChancePastLimit(k);
                double share = heats.Count(each => each <= k) / (double)Draws;
                double se = Math.Sqrt(F * (1 - F) / Draws);
                Assert.True(Math.Abs(share - F) <= (3.5 * se) + (1.0 / Draws), $"{group} at {k}: {share} {F}");
            }
        }
    }

    [Fact]
    public void Twins_share_what_is_not_known_of_their_kind()
    {
        DrawnLives drawn = DrawnLives.Of([Planned("G1")], Draws, 5);
        double[] one = [.. drawn.HeatsLeft(0, 1)!.Select(heats => Math.Log(heats))];
        double[] other = [.. drawn.HeatsLeft(0, 2)!.Select(heats => Math.Log(heats))];
        Assert.NotEqual(one[0], other[0]);
        double correlation = MathNet.Numerics.Statistics.Correlation.Pearson(one, other);
        // ln N has the kind's .45 and the group's .25 in common, the tools' own spread near .3 apart: about .7
        Assert.InRange(correlation, 0.5, 0.85);
    }

    [Fact]
    public void The_same_seed_gives_the_same_draws_and_another_seed_others()
    {
        List<WearHistory> kind = SimulatedKind.Of(3, tools: 3);
        double[] once = DrawnLives.Of(kind, 200, 7).HeatsLeft(0, 1)!;
        Assert.Equal(once, DrawnLives.Of(kind, 200, 7).HeatsLeft(0, 1)!);
        Assert.NotEqual(once, DrawnLives.Of(kind, 200, 8).HeatsLeft(0, 1)!);
    }

    [Fact]
    public void Nothing_is_drawn_where_no_limit_or_no_start_is_known()
    {
        WearHistory without = Histories.One("A", 10, [(5, 0.2)], limitMm: null);
        Assert.Null(DrawnLives.Of([without], 10, 1).HeatsLeft(0, 1));
        WearHistory lost = Histories.Of("B", 3, [Histories.Segment(null, [])]);
        DrawnLives drawn = DrawnLives.Of([without, lost, Planned("G1")], 10, 1);
        Assert.Null(drawn.HeatsLeft(0, 1));
        Assert.Null(drawn.HeatsLeft(1, 1));
        Assert.NotNull(drawn.HeatsLeft(2, 1));
    }

    private static WearHistory Planned(string group) => Histories.Of("new", 0, [], group: group);
}
