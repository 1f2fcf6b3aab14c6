using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tests.Wear;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Lifetimes;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

public sealed class EarlyPullingTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(9)]
    public void A_life_that_failures_end_is_the_curve_of_the_records(int failures)
    {
        SuddenFailures curve = SuddenFailures.Of(
            [.. Enumerable.Range(1, failures).Select(i => new WatchedLife(20 + (9 * i), true)), new(90, false)],
            60
        );
        SuddenLife life = SuddenLife.Of(curve);
        foreach (double t in (double[])[0, 5, 30, 80, 200])
        {
            Near.Either(curve.Surviving(t), life.Surviving(t), 0, 1e-4, $"S({t})");
        }

        // f = -dS/dt and the mean is the integral of S
        Near.Relative((life.Surviving(39.99) - life.Surviving(40.01)) / 0.02, life.Density(40), 1e-4, "f(40)");
        double integral = 0;
        for (double t = 0; t < 1e9; t += 0.5 + (t / 500))
        {
            double step = 0.5 + (t / 500);
            integral += step * (life.Surviving(t) + life.Surviving(t + step)) / 2;
        }

        Near.Relative(life.MeanHeats, integral, 2e-3, "mean");
    }

    [Fact]
    public void Below_two_failures_a_tool_is_used_to_its_limit()
    {
        Story story = Shop(cracked: 1);
        EarlyPulling answer = Answer(story, 10, 60);
        Assert.Equal(1, answer.Failures);
        Assert.IsType<NotEnoughData>(answer.Age);
        Assert.IsType<NotEnoughData>(answer.Before);
    }

    [Fact]
    public void With_failures_on_record_a_dear_failure_pulls_earlier_and_changes_sooner()
    {
        Story story = Shop(cracked: 4);
        EarlyPulling cheap = Answer(story, 100, 60);
        EarlyPulling dear = Answer(story, 10, 3000);
        AgeReplacement early = Assert.IsType<AgeReplacement>(dear.Age);
        double late = Assert.IsType<AgeReplacement>(cheap.Age).AtHeats ?? double.MaxValue;
        Assert.NotNull(early.AtHeats);
        Assert.True(early.AtHeats < late, $"{early.AtHeats} {late}");
        Assert.True(early.CostAHeat < early.RunToFailureAHeat);
        Assert.False(Assert.IsType<ChangeBeforeSession>(cheap.Before).Change);
        Assert.True(Assert.IsType<ChangeBeforeSession>(dear.Before).Change);
    }

    [Fact]
    public void Staying_costs_the_chance_that_it_fails_from_the_heats_it_has_now()
    {
        Story story = Shop(cracked: 4);
        SuddenFailures failures = SuddenFailures.Of(
            ShopFailures.Of(story.Shop, story.Tool("R0").Tool).Lives,
            new ShopLives(ShopForecasts.Of(story.Shop)).Guess(ToolPlace.Of(story.Tool("R0").Tool))
        );
        double fails = 1 - failures.ChanceStanding(24, 12);
        Assert.True(fails > 2 * (1 - failures.ChanceStanding(0, 12)));
        ChangeBeforeSession before = Assert.IsType<ChangeBeforeSession>(Answer(story, 100, 60).Before);
        Assert.Equal(60 * fails, before.CostOfStaying, 1e-9);
    }

    private static EarlyPulling Answer(Story story, double cp, double cf)
    {
        ShopForecasts forecasts = ShopForecasts.Of(story.Shop);
        return EarlyPulling.Of(new ShopLives(forecasts), forecasts.Of(story.Tool("R0").Id), cp, cf, 12);
    }

    // R0 stands at 24 heats; the others cracked between 20 and 40
    private static Story Shop(int cracked)
    {
        Story story = new();
        story.Add("R0");
        story.Open("s0");
        story.Enter(Story.Worked("s0", "R0", 24));
        story.Close("s0");
        for (int i = 1; i <= cracked; i++)
        {
            story.Add($"R{i}");
            story.Open($"s{i}");
            story.Enter(Story.Worked($"s{i}", $"R{i}", 15 + (5 * i)));
            story.Close($"s{i}");
            story.Enter(Story.LookedOver($"R{i}", story.Today, Finding.Cracked));
        }

        return story;
    }
}
