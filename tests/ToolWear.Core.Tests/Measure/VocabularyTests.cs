using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using Xunit;

namespace ToolWear.Core.Tests.Measure;

public sealed class VocabularyTests
{
    [Fact]
    public void Every_value_of_every_list_has_one_word_that_is_read_back()
    {
        RoundTrip(Works.Words);
        RoundTrip(Places.Words);
        RoundTrip(SectionKinds.Words);
        RoundTrip(ToolStates.Words);
        RoundTrip(ToolStart.AsWords);
        RoundTrip(ToolStart.HowWords);
        RoundTrip(BodyParts.Words);
        RoundTrip(GaugeMark.WearsWords);
        RoundTrip(GaugeMark.MeasuresWords);
        RoundTrip(ToolReworked.WhatWords);
        RoundTrip(ToolLookedOver.FindingWords);
        RoundTrip(EyeMeasured.WhereWords);
        RoundTrip(EyeMeasured.FitsWords);
        RoundTrip(Care.CoolingWords);
        RoundTrip(HeatsWorked.HowWords);
        RoundTrip(EyeDescribed.FitWords);
        RoundTrip(EyeDescribed.DrivenWords);
        RoundTrip(OrderDescribed.StateWords);
        RoundTrip(ToolScrapped.CauseWords);
    }

    [Fact]
    public void Neither_a_word_nor_a_value_stands_twice_in_a_list()
    {
        Assert.Throws<ArgumentException>(() =>
            new Vocabulary<Place>("place", (Place.None, "none"), (Place.Rough, "none"))
        );
        Assert.Throws<ArgumentException>(() =>
            new Vocabulary<Place>("place", (Place.Rough, "rough"), (Place.Rough, "again"))
        );
    }

    [Theory]
    [InlineData("Slitting", "Did you mean slitting?")]
    [InlineData(" slitting", "Did you mean slitting?")]
    [InlineData("", "There are slitting, opening, cheeks, sizing, fullering, other.")]
    [InlineData("0", "There are slitting, opening, cheeks, sizing, fullering, other.")]
    public void Any_other_word_is_refused_with_what_was_meant_or_the_list(string word, string hint)
    {
        Assert.False(Works.Words.TryParse(word, out _, out string refusal));
        Assert.Equal($"No work \"{word}\". {hint}", refusal);
    }

    [Fact]
    public void The_words_are_those_of_the_files()
    {
        Assert.Equal(
            "sound mushroomed chipped cracked broken bent soft glass-hard picked-up heat-checked blunt loose-handle stuck mark-gone",
            string.Join(' ', ToolLookedOver.FindingWords.All)
        );
        Assert.Equal(
            "dressed re-forged straightened welded re-hardened tempered re-handled",
            string.Join(' ', ToolReworked.WhatWords.All)
        );
        Assert.Equal(
            "worn cracked broken bent soft glass-hard lost made-into other",
            string.Join(' ', ToolScrapped.CauseWords.All)
        );
        Assert.Equal("length width nose-radius edge flat overall other", string.Join(' ', GaugeMark.MeasuresWords.All));
        Assert.Equal("nose taper full-size shank struck-end body", string.Join(' ', BodyParts.Words.All));
        Assert.Equal("air, dip when black, compressed air, other", string.Join(", ", Care.CoolingWords.All));
        Assert.Equal("both faces, one face, through", string.Join(", ", EyeDescribed.DrivenWords.All));
        Assert.Equal("new, in use", string.Join(", ", ToolStart.AsWords.All));
    }

    private static void RoundTrip<T>(Vocabulary<T> words)
        where T : struct, Enum
    {
        Assert.Equal(Enum.GetValues<T>().Length, words.All.Length);
        Assert.Equal(words.All.Length, words.All.Distinct(StringComparer.Ordinal).Count());
        foreach (T value in Enum.GetValues<T>())
        {
            Assert.True(words.TryParse(words.Word(value), out T read, out string refusal), refusal);
            Assert.Equal(value, read);
            Assert.Equal(words.Word(value).ToLowerInvariant(), words.Word(value));
        }
    }
}
