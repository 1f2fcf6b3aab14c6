using CsCheck;
using ToolWear.Core.Measure;
using ToolWear.Testing.Generators;
using Xunit;

namespace ToolWear.Core.Tests.Measure;

public sealed class SizeTextTests
{
    /// <summary>25.4 mm to the inch exactly, so 1 7/16 in is 36.5125 mm (international inch, 1959; NIST SP 811 B.8).</summary>
    private const long OneAndSevenSixteenths = 36_512_500;

    [Theory]
    [InlineData("1 7/16")]
    [InlineData("1-7/16")]
    [InlineData("1 - 7/16")]
    [InlineData("1  7/16")]
    [InlineData("1 7 / 16")]
    [InlineData("1 7/16\"")]
    [InlineData("1 7/16 \"")]
    [InlineData("1 7/16 in")]
    [InlineData("1 7/16in")]
    [InlineData("1-7/16 IN")]
    [InlineData(" 1 7/16 ")]
    [InlineData("1.4375\"")]
    [InlineData("1,4375\"")]
    [InlineData("1.4375 in")]
    [InlineData("36.5125 mm")]
    [InlineData("36,5125mm")]
    [InlineData("36.5125 MM")]
    public void Every_way_of_writing_one_and_seven_sixteenths_means_the_same_in_either_shop(string text)
    {
        Assert.Equal(OneAndSevenSixteenths, Read(text, LengthUnit.Mm).Length.Nanometres);
        Assert.Equal(OneAndSevenSixteenths, Read(text, LengthUnit.Inch).Length.Nanometres);
    }

    [Theory]
    [InlineData("1.4375", LengthUnit.Inch, 36_512_500)]
    [InlineData("1.4375", LengthUnit.Mm, 1_437_500)]
    [InlineData("1.44\"", LengthUnit.Mm, 36_576_000)]
    [InlineData("1.44\"", LengthUnit.Inch, 36_576_000)]
    [InlineData("36.5", LengthUnit.Mm, 36_500_000)]
    [InlineData("36.5", LengthUnit.Inch, 927_100_000)]
    [InlineData("36,5 mm", LengthUnit.Inch, 36_500_000)]
    [InlineData("36.5mm", LengthUnit.Inch, 36_500_000)]
    [InlineData("36,5", LengthUnit.Mm, 36_500_000)]
    [InlineData("36", LengthUnit.Mm, 36_000_000)]
    [InlineData("1", LengthUnit.Inch, 25_400_000)]
    [InlineData("7/16", LengthUnit.Mm, 11_112_500)]
    [InlineData("7/16", LengthUnit.Inch, 11_112_500)]
    [InlineData("1/64", LengthUnit.Mm, 396_875)]
    [InlineData(".5", LengthUnit.Mm, 500_000)]
    [InlineData(",5", LengthUnit.Mm, 500_000)]
    [InlineData("0.001", LengthUnit.Inch, 25_400)]
    [InlineData("0.00001", LengthUnit.Inch, 254)]
    [InlineData("0.000001", LengthUnit.Mm, 1)]
    [InlineData("36.500000000000", LengthUnit.Mm, 36_500_000)]
    [InlineData("10000", LengthUnit.Mm, 10_000_000_000)]
    [InlineData("0 7/16", LengthUnit.Mm, 11_112_500)]
    public void A_mark_wins_a_fraction_is_inches_and_a_bare_number_is_the_shops(
        string text,
        LengthUnit unit,
        long nm
    ) => Assert.Equal(nm, Read(text, unit).Length.Nanometres);

    [Theory]
    [InlineData("1 7/16")]
    [InlineData("1/2")]
    [InlineData("3/4 in")]
    [InlineData("2-3/8\"")]
    [InlineData("1 9/64")]
    [InlineData("8/16")]
    public void However_a_fraction_is_reduced_it_is_read_to_a_64th(string text) =>
        Assert.Equal(new Length(396_875), Read(text, LengthUnit.Mm).Resolution);

    [Theory]
    [InlineData("1.4375\"")]
    [InlineData("36.5")]
    [InlineData("36")]
    public void A_decimal_says_nothing_of_its_resolution(string text) =>
        Assert.Null(Read(text, LengthUnit.Mm).Resolution);

    [Fact]
    public void Every_sixty_fourth_up_to_ten_inches_is_exact_and_comes_back_as_it_was_shown()
    {
        for (int parts = 1; parts <= 640; parts++)
        {
            Length size = new(parts * 396_875L);
            Assert.Equal(size, Read($"{parts / 64} {Bottomless(parts)}", LengthUnit.Inch).Length);
            Assert.Equal(size, Read(SizeShown.Eye(size, LengthUnit.Inch), LengthUnit.Inch).Length);
            Assert.Equal(parts / 64.0, size.Inches);
        }
    }

    [Theory]
    [InlineData("", "cannot be read: write it like 36.5, 36,5 mm, 1.44\", 1 7/16 or 1-7/16")]
    [InlineData("   ", "cannot be read")]
    [InlineData("-36.5", "cannot be read: write it like")]
    [InlineData("+36.5", "cannot be read")]
    [InlineData("NaN", "cannot be read")]
    [InlineData("Infinity", "cannot be read")]
    [InlineData("∞", "cannot be read")]
    [InlineData("1e3", "cannot be read")]
    [InlineData("1,000.5", "cannot be read")]
    [InlineData("1.000,5", "cannot be read")]
    [InlineData("1 000", "cannot be read")]
    [InlineData("1 7/16/2", "cannot be read")]
    [InlineData("1 7/", "cannot be read")]
    [InlineData("/16", "cannot be read")]
    [InlineData("-7/16", "cannot be read")]
    [InlineData("1.5 7/16", "cannot be read")]
    [InlineData("abc", "cannot be read")]
    [InlineData("36.5 cm", "cannot be read")]
    [InlineData("36.5 mm mm", "cannot be read")]
    [InlineData("36.5 mm in", "cannot be read")]
    [InlineData("36..5", "cannot be read")]
    [InlineData("36.", "cannot be read")]
    [InlineData("mm", "cannot be read")]
    [InlineData("\"", "cannot be read")]
    [InlineData("0x10", "cannot be read")]
    [InlineData("٣٦", "cannot be read")]
    [InlineData("36.5\u0000", "cannot be read")]
    [InlineData("0", "a size is above zero")]
    [InlineData("0.0 in", "a size is above zero")]
    [InlineData("0/16", "a size is above zero")]
    [InlineData("1 0/16", "leave the fraction 0/16 away")]
    [InlineData("10000.000001", "more than 10 m")]
    [InlineData("99999999 in", "more than 10 m")]
    [InlineData("999 1/2", "more than 10 m")]
    [InlineData("9/16 mm", "fractions are inches: write millimetres as a decimal, such as 36.5 mm")]
    [InlineData("17/16", "the fraction 17/16 is not below one: write the whole inches in front, such as 1 7/16")]
    [InlineData("16/16", "the fraction 16/16 is not below one")]
    [InlineData("1/3", "a fraction of an inch is in halves, quarters, 8ths, 16ths, 32nds or 64ths")]
    [InlineData("1/0", "a fraction of an inch is in halves")]
    [InlineData("1/128", "a fraction of an inch is in halves")]
    [InlineData("36.5000001", "too many decimals: at most 6 in millimetres, 5 in inches")]
    [InlineData("1.4375001 in", "too many decimals")]
    public void What_cannot_be_a_size_is_refused_with_what_would_be_right(string text, string why)
    {
        Assert.False(SizeText.TryParse(text, LengthUnit.Mm, out TypedSize size, out string refusal));
        Assert.Equal(default, size);
        Assert.Contains(why, refusal, StringComparison.Ordinal);
        string shown = text.Replace('\0', '\uFFFD');
        Assert.StartsWith($"size \"{shown}\"", refusal, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(41)]
    [InlineData(100_000)]
    public void A_very_long_text_is_refused_and_cut_in_the_sentence(int length)
    {
        Assert.False(SizeText.TryParse(new string('1', length), LengthUnit.Mm, out _, out string refusal));
        Assert.StartsWith($"size \"{new string('1', 40)}...\" cannot be read", refusal, StringComparison.Ordinal);
        Assert.InRange(refusal.Length, 1, 200);
    }

    [Fact]
    public void A_text_that_is_cut_is_cut_between_characters()
    {
        string text = new string('1', 39) + "🔨🔨";
        Assert.False(SizeText.TryParse(text, LengthUnit.Mm, out _, out string refusal));
        Assert.DoesNotContain(refusal.EnumerateRunes(), rune => rune.Value == 0xFFFD);
        Assert.False(SizeText.TryParseMm(text, out _, out refusal));
        Assert.DoesNotContain(refusal.EnumerateRunes(), rune => rune.Value == 0xFFFD);
    }

    [Fact]
    public void Any_text_is_read_or_refused_and_never_throws() =>
        Gen.Select(Gen.String[Gen.Char[" 0123456789/-.,mMiIn\"eE+x\u0000é"], 0, 60], Gen.Enum<LengthUnit>())
            .Sample(
                (text, unit) =>
                {
                    bool read = SizeText.TryParse(text, unit, out TypedSize size, out string refusal);
                    Assert.Equal(read, refusal.Length == 0);
                    Assert.Equal(read, size.Length > Length.Zero);
                },
                iter: 5000
            );

    [Fact]
    public void What_is_shown_can_be_read_back_to_within_half_the_shown_step() =>
        Gen.Select(Lengths.Size.Where(size => size >= Length.FromMm(0.5m)), Gen.Enum<LengthUnit>())
            .Sample(
                (size, unit) =>
                {
                    Near(size, SizeShown.Caliper(size, unit), unit, unit == LengthUnit.Mm ? 5_000 : 12_700);
                    Near(size, SizeShown.Eye(size, unit), unit, unit == LengthUnit.Mm ? 50_000 : 198_438);
                },
                iter: 5000
            );

    [Fact]
    public void Bare_millimetres_come_back_to_the_nanometre() =>
        Lengths.Any.Sample(
            size =>
            {
                Assert.True(SizeText.TryParseMm(size.ToMmText(), out Length read, out string refusal), refusal);
                Assert.Equal(size, read);
                Assert.Equal(size, Read(size.ToMmText(), LengthUnit.Mm).Length);
                Assert.Equal(size, Read(size.ToMmText() + " mm", LengthUnit.Inch).Length);
            },
            iter: 5000
        );

    [Theory]
    [InlineData("")]
    [InlineData("36,5")]
    [InlineData("36.5 mm")]
    [InlineData("-1")]
    [InlineData(" 1")]
    [InlineData("1e3")]
    [InlineData("7/16")]
    [InlineData("NaN")]
    [InlineData("1.00000000000000000000")]
    public void A_cell_that_is_no_bare_number_with_a_point_is_refused(string text)
    {
        Assert.False(SizeText.TryParseMm(text, out Length length, out string refusal));
        Assert.Equal(Length.Zero, length);
        Assert.Equal($"\"{text}\" is no size in mm: a bare number with a point, such as 36.5", refusal);
    }

    [Theory]
    [InlineData("0", "0: a size is above zero")]
    [InlineData("10000.000001", "10000.000001: more than 10 m is no size of a tool or a bar")]
    [InlineData("99999999999999999999", "99999999999999999999: more than 10 m is no size of a tool or a bar")]
    [InlineData("0.0000001", "0.0000001: too many decimals: at most 6 in millimetres, 5 in inches")]
    public void A_cell_that_is_a_number_but_no_size_says_why(string text, string why)
    {
        Assert.False(SizeText.TryParseMm(text, out _, out string refusal));
        Assert.Equal(why, refusal);
    }

    private static string Bottomless(int parts) => parts % 64 == 0 ? "" : $"{parts % 64}/64";

    private static void Near(Length size, string shown, LengthUnit unit, long halfStep)
    {
        Length read = Read(shown, unit).Length;
        Assert.InRange((read - size).Abs().Nanometres, 0, halfStep);
    }

    private static TypedSize Read(string text, LengthUnit unit)
    {
        Assert.True(SizeText.TryParse(text, unit, out TypedSize size, out string refusal), refusal);
        return size;
    }
}
