using CsCheck;
using ToolWear.Core.Measure;
using ToolWear.Testing.Generators;
using Xunit;

namespace ToolWear.Core.Tests.Measure;

public sealed class LengthTests
{
    [Fact]
    public void A_sixty_fourth_and_a_thousandth_of_an_inch_are_whole_nanometres()
    {
        Assert.Equal(396_875, Length.NanometresInInch / 64.0);
        Assert.Equal(25_400, Length.NanometresInInch / 1000.0);
    }

    [Fact]
    public void Sums_and_differences_are_exact() =>
        Gen.Select(Lengths.Any, Lengths.Any)
            .Sample(
                (a, b) =>
                {
                    Assert.Equal(a, a + b - b);
                    Assert.Equal(a - b, -(b - a));
                    Assert.Equal((a - b).Abs(), (b - a).Abs());
                    Assert.Equal(a.Nanometres < b.Nanometres, a < b);
                    Assert.Equal(a.Nanometres >= b.Nanometres, a >= b);
                    Assert.Equal(a.Nanometres > b.Nanometres, a > b);
                    Assert.Equal(a.Nanometres <= b.Nanometres, a <= b);
                }
            );

    [Fact]
    public void Millimetres_as_double_and_as_decimal_come_back() =>
        Lengths.Any.Sample(size =>
        {
            Assert.Equal(size, Length.FromMm(size.Mm));
            Assert.Equal(size, Length.FromMm((decimal)size.Nanometres / 1_000_000));
        });

    [Fact]
    public void What_is_too_long_throws_and_never_wraps()
    {
        Length longest = new(long.MaxValue);
        Assert.Throws<OverflowException>(() => longest + new Length(1));
        Assert.Throws<OverflowException>(() => -new Length(long.MinValue));
        Assert.Throws<OverflowException>(() => Length.FromMm(1e13));
        Assert.Throws<OverflowException>(() => Length.FromMm(double.NaN));
    }

    [Theory]
    [InlineData(36_500_000, "36.5")]
    [InlineData(396_875, "0.396875")]
    [InlineData(-1, "-0.000001")]
    [InlineData(0, "0")]
    [InlineData(10_000_000_000, "10000")]
    public void Files_hold_bare_millimetres_with_every_digit(long nm, string text)
    {
        Assert.Equal(text, new Length(nm).ToMmText());
        Assert.Equal(text + " mm", new Length(nm).ToString());
    }
}
