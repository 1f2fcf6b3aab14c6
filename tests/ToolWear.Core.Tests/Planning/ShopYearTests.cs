using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Years;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Lifetimes;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

/// <summary>A year counted by hand.</summary>
public sealed class ShopYearTests
{
    [Fact]
    public void A_year_counts_what_happened_in_it()
    {
        Story story = new() { Today = Story.Day(1) };
        foreach (string mark in (string[])["R1", "R2", "R3", "R4"])
        {
            story.Add(mark);
        }

        story.Open("a");
        story.Enter(Story.Worked("a", "R1", 30));
        story.Enter(Story.Worked("a", "R2", 20));
        story.Enter(Story.Worked("a", "R3", 10));
        story.Enter(Story.Worked("a", "R4", 5));
        story.Enter(new SessionClosed("a", 7));
        story.Today = Story.Day(2);
        story.Enter(Story.Measured("R1", Story.Day(2), "a"));
        story.Enter(Story.Scrapped("R1", Story.Day(2)));
        story.Enter(Story.Reworked("R2", Story.Day(2)));
        story.Enter(Story.Measured("R2", Story.Day(2)));
        story.Enter(new ToolScrapped(Story.Mark("R2"), Story.Day(2), ScrapCause.Bent, null, null));
        story.Enter(new ToolScrapped(Story.Mark("R3"), Story.Day(2), ScrapCause.Lost, null, null));

        var year = ShopYear.Of(story.Shop, null, 2026);
        YearOfTools rough = Assert.Single(year.Tools);
        // R3 was lost, which is no end of its life; two ended ones name no median
        Assert.Equal(
            new YearOfTools(
                "drift",
                Place.Rough,
                null,
                1,
                4,
                3,
                1,
                2,
                new NotEnoughData(2, 3, "tools that have ended")
            ),
            rough
        );
        Assert.Equal(
            [(ScrapCause.Worn, 1), (ScrapCause.Bent, 1), (ScrapCause.Lost, 1)],
            year.Causes.Select(each => (each.Cause, each.Tools))
        );
        Assert.All(year.Causes, cause => Assert.Empty(cause.LedTo));
        Assert.Equal([new YearOfHeads(null, 1, 7, 0, null)], year.Heads);
        // the reading of R2 came after it was dressed: the wear of its 20 heats was never read
        Assert.Equal(new YearMeasured(2, 0, 65, 30), year.Measured);
        Assert.Equal(30.0 / 65, year.Measured.Share);
    }

    [Fact]
    public void What_comes_later_is_not_known_at_the_end_of_a_year()
    {
        Story story = new() { Today = new DateOnly(2025, 12, 1) };
        foreach (string mark in (string[])["R1", "R2", "R3"])
        {
            story.Add(mark);
        }

        story.Open("a");
        story.Enter(Story.Worked("a", "R1", 30));
        story.Close("a");
        story.Today = new DateOnly(2026, 1, 10);
        story.Open("b");
        story.Enter(Story.Worked("b", "R1", 10));
        story.Enter(Story.Worked("b", "R2", 20));
        story.Enter(Story.Worked("b", "R3", 60));
        story.Close("b");
        foreach (string mark in (string[])["R1", "R2", "R3"])
        {
            story.Enter(Story.Scrapped(mark, story.Today));
        }

        Assert.Equal([2025, 2026], ShopYear.Years(story.Shop, story.Today));
        YearOfTools then = Assert.Single(ShopYear.Of(story.Shop, null, 2025).Tools);
        Assert.Equal((3, 3, 0, 0), (then.InUse, then.Added, then.Scrapped, then.Ended));
        Assert.Equal(30, ShopYear.Of(story.Shop, null, 2025).Measured.Heats);
        YearOfTools now = Assert.Single(ShopYear.Of(story.Shop, null, 2026).Tools);
        Assert.Equal((0, 0, 3, 3), (now.InUse, now.Added, now.Scrapped, now.Ended));
        Assert.Equal(40, Assert.IsType<MedianLife>(now.Life).Heats);
        Assert.Empty(ShopYear.Of(story.Shop, null, 2027).Tools);
    }

    // by hand, at the end of 2025: R5 is watched to 5 heats, so 4 are at risk at 10: S = 3/4, 1/2 and the median is 20;
    // its 95 heats of 2026 would put 5 at risk and the median at 30
    [Fact]
    public void Heats_of_a_later_year_do_not_count_in_the_life_of_an_earlier_one()
    {
        Story story = new() { Today = new DateOnly(2025, 12, 1) };
        (string Mark, int Heats)[] tools = [("R1", 10), ("R2", 20), ("R3", 30), ("R4", 40), ("R5", 5)];
        foreach ((string mark, _) in tools)
        {
            story.Add(mark);
        }

        story.Open("a");
        foreach ((string mark, int heats) in tools)
        {
            story.Enter(Story.Worked("a", mark, heats));
        }

        story.Close("a");
        foreach ((string mark, _) in tools[..^1])
        {
            story.Enter(Story.Scrapped(mark, story.Today));
        }

        story.Today = new DateOnly(2026, 1, 10);
        story.Open("b");
        story.Enter(Story.Worked("b", "R5", 95));
        YearOfTools then = Assert.Single(ShopYear.Of(story.Shop, null, 2025).Tools);
        Assert.Equal(20, Assert.IsType<MedianLife>(then.Life).Heats);
    }
}
