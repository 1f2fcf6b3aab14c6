using System.Collections.Immutable;
using CsCheck;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Core.Wear.Ranges;
using ToolWear.Core.Wear.Sisters;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

/// <summary>Each reading is held against the range that was said before it, and what was said too narrow is widened.</summary>
public sealed class KeptRangesTests
{
    [Fact]
    public void A_range_is_never_made_narrower_and_keeps_its_middle() =>
        Gen.Select(Gen.Int[1, 100_000], Gen.Double[1, 4])
            .Sample(
                (seed, widening) =>
                {
                    List<WearHistory> kind = SimulatedKind.Of(seed, 3);
                    foreach (
                        (Estimated plain, Estimated wide) in SisterForecasts
                            .Of(kind)
                            .Tools.Zip(SisterForecasts.Of(kind, widening).Tools)
                    )
                    {
                        (SisterForecast model, SisterForecast said) = ((SisterForecast)plain, (SisterForecast)wide);
                        HeatsLeft narrow = model.HeatsLeft;
                        HeatsLeft broad = said.HeatsLeft;
                        Assert.Equal(model.AtOrPastLimit, said.AtOrPastLimit);
                        Assert.True(broad.Q05 <= narrow.Q05 * (1 + 1e-6));
                        Assert.True((broad.Q95 ?? HeatsLeft.Most) >= narrow.Q95 * (1 - 1e-6));
                        Limits own = model.NextReading(model.HeatsNow + 5, 0.9);
                        Limits told = said.NextReading(model.HeatsNow + 5, 0.9);
                        Assert.True(told.Low <= own.Low + 1e-9 && told.High >= own.High - 1e-9);
                        double middle = said.NextReading(model.HeatsNow + 5, 0).Low;
                        Near.Either(model.NextReading(model.HeatsNow + 5, 0).Low, middle, 1e-6, 1e-9, "middle");
                        WearBand band = model.Bands([said.HeatsNow + 3])[0];
                        WearBand wider = said.Bands([said.HeatsNow + 3])[0];
                        Assert.True(wider.Low80Mm <= band.Low80Mm + 1e-9 && wider.High80Mm >= band.High80Mm - 1e-9);
                    }
                },
                iter: 3
            );

    [Fact]
    public void Nothing_makes_ranges_narrower_than_the_model() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SisterForecasts.Of([Histories.One("A", 9, [])], 0.99));

    [Fact]
    public void Twenty_readings_of_which_a_fifth_lay_outside_are_needed_and_then_nine_in_ten_would_have_held() =>
        Gen.Double[-4, 4]
            .Array[0, 60]
            .Sample(
                scores =>
                {
                    KeptRanges kept = Kept(scores);
                    double[] r = [.. scores.Select(score => Math.Abs(score) / 1.6448536269514722)];
                    Assert.Equal(r.Length, kept.Readings);
                    Assert.Equal(r.Count(each => each <= 1), kept.InsideModel);
                    Assert.True(kept.Widening >= 1);
                    Assert.True(kept.Inside >= kept.InsideModel);
                    double[] last = [.. r.TakeLast(25)];
                    bool isTooFew = last.Length >= 20 && last.Count(each => each <= 1) < 0.8 * last.Length;
                    Assert.Equal(isTooFew, kept.Widening > 1);
                    int inside = last.Count(each => each <= 1);
                    Assert.Equal(isTooFew, last.Length >= 20 && inside < KeptRanges.Enough(last.Length));
                    Assert.True(!isTooFew || last.Count(each => each <= kept.Widening) >= 0.9 * last.Length);
                    Assert.True(!isTooFew || last.Count(each => each < kept.Widening - 0.0101) < 0.9 * last.Length);
                },
                iter: 400
            );

    [Theory]
    [InlineData(19, 19, 1)]
    [InlineData(20, 5, 1.22)]
    [InlineData(20, 4, 1)]
    public void The_bounds_are_twenty_readings_and_eighty_in_a_hundred(int readings, int outside, double widening) =>
        Assert.Equal(widening, Kept([.. Enumerable.Range(0, readings).Select(i => i < outside ? 2.0 : 1.0)]).Widening);

    [Fact]
    public void Each_reading_is_held_against_the_forecast_of_the_ledger_up_to_there()
    {
        Story story = Worn(new Random(5), tools: 4, chance => 0.03 + (0.06 * chance.NextDouble()));
        ShopForecasts all = ShopForecasts.Of(story.Shop);
        GaugeHistory[] members = [.. all.All.Select(tool => tool.Gauges[0].History)];
        ImmutableArray<ReadingScore> scores = KindScores.Of(story.Shop, [.. members], 0, int.MaxValue, null).Scores;
        Assert.True(scores.Length > 25);
        // what widens is known before all of the last 25 are worked out
        KeptRanges kept = all.RangesOf("drift", Place.Rough);
        Assert.Equal(KeptRanges.Of("drift", Place.Rough, scores.TakeLast(25)).Widening, kept.Widening);
        Assert.Equal((20, 1.0), (kept.Inside, kept.Widening));
        Assert.InRange(kept.Readings, 20, 24);
        foreach (ReadingScore score in scores.Where((_, i) => i % 4 == 0))
        {
            // the shop as it was, folded anew: nothing that came later is in it
            Shop then = Shop.Fold(story.Shop.Ledger.Take((int)score.Entry - 1)).After!;
            ToolMeasured read = (ToolMeasured)story.Shop.Ledger[(int)score.Entry - 1].What;
            Assert.True(then.TryFind(read.Tool, out ToolInShop? tool));
            SisterForecast said = SisterForecasts
                .Of([.. then.Tools.Values.Select(each => ShopHistories.Of(then, each)[0].Wear)])
                .Tools.OfType<SisterForecast>()
                .ElementAt(then.Tools.Values.ToList().FindIndex(each => each.Id == tool.Id));
            double wear = 16 - read.Size.Mm;
            double share = (2 * NormalCurve.Phi(Math.Abs(score.Score))) - 1;
            Limits range = said.NextReading(said.HeatsNow, share);
            Near.Either(score.Score < 0 ? range.Low : range.High!.Value, wear, 1e-3, 1e-3, $"entry {score.Entry}");
        }
    }

    [Fact]
    public void A_shop_whose_tools_wear_harsher_than_the_model_believes_gets_wider_ranges_and_they_hold_better()
    {
        Story story = Worn(new Random(3), tools: 12, chance => chance.NextDouble() < 0.33 ? 0.55 : 0.005);
        GaugeForecast gauge = ShopForecasts.Of(story.Shop).Of(story.Tool("R11").Id).Gauges[0];
        KeptRanges kept = Assert.IsType<KeptRanges>(gauge.Ranges);
        Assert.True(kept.Widening > 1, $"{kept}");
        Assert.True(kept.InsideModel < 0.8 * kept.Readings, $"{kept}");
        KeptRanges record = Assert.Single(ShopForecasts.Of(story.Shop).Ranges);
        Assert.True(record.Readings > kept.Readings && record.Inside > record.InsideModel, $"{record}");
        TestContext.Current.TestOutputHelper?.WriteLine($"{kept} {record}");
        SisterForecast own = SisterForecasts
            .Of([.. story.Shop.Tools.Values.Select(each => ShopHistories.Of(story.Shop, each)[0].Wear)])
            .Tools.OfType<SisterForecast>()
            .Last();
        Assert.True(gauge.Forecast!.HeatsLeftIfNotPast.Q05 < own.HeatsLeftIfNotPast.Q05);
        Assert.True(gauge.Forecast.HeatsLeftIfNotPast.Q95 > own.HeatsLeftIfNotPast.Q95);
    }

    [Fact]
    public void Drawn_lives_spread_as_far_as_the_ranges()
    {
        List<WearHistory> kind = SimulatedKind.Of(11, 3);
        SisterForecast said = (SisterForecast)SisterForecasts.Of(kind, 1.8).Tools[0];
        double[] drawn = DrawnLives.Of(kind, 20_000, 4, 1.8).HeatsLeft(0, 1)!;
        foreach (double k in new[] { said.HeatsLeftIfNotPast.Q10!.Value, said.HeatsLeftIfNotPast.Q90!.Value })
        {
            Assert.InRange(
                drawn.Count(each => each <= k) / 20_000.0,
                said.ChancePastLimit(k) - 0.02,
                said.ChancePastLimit(k) + 0.02
            );
        }
    }

    private static KeptRanges Kept(double[] scores) =>
        KeptRanges.Of("drift", Place.Rough, scores.Select((score, i) => new ReadingScore(i, score)));

    // drifts done under 15.2 mm, read after every four heats
    private static Story Worn(Random chance, int tools, Func<Random, double> wearOfSession)
    {
        Story story = new();
        for (int i = 0; i < tools; i++)
        {
            story.Add($"R{i}");
            double wear = 0;
            for (int s = 0; s < 10 && wear < 0.9; s++)
            {
                string session = $"{i}-{s}";
                story.Open(session);
                story.Enter(Story.Worked(session, $"R{i}", 4));
                wear += wearOfSession(chance);
                story.Enter(Story.Measured($"R{i}", story.Today, session, Math.Round(16 - wear, 2)));
                story.Close(session);
            }
        }

        return story;
    }
}
