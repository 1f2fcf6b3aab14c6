using System.Globalization;
using CsCheck;
using ToolWear.Core.Measure;
using Xunit;

namespace ToolWear.Core.Tests.Measure;

public sealed class TypedDayTests
{
    // a Saturday
    private static readonly DateOnly Today = new(2026, 10, 31);

    [Theory]
    [InlineData("2026-10-31")]
    [InlineData("31.10.2026")]
    [InlineData(" 31.10.26 ")]
    [InlineData("31/10/2026")]
    [InlineData("10/31/26")]
    [InlineData("31 Oct 2026")]
    [InlineData("31-Oct-26")]
    [InlineData("October 31, 2026")]
    [InlineData("today")]
    [InlineData("31.10.")]
    [InlineData("10-31")]
    [InlineData("31 Oct")]
    public void A_day_is_read_however_people_write_it(string text)
    {
        Assert.Equal(Today, Read(text));
        Assert.Equal(Today, Read(text, isToCome: true));
    }

    [Theory]
    [InlineData("yesterday", "2026-10-30")]
    [InlineData("Friday", "2026-10-30")]
    [InlineData("sun", "2026-10-25")]
    [InlineData("1.11.", "2025-11-01")]
    [InlineData("2026-5-1", "2026-05-01")]
    public void Of_what_happened_the_last_such_day_is_meant(string text, string day) =>
        Assert.Equal(DayText.Iso(day), Read(text));

    [Theory]
    [InlineData("tomorrow", "2026-11-01")]
    [InlineData("friday", "2026-11-06")]
    [InlineData("Sunday", "2026-11-01")]
    [InlineData("30.10.", "2027-10-30")]
    [InlineData("05-01", "2027-05-01")]
    [InlineData("+28", "2026-11-28")]
    [InlineData("+0", "2026-10-31")]
    public void Of_what_is_to_come_the_next_such_day_is_meant(string text, string day) =>
        Assert.Equal(DayText.Iso(day), Read(text, isToCome: true));

    [Theory]
    [InlineData("04/05/2026", "2026-05-04", "2026-04-05")]
    [InlineData("4/5/26", "2026-05-04", "2026-04-05")]
    [InlineData("saturday", "2026-10-31", "2026-10-24")]
    public void A_day_that_can_be_two_is_refused_with_both(string text, string one, string other)
    {
        Assert.Null(Read(text));
        Assert.Equal($"\"{text}\" can be {one} or {other}; write one of these", Refused(text));
    }

    [Fact]
    public void Neighbours_say_which_of_two_is_meant()
    {
        string text = "04/05/2026";
        Assert.Equal(
            new DateOnly(2026, 4, 5),
            Read(text, monthFirst: DayText.IsMonthFirst([text, "1/31/2026", "13.6"]))
        );
        Assert.Equal(new DateOnly(2026, 5, 4), Read(text, monthFirst: DayText.IsMonthFirst([text, "31/1/2026"])));
        Assert.Null(DayText.IsMonthFirst([text]));
        Assert.Null(DayText.IsMonthFirst(["31/1/2026", "1/31/2026"]));
    }

    [Theory]
    [InlineData("31.4.2026")]
    [InlineData("2026-02-30")]
    [InlineData("tomorrow")]
    [InlineData("+3")]
    [InlineData("")]
    [InlineData("10/2026")]
    [InlineData("31.4.")]
    public void What_is_no_day_is_none(string text)
    {
        Assert.Null(Read(text));
        Assert.Contains("is no day; type one like", Refused(text), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("yesterday")]
    [InlineData("+3651")]
    [InlineData("+1.5")]
    public void What_is_no_day_to_come_is_none(string text) => Assert.Null(Read(text, isToCome: true));

    [Fact]
    public void A_day_of_one_and_the_same_reading_is_no_doubt() =>
        Assert.Equal(new DateOnly(2026, 5, 5), Read("5/5/2026"));

    [Fact]
    public void A_day_of_the_week_is_never_more_than_a_week_off() =>
        Gen.Select(Gen.Int[0, 800], Gen.Int[0, 6])
            .Sample(
                (ahead, weekday) =>
                {
                    DateOnly today = Today.AddDays(ahead);
                    string name = CultureInfo.InvariantCulture.DateTimeFormat.DayNames[weekday];
                    bool isOne = DayText.TryRead(name, today, out DateOnly past, out _);
                    Assert.Equal((int)today.DayOfWeek != weekday, isOne);
                    Assert.Equal(isOne, DayText.TryRead(name, today, out DateOnly next, out _, isToCome: true));
                    Assert.True(!isOne || (past < today && today < next && past.AddDays(7) == next));
                    Assert.True(!isOne || (int)past.DayOfWeek == weekday);
                }
            );

    private static DateOnly? Read(string text, bool isToCome = false, bool? monthFirst = null) =>
        DayText.TryRead(text, Today, out DateOnly day, out _, isToCome, monthFirst) ? day : null;

    private static string Refused(string text)
    {
        Assert.False(DayText.TryRead(text, Today, out _, out string refusal));
        return refusal;
    }
}
