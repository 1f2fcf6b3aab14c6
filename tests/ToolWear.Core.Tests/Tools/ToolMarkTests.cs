using ToolWear.Core.Tools;
using Xunit;

namespace ToolWear.Core.Tests.Tools;

public sealed class ToolMarkTests
{
    [Theory]
    [InlineData("R3")]
    [InlineData("r3")]
    [InlineData("R 3")]
    [InlineData("槌 三")]
    [InlineData("🔨")]
    [InlineData("=R3")]
    [InlineData("'R3\"")]
    [InlineData("é")]
    public void A_mark_is_kept_as_it_is_stamped(string text)
    {
        Assert.True(ToolMark.TryParse(text, out ToolMark mark, out string refusal), refusal);
        Assert.Equal(text, mark.Text);
        Assert.Equal(text, mark.ToString());
    }

    [Fact]
    public void Case_counts_and_equality_is_exact()
    {
        Assert.NotEqual(Mark("R3"), Mark("r3"));
        Assert.Equal(Mark("R3"), Mark("R3"));
        Assert.Equal("", default(ToolMark).ToString());
    }

    /// <summary>Unicode Standard Annex 15, Normalization Forms, figures 3 to 5 and section 1.</summary>
    [Theory]
    [InlineData("e\u0301", "\u00e9")]
    [InlineData("A\u030a", "\u00c5")]
    [InlineData("\u212b", "\u00c5")]
    [InlineData("\u2126", "\u03a9")]
    [InlineData("s\u0323\u0307", "\u1e69")]
    [InlineData("s\u0307\u0323", "\u1e69")]
    [InlineData("\u1e0b\u0323", "\u1e0d\u0307")]
    [InlineData("\u1100\u1161\u11a8", "\uac01")]
    [InlineData("\ufb01", "\ufb01")]
    public void A_mark_is_brought_to_normal_form_C(string typed, string kept) =>
        Assert.Equal(kept, Mark("R" + typed).Text[1..]);

    [Fact]
    public void Two_ways_of_typing_one_letter_are_one_mark() => Assert.Equal(Mark("\u00e91"), Mark("e\u03011"));

    [Theory]
    [InlineData("R\u00003")]
    [InlineData("R\t3")]
    [InlineData("R\n3")]
    [InlineData("R\u001b[2J")]
    [InlineData("R\u00853")]
    [InlineData("R\u200b3")]
    [InlineData("R\u202e3")]
    [InlineData("R\u20283")]
    [InlineData("R\u20293")]
    [InlineData("R\ufeff3")]
    [InlineData("R\u00ad3")]
    [InlineData("R\ue0003")]
    public void Control_and_invisible_characters_are_refused_and_not_repeated(string text)
    {
        Assert.False(ToolMark.TryParse(text, out ToolMark mark, out string refusal));
        Assert.Equal(default, mark);
        Assert.Equal("mark: control and invisible characters cannot stand in it", refusal);
    }

    [Theory]
    [InlineData('\ud83d', "")]
    [InlineData('\ud83d', "R")]
    [InlineData('\udd28', "")]
    public void A_lone_surrogate_is_refused(char half, string after)
    {
        Assert.False(ToolMark.TryParse("R" + half + after, out _, out string refusal));
        Assert.Equal("mark: control and invisible characters cannot stand in it", refusal);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData(" R3")]
    [InlineData("R3 ")]
    [InlineData("R3\u00a0")]
    public void An_empty_mark_and_a_space_at_an_end_are_refused(string text)
    {
        Assert.False(ToolMark.TryParse(text, out _, out string refusal));
        Assert.Equal($"mark \"{text}\": 1 to 40 characters with no space at either end", refusal);
    }

    [Fact]
    public void Forty_characters_are_taken_and_forty_one_refused()
    {
        Assert.Equal(40, Mark(new string('R', 40)).Text.Length);
        Assert.False(ToolMark.TryParse(new string('R', 41), out _, out string refusal));
        Assert.Equal("mark of 41 characters: at most 40", refusal);
        Assert.Equal("pattern of 100000 characters: at most 40", ToolMark.Fault("pattern", new string('R', 100_000)));
    }

    [Fact]
    public void The_length_counts_after_it_was_brought_to_normal_form() =>
        Assert.Equal(40, Mark(string.Concat(Enumerable.Repeat("e\u0301", 40))).Text.Length);

    private static ToolMark Mark(string text)
    {
        Assert.True(ToolMark.TryParse(text, out ToolMark mark, out string refusal), refusal);
        return mark;
    }
}
