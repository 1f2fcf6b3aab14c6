using System.Globalization;
using CsCheck;
using ToolWear.Core.Measure;
using Xunit;

namespace ToolWear.Core.Tests.Measure;

public sealed class NormalFormCTests
{
    // Source: Unicode Standard Annex 15, figures 3 to 6 and the composition exclusions; Unicode Standard, section 3.12
    [Theory]
    [InlineData("41 30A", "C5")]
    [InlineData("212B", "C5")]
    [InlineData("2126", "3A9")]
    [InlineData("6F 302", "F4")]
    [InlineData("73 323 307", "1E69")]
    [InlineData("1E0B 323", "1E0D 307")]
    [InlineData("71 307 323", "71 323 307")]
    [InlineData("1E9B 323", "1E9B 323")]
    [InlineData("FB01", "FB01")]
    [InlineData("32 2075", "32 2075")]
    [InlineData("958", "915 93C")]
    [InlineData("1112 1161 11AB", "D55C")]
    [InlineData("D4DB", "D4DB")]
    [InlineData("1111 1171 11B6", "D4DB")]
    [InlineData("61 315 300 5AE 300 62", "E0 5AE 300 315 62")]
    public void Texts_come_to_the_form_of_the_standard(string from, string to) =>
        Assert.Equal(Text(to), NormalFormC.Of(Text(from)));

    [Fact]
    public void The_form_of_a_form_is_itself() =>
        Gen.OneOf(
                Gen.Char['\u0041', '\u00FF'],
                Gen.Char['\u0300', '\u0345'],
                Gen.Char['\u1100', '\u11FF'],
                Gen.Char['\u1E00', '\u1FFF']
            )
            .Array[0, 12]
            .Select(letters => new string(letters))
            .Sample(text => NormalFormC.Of(NormalFormC.Of(text)) == NormalFormC.Of(text), iter: 20_000);

    private static string Text(string points) =>
        string.Concat(
            points
                .Split(' ')
                .Select(point =>
                    char.ConvertFromUtf32(int.Parse(point, NumberStyles.HexNumber, CultureInfo.InvariantCulture))
                )
        );
}
