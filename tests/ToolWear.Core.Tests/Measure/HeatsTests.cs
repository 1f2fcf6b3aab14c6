using CsCheck;
using ToolWear.Core.Measure;
using Xunit;

namespace ToolWear.Core.Tests.Measure;

public sealed class HeatsTests
{
    private static readonly Gen<Heats> Any = Gen.Int[0, 4000].Select(Heats.OfHalves);

    [Theory]
    [InlineData("3", 6)]
    [InlineData("2.5", 5)]
    [InlineData("2,5", 5)]
    [InlineData("0.5", 1)]
    [InlineData(".5", 1)]
    [InlineData(" 12 ", 24)]
    [InlineData("1000", 2000)]
    [InlineData("3.0", 6)]
    [InlineData("2 1/2", 5)]
    [InlineData("2½", 5)]
    [InlineData("1/2", 1)]
    [InlineData("½", 1)]
    public void Heats_are_whole_or_half(string text, int halves)
    {
        Assert.True(Heats.TryParse(text, out Heats heats, out string refusal), refusal);
        Assert.Equal(halves, heats.Halves);
    }

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("0.25")]
    [InlineData("-1")]
    [InlineData("1000.5")]
    [InlineData("1e2")]
    [InlineData("NaN")]
    [InlineData("1,000.5")]
    [InlineData("three")]
    [InlineData("21/2")]
    [InlineData("2.5½")]
    [InlineData("99999999999999999999999999999999")]
    public void Other_numbers_are_refused_with_what_would_be_right(string text)
    {
        Assert.False(Heats.TryParse(text, out Heats heats, out string refusal));
        Assert.Equal(Heats.None, heats);
        Assert.Equal($"heats \"{text}\": type a number from 0.5 to 1000 in steps of a half, such as 3 or 2.5", refusal);
    }

    [Fact]
    public void What_is_written_is_read_back() =>
        Any.Where(heats => heats >= Heats.Half && heats <= Heats.MostAtOnce)
            .Sample(heats =>
            {
                Assert.True(Heats.TryParse(heats.ToString(), out Heats read, out string refusal), refusal);
                Assert.Equal(heats, read);
            });

    [Fact]
    public void Halves_add_up_and_compare_as_their_numbers() =>
        Gen.Select(Any, Any)
            .Sample(
                (a, b) =>
                {
                    Assert.Equal(a.Count + b.Count, (a + b).Count);
                    Assert.Equal(a.Count < b.Count, a < b);
                    Assert.Equal(a.Count > b.Count, a > b);
                    Assert.Equal(a.Count <= b.Count, a <= b);
                    Assert.Equal(a.Count >= b.Count, a >= b);
                    Assert.Equal(a.Count.CompareTo(b.Count), Math.Sign(a.CompareTo(b)));
                }
            );

    [Fact]
    public void Two_twins_that_share_a_heat_make_one() => Assert.Equal(Heats.Of(1), Heats.Half + Heats.Half);

    [Fact]
    public void Heats_below_zero_cannot_be_built()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Heats.OfHalves(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Heats.Of(-1));
        Assert.Throws<OverflowException>(() => Heats.Of(int.MaxValue));
    }
}
