using ToolWear.Core.Measure;
using Xunit;

namespace ToolWear.Core.Tests.Measure;

public sealed class TypedDayTests
{
    [Theory]
    [InlineData("2026-10-31")]
    [InlineData("31.10.2026")]
    [InlineData(" 31.10.26 ")]
    [InlineData("31/10/2026")]
    [InlineData("10/31/26")]
    [InlineData("31 Oct 2026")]
    [InlineData("31-Oct-26")]
    [InlineData("October 31, 2026")]
    public void A_day_is_read_however_people_write_it(string text) =>
        Assert.Equal(new DateOnly(2026, 10, 31), DayText.Typed(text));

    [Theory]
    [InlineData("04/05/2026")]
    [InlineData("4/5/26")]
    public void A_day_that_can_be_two_is_neither_until_its_neighbours_say(string text)
    {
        Assert.Null(DayText.Typed(text));
        Assert.Contains("can be 2026-05-04 or 2026-04-05", DayText.Fault(text), StringComparison.Ordinal);
        Assert.Equal(new DateOnly(2026, 4, 5), DayText.Typed(text, DayText.IsMonthFirst([text, "1/31/2026", "13.6"])));
        Assert.Equal(new DateOnly(2026, 5, 4), DayText.Typed(text, DayText.IsMonthFirst([text, "31/1/2026"])));
        Assert.Null(DayText.IsMonthFirst([text]));
        Assert.Null(DayText.IsMonthFirst(["31/1/2026", "1/31/2026"]));
    }

    [Theory]
    [InlineData("31.4.2026")]
    [InlineData("2026-02-30")]
    [InlineData("yesterday")]
    [InlineData("")]
    [InlineData("10/2026")]
    public void What_is_no_day_is_none(string text)
    {
        Assert.Null(DayText.Typed(text));
        Assert.Null(DayText.Fault(text));
    }

    [Fact]
    public void A_day_of_one_and_the_same_reading_is_no_doubt() =>
        Assert.Equal(new DateOnly(2026, 5, 5), DayText.Typed("5/5/2026"));
}
