using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Lifetimes;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

/// <summary>By how many heats half have ended.</summary>
public sealed class MedianLifeTests
{
    // aml: R. G. Miller (1981), Survival Analysis; medians 31 and 23 weeks as in the help of R survival (from memory)
    [Theory]
    [InlineData("Maintained", 31)]
    [InlineData("Nonmaintained", 23)]
    public void The_median_of_the_published_set(string arm, double weeks)
    {
        WatchedLife[] lives =
        [
            .. Published
                .Rows("aml.csv")
                .Where(row => row["x"] == arm)
                .Select(row => new WatchedLife(row.Number("time"), row["status"] == "1")),
        ];
        Assert.Equal(weeks, Assert.IsType<MedianLife>(MedianLife.Of(lives)).Heats);
    }

    // by hand: S = 3/4, 1/2, 1/4, 0; the first time at which S <= 1/2 is the second. Limits by exp(-+1.96 sqrt g/ln S):
    // lower .128, .058, .009, so the first time; upper .961, .845, .665, so none before the last, where there is none
    [Fact]
    public void Limits_by_hand()
    {
        MedianLife life = Assert.IsType<MedianLife>(
            MedianLife.Of([new(10, true), new(20, true), new(30, true), new(40, true)])
        );
        Assert.Equal(new MedianLife(20, 10, null), life);
    }

    [Fact]
    public void Too_few_ended_or_most_still_at_work_say_so()
    {
        Assert.Equal(
            new NotEnoughData(2, 3, "tools that have ended"),
            MedianLife.Of([new(10, true), new(20, true), new(30, false)])
        );
        Assert.IsType<NotEnoughData>(
            MedianLife.Of([
                new(10, true),
                new(11, true),
                new(12, true),
                .. Enumerable.Repeat(new WatchedLife(99, false), 9),
            ])
        );
    }
}
