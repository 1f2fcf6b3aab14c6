using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Lifetimes;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

public sealed class DrawnCracksTests
{
    private const int Draws = 8000;

    [Fact]
    public void Without_a_failure_on_record_nothing_is_drawn() =>
        Assert.Null(DrawnCracks.Of(Sort((40, false), (90, false)), 60, Draws, 1));

    // S_crack(t) = average of exp(-(t/eta)^b), and the fit from eight failures on: SuddenFailures says both
    [Theory]
    [InlineData(1)]
    [InlineData(9)]
    public void New_tools_crack_as_the_curve_of_the_records_says(int failures)
    {
        ShopFailures sort = Sort([
            .. Enumerable.Range(1, failures).Select(i => (20.0 + (9 * i), true)),
            (70.0, false),
            (90.0, false),
        ]);
        SuddenFailures curve = SuddenFailures.Of(sort.Lives, 60);
        DrawnCracks drawn = DrawnCracks.Of(sort, 60, Draws, 3)!;
        double[] heats = [.. Enumerable.Range(0, Draws).Select(i => drawn.Heats(i, 5, 0))];
        foreach (double t in (double[])[10, 30, 60, 120])
        {
            double S = curve.Surviving(t);
            double share = heats.Count(each => each > t) / (double)Draws;
            Assert.True(Math.Abs(share - S) <= 3.5 * Math.Sqrt(S * (1 - S) / Draws), $"{t}: {share} {S}");
        }
    }

    // with shape and scale known, S(k) = S(n+k)/S(n)
    [Fact]
    public void A_tool_that_has_stood_some_heats_cracks_as_one_that_has()
    {
        ShopFailures sort = Sort([.. Enumerable.Range(1, 9).Select(i => (20.0 + (9 * i), true))]);
        SuddenFailures curve = SuddenFailures.Of(sort.Lives, 60);
        DrawnCracks drawn = DrawnCracks.Of(sort, 60, Draws, 4)!;
        double[] heats = [.. Enumerable.Range(0, Draws).Select(i => drawn.Heats(i, 6, 50))];
        foreach (double k in (double[])[5, 20, 40])
        {
            double S = curve.ChanceStanding(50, k);
            double share = heats.Count(each => each > k) / (double)Draws;
            Assert.True(Math.Abs(share - S) <= 3.5 * Math.Sqrt(S * (1 - S) / Draws), $"{k}: {share} {S}");
        }
    }

    [Fact]
    public void A_plan_reckons_with_cracks_once_one_is_on_record()
    {
        Story story = new();
        story.Add("R1");
        story.Add("R2");
        story.Open("s1");
        story.Enter(Story.Worked("s1", "R2", 12));
        story.Close("s1");
        ToolPlace place = new("hatchet", Place.Rough, "drift");
        PlaceLives before = Lives(story).At(place);
        Assert.Equal(0, Lives(story).Failures(place).Failures);
        story.Enter(Story.LookedOver("R2", story.Today, Finding.Cracked));
        PlaceLives after = Lives(story).At(place);
        Assert.Equal(1, Lives(story).Failures(place).Failures);

        // a crack can only take heats away: in every draw a new tool lasts no longer than by wear alone
        Assert.True(after.NewLife.Value < before.NewLife.Value, $"{after.NewLife} {before.NewLife}");
        Assert.True(after.UpTo(60).Cover(2, 60) < before.UpTo(60).Cover(2, 60));
    }

    private static ShopLives Lives(Story story) => new(ShopForecasts.Of(story.Shop));

    private static ShopFailures Sort(params ImmutableArray<(double Heats, bool Failed)> tools) =>
        new([.. tools.Select(tool => new WatchedLife(tool.Heats, tool.Failed))], 0);
}
