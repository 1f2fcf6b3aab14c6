using System.Text.Json;
using ToolWear.Core.Measure;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Trials;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

public sealed class TrialTests
{
    // cases.json s06, "compare": computed by an independent program in C
    [Fact]
    public void The_comparison_of_two_steels_agrees()
    {
        GroupComparison comparison = GroupComparison.Of(Histories.Case("s06"), "G1", "G2");
        JsonElement expected = Published
            .Json("wear/cases.json")
            .GetProperty("s06")
            .GetProperty("expected")
            .GetProperty("compare");
        double[] life = [.. expected.GetProperty("life_ratio").EnumerateArray().Select(number => number.GetDouble())];
        Estimate ratio = Assert.IsType<Estimate>(comparison.LifeRatio);
        Near.Relative(life[0], ratio.Low90, 1e-5, "low");
        Near.Relative(life[2], ratio.Value, 1e-5, "middle");
        Near.Relative(life[4], ratio.High90, 1e-5, "high");
        Near.Relative(expected.GetProperty("p_longer").GetDouble(), comparison.ChanceALastsLonger, 1e-5, "chance");
        double[] rate =
        [
            .. expected.GetProperty("wear_rate_ratio").EnumerateArray().Select(number => number.GetDouble()),
        ];
        Estimate inverse = Assert.IsType<Estimate>(comparison.RateRatio);
        Near.Relative(rate[0], inverse.Low90, 1e-5, "rate low");
        Near.Relative(rate[2], inverse.Value, 1e-5, "rate");
        Near.Relative(rate[4], inverse.High90, 1e-5, "rate high");
        Assert.Equal(TrialVerdict.NotEnoughData, comparison.Verdict);
    }

    [Fact]
    public void A_tool_counts_for_the_hand_that_worked_four_fifths_of_its_heats()
    {
        Story story = new();
        foreach ((string mark, int orla, int bram) in new[] { ("R0", 9, 1), ("R1", 2, 8), ("R2", 5, 5) })
        {
            story.Add(mark);
            foreach ((string hand, int heats) in new[] { ("Orla", orla), ("Bram", bram) })
            {
                string session = mark + hand;
                story.Enter(Story.Opening(session, story.Today) with { Hand = hand });
                story.Enter(Story.Worked(session, mark, heats));
                story.Close(session);
            }
        }

        Assert.Equal(
            ["Orla", "Bram", ""],
            ShopTrials
                .Histories(story.Shop, TrialBy.Hand)
                .Where(each => each.Gauge == "width")
                .Select(each => each.Group)
        );
    }

    [Theory]
    [InlineData(0.96, 0.9, 3, TrialVerdict.ALastsLonger, "a lasts longer")]
    [InlineData(0.04, 0.9, 3, TrialVerdict.BLastsLonger, "b lasts longer")]
    [InlineData(0.95, 0.9, 3, TrialVerdict.LeaningToA, "leaning to a")]
    [InlineData(0.07, 0.9, 3, TrialVerdict.LeaningToB, "leaning to b")]
    [InlineData(0.50, 0.80, 1.25, TrialVerdict.PracticallyEqual, "practically equal")]
    [InlineData(0.90, 0.79, 1.25, TrialVerdict.NotEnoughData, "not enough data")]
    public void Each_verdict_has_its_bounds_and_its_words(
        double chance,
        double low,
        double high,
        TrialVerdict verdict,
        string words
    )
    {
        Assert.Equal(verdict, GroupComparison.VerdictOf(chance, low, high));
        Assert.Equal(words, TrialWords.Of(verdict));
    }

    [Fact]
    public void Four_times_the_life_is_seen_and_the_other_way_round()
    {
        List<WearHistory> kind = [.. Worn("a", "G1", 80), .. Worn("b", "G2", 20)];
        GroupComparison ab = GroupComparison.Of(kind, "G1", "G2");
        GroupComparison ba = GroupComparison.Of(kind, "G2", "G1");
        Assert.Equal(TrialVerdict.ALastsLonger, ab.Verdict);
        Assert.Equal(TrialVerdict.BLastsLonger, ba.Verdict);
        Estimate ratio = Assert.IsType<Estimate>(ab.LifeRatio);
        Near.Relative(1 / ratio.Value, Assert.IsType<Estimate>(ba.LifeRatio).Value, 1e-9, "ratio");
        Near.Either(1 - ab.ChanceALastsLonger!.Value, ba.ChanceALastsLonger, 1e-9, 1e-9, "chance");
        Assert.InRange(ratio.Value, 2, 4);
    }

    [Fact]
    public void What_was_guessed_of_the_lives_does_not_pass_for_what_was_seen()
    {
        // the same wear in both groups: whoever was guessed at 90 does not last half as long again for that
        List<WearHistory> kind = [.. Worn("a", "G1", 60, guessHeats: 90), .. Worn("b", "G2", 60, guessHeats: 60)];
        GroupComparison comparison = GroupComparison.Of(kind, "G1", "G2");
        Assert.InRange(Assert.IsType<Estimate>(comparison.LifeRatio).Value, 0.9, 1.15);
    }

    [Fact]
    public void Two_tools_of_each_group_must_have_been_read()
    {
        List<WearHistory> kind =
        [
            .. Worn("a", "G1", 80),
            Histories.One("x", 9, [(9, 0.4)], group: "G2"),
            Histories.One("y", 9, [], group: "G2"),
        ];
        GroupComparison comparison = GroupComparison.Of(kind, "G1", "G2");
        Assert.Equal(TrialVerdict.NotEnoughData, comparison.Verdict);
        Assert.Equal(new NotEnoughData(1, 2, "each group needs two tools that were read"), comparison.LifeRatio);
        Assert.Null(comparison.ChanceALastsLonger);
        Assert.Equal(0, Assert.IsType<NotEnoughData>(GroupComparison.Of(kind, "G1", "nobody").LifeRatio).Has);
        Assert.Throws<ArgumentException>(() => GroupComparison.Of(kind, "G1", "G1"));
    }

    private static IEnumerable<WearHistory> Worn(string name, string group, double life, double guessHeats = 60) =>
        Enumerable
            .Range(0, 5)
            .Select(i =>
            {
                double own = life * (0.9 + (0.05 * i));
                return Histories.One(
                    name + i,
                    own,
                    [(own / 2, 0.4), (own * 0.8, 0.64), (own, 0.8)],
                    group: group,
                    guessHeats: guessHeats
                );
            });
}
