using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

public sealed class ForgeListTests
{
    [Fact]
    public void The_batches_make_up_what_the_whole_order_book_needs()
    {
        Story story = Shop(readyDays: 0, treated: false);
        ForgeList list = List(story, 0.9);
        Replacements needs = Lives.Needs(Assert.Single(list.Places).Needs);
        Assert.True(needs.Needed > 1, $"{needs.Needed}");
        Assert.Equal(needs.Needed, list.Batches.Sum(batch => batch.Number));
        Assert.True(list.Batches.All(batch => batch.Sure >= 0.9 && batch.SureWithOneFewer < 0.9));
        Assert.True(list.Batches.All(batch => batch.ForgeBy == batch.ReadyBy && !batch.IsLate));
        Assert.Contains("R1", list.Batches[0].Why, StringComparison.Ordinal);
        Assert.Contains("fair", list.Batches[0].Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_ready_before_today_and_its_days()
    {
        ForgeList list = List(Shop(readyDays: 7, treated: true), 0.9);
        Assert.NotEmpty(list.Batches);
        foreach (ForgeBatch batch in list.Batches)
        {
            Assert.True(batch.ForgeBy >= list.From, $"{batch.ForgeBy}");
            Assert.Equal(batch.ForgeBy.AddDays(7), batch.ReadyBy);
            Assert.Equal(batch.Needed.WantedOn < batch.ReadyBy, batch.IsLate);
        }
    }

    [Fact]
    public void What_one_fire_serves_is_forged_together_within_the_shops_window()
    {
        Story story = Shop(readyDays: 0, treated: false);
        int Batches(string days)
        {
            story.Enter(new SettingChanged("batch_window_days", days));
            return List(story, 0.9).Batches.Length;
        }

        int[] batches = [Batches("0"), Batches("7"), Batches("60")];
        Assert.Equal(batches.OrderDescending(), batches);
        Assert.True(batches[0] > 1);
        Assert.Equal(1, batches[2]);
    }

    [Fact]
    public void Days_that_lack_a_tool_move_and_the_order_is_late_by_days_with_a_way_out()
    {
        Story story = Shop(readyDays: 58, treated: true);
        story.Enter(Story.LookedOver("R1", story.Today, Finding.Cracked));
        ForgeList list = List(story, 0.9);
        DateOnly ready = list.From.AddDays(58);
        Assert.All(list.Calendar.Days, day => Assert.True(day.On >= ready, $"{day.On}"));
        LateOrder late = Assert.Single(list.Calendar.Late);
        Assert.Equal(list.Calendar.Days[^1].On.DayNumber - late.Order.DueOn.DayNumber, late.DaysLate);
        Assert.Equal(list.Batches[0].Tools, Assert.Single(late.WaitsFor));
        Assert.Equal(SoonerBy.Haste, Assert.Single(list.WaysOut).How);
        Assert.False(list.Batches[0].IsLate);
    }

    [Fact]
    public void A_greater_certainty_never_needs_fewer_and_fewer_heads_never_more()
    {
        Story story = Shop(readyDays: 0, treated: false);
        int[] needed =
        [
            .. new[] { 0.5, 0.8, 0.9, 0.99 }.Select(sure => List(story, sure).Batches.Sum(batch => batch.Number)),
        ];
        Assert.Equal(needed.Order(), needed);
        Assert.True(needed[0] < needed[^1]);
        Assert.True(List(story, 0.9, Story.Day(8)).Batches.Sum(batch => batch.Number) < needed[2]);
    }

    [Fact]
    public void A_cracked_tool_is_not_counted_on()
    {
        Story story = Shop(readyDays: 0, treated: false);
        Replacements before = Lives.Needs(List(story, 0.9).Places[0].Needs);
        story.Enter(Story.LookedOver("R1", story.Today, Finding.Cracked));
        ForgeList list = List(story, 0.9);
        Replacements after = Lives.Needs(list.Places[0].Needs);

        // one tool fewer on hand: less sure with any number of new ones, and more to be expected
        Assert.All(before.Cover.Zip(after.Cover), pair => Assert.True(pair.Second <= pair.First));
        Assert.True(after.Expected > before.Expected, $"{after.Expected} {before.Expected}");
        Assert.True(after.Needed >= before.Needed);
        Assert.NotNull(Assert.Single(list.Places[0].InService).WhyNot);
        Assert.Contains("R1 is not counted on", list.Batches[0].Why, StringComparison.Ordinal);
    }

    [Fact]
    public void The_uncertainty_of_the_kind_does_not_average_out()
    {
        // a book that takes several tools: independent lives would be far surer of their sum
        Story story = Shop(readyDays: 0, treated: false);
        ShopLives lives = new(ShopForecasts.Of(story.Shop));
        PlaceLives drawn = lives.At(new ToolPlace("hatchet", Place.Rough, "drift"));
        Estimate life = drawn.NewLife;
        double demand = 8 * life.Value;
        SisterForecast one = Assert.IsType<SisterForecast>(
            SisterForecasts.Of([new WearHistory("k", "g", "", "", 0.8, 0.05, 60, true, 0, [])]).Tools[0]
        );
        Replacements apart = Lives.Needs(Replacements.Of([], one.ChancePastLimit, demand, 0.9));
        Replacements together = Lives.Needs(drawn.Needs(demand, 0.9));
        Assert.True(together.Needed > apart.Needed, $"{together.Needed} {apart.Needed}");
    }

    [Fact]
    public void An_odd_eye_is_quoted_with_what_is_left_on_the_shelf()
    {
        Story story = Shop(readyDays: 0, treated: false);
        EyeDescribed eye = new(
            "odd",
            ToolWear.Core.Sections.SectionKind.Oval,
            Length.FromMm(28m),
            Length.FromMm(19m),
            null,
            Length.FromMm(40m),
            0.03,
            0.03,
            Fit.Wedged,
            null,
            null,
            null,
            null,
            null,
            null
        );
        Assert.True(SeriesPlan.TryFor(story.Shop, eye, out SeriesPlan? series, out string? refusal), refusal);
        OddEyeQuote quote = OddEyeQuote.Of(new ShopLives(ShopForecasts.Of(story.Shop)), series, 4, 0.9);
        QuotedTool rough = quote.Tools.Single(tool => tool.Tool.Series.Place == Place.Rough);
        Assert.Equal(4 * 3, rough.HeatsForAll);
        Assert.Equal(12 * rough.Number, rough.SetCost);
        Assert.Equal(12 * 12 / rough.Life.Value, rough.WearCost!.Value, 9);

        // nobody noted what a finish drift costs here
        Assert.Null(quote.SetCost);
        Assert.Null(quote.LeftOnTheShelf);
    }

    private static ForgeList List(Story story, double sure, DateOnly? until = null) =>
        ForgeList.Of(new ShopLives(ShopForecasts.Of(story.Shop)), story.Today, sure, until);

    // one rough drift, half worn; 60 heads at 3 heats, 6 a day
    private static Story Shop(int readyDays, bool treated)
    {
        Story story = new();
        story.Enter(
            new PatternDescribed(
                "hatchet",
                [new PatternStage("cheeks", "hatchet", Story.Form("drift"), Place.Rough, Work.Cheeks, 3, null)]
            )
        );
        story.Enter(
            new SeriesDescribed(
                new Series(
                    "hatchet",
                    Place.Rough,
                    Story.Form("drift"),
                    ToolWear.Core.Sections.SectionKind.Teardrop,
                    Length.FromMm(34m),
                    Length.FromMm(16m),
                    null,
                    null,
                    null,
                    60,
                    "4140",
                    treated,
                    readyDays,
                    null
                )
            )
        );
        story.Enter(new ToolAdded(Story.Drift("R1") with { Cost = new ToolCost(12, 0, 0, 0), Steel = "4140" }));
        story.Open("s1");
        story.Enter(Story.Worked("s1", "R1", 24));
        story.Close("s1");
        story.Enter(Story.Measured("R1", story.Today, "s1", 15.6));
        story.Enter(new OrderDescribed("fair", "hatchet", 60, new DateOnly(2026, 6, 30), OrderState.Open));
        return story;
    }
}
