using ToolWear.Core.Measure;
using Xunit;

namespace ToolWear.Core.Tests.Measure;

public sealed class SizeShownTests
{
    [Theory]
    [InlineData(14_200_000, "14.20", "0.559")]
    [InlineData(36_512_500, "36.51", "1.438")]
    [InlineData(14_205_000, "14.21", "0.559")]
    [InlineData(1_005_000, "1.01", "0.040")]
    [InlineData(4_999, "0.00", "0.000")]
    [InlineData(5_000, "0.01", "0.000")]
    [InlineData(12_700, "0.01", "0.001")]
    [InlineData(-5_000, "-0.01", "0.000")]
    [InlineData(0, "0.00", "0.000")]
    public void A_caliper_size_is_rounded_half_away_from_zero(long nm, string mm, string inch)
    {
        Assert.Equal(mm, SizeShown.Caliper(new(nm), LengthUnit.Mm));
        Assert.Equal(inch, SizeShown.Caliper(new(nm), LengthUnit.Inch));
    }

    [Fact]
    public void Every_half_step_of_a_caliper_up_to_fifty_millimetres_rounds_up()
    {
        for (long step = 0; step < 5000; step++)
        {
            Length half = new((step * 10_000) + 5_000);
            Assert.Equal($"{(step + 1) / 100}.{(step + 1) % 100:00}", SizeShown.Caliper(half, LengthUnit.Mm));
        }
    }

    [Theory]
    [InlineData(0.83, "0.83", "0.033")]
    [InlineData(-0.05, "-0.05", "-0.002")]
    [InlineData(-0.001, "0.00", "0.000")]
    public void Wear_keeps_its_sign_and_never_shows_a_minus_before_zero(double mm, string shownMm, string shownInch)
    {
        Assert.Equal(shownMm, SizeShown.Wear(mm, LengthUnit.Mm));
        Assert.Equal(shownInch, SizeShown.Wear(mm, LengthUnit.Inch));
    }

    [Theory]
    [InlineData(0.01834, "0.0183", "0.00072")]
    [InlineData(0.0, "0.0000", "0.00000")]
    public void A_rate_is_shown_two_digits_finer(double mm, string shownMm, string shownInch)
    {
        Assert.Equal(shownMm, SizeShown.Rate(mm, LengthUnit.Mm));
        Assert.Equal(shownInch, SizeShown.Rate(mm, LengthUnit.Inch));
    }

    [Theory]
    [InlineData(36_512_500, "36.5", "1 7/16")]
    [InlineData(36_500_000, "36.5", "1 7/16")]
    [InlineData(12_700_000, "12.7", "1/2")]
    [InlineData(25_400_000, "25.4", "1")]
    [InlineData(25_300_000, "25.3", "1")]
    [InlineData(25_796_875, "25.8", "1 1/64")]
    [InlineData(198_437, "0.2", "0")]
    [InlineData(198_438, "0.2", "1/64")]
    [InlineData(36_550_000, "36.6", "1 7/16")]
    [InlineData(0, "0.0", "0")]
    public void An_eye_is_shown_no_finer_than_a_tenth_or_a_sixty_fourth(long nm, string mm, string inch)
    {
        Assert.Equal(mm, SizeShown.Eye(new(nm), LengthUnit.Mm));
        Assert.Equal(inch, SizeShown.Eye(new(nm), LengthUnit.Inch));
    }

    [Theory]
    [InlineData(26.6, "27", "1 1/16")]
    [InlineData(26.1, "26", "1")]
    [InlineData(26.4, "26", "1 1/16")]
    public void A_length_to_cut_is_shown_to_the_nearest_whole_mm_or_sixteenth(double mm, string shown, string inch)
    {
        Assert.Equal(shown, SizeShown.Whole(mm, LengthUnit.Mm));
        Assert.Equal(inch, SizeShown.Whole(mm, LengthUnit.Inch));
    }

    [Fact]
    public void The_units_have_their_marks()
    {
        Assert.Equal("mm", SizeShown.Mark(LengthUnit.Mm));
        Assert.Equal("in", SizeShown.Mark(LengthUnit.Inch));
    }
}
