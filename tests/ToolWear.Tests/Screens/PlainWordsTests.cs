using System.Collections.Immutable;
using ToolWear.Core.Wear.Figures;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Hammer;
using ToolWear.Wording;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Estimates in plain words, and figures that can be read from three metres.</summary>
public sealed class PlainWordsTests
{
    [Fact]
    public void A_forecast_is_said_in_plain_words_and_says_measure_once_more_where_its_range_is_wider_than_itself()
    {
        // by hand: 55 - 20 = 35 is more than 34; 50 - 20 = 30 is not
        Assert.Equal(
            "about 34 heats left; nine times in ten between 20 and 55; measure once more",
            Words.HeatsLeft(new HeatsLeft(20, 22, 34, 50, 55))
        );
        Assert.Equal(
            "about 34 heats left; nine times in ten between 20 and 50",
            Words.HeatsLeft(new HeatsLeft(20, 22, 34, 48, 50))
        );
        Assert.Equal(
            "about 1 heat left; nine times in ten between 1 and 2",
            Words.HeatsLeft(new HeatsLeft(0.9, 0.9, 1, 1.5, 1.6))
        );
        Assert.EndsWith(
            "measure once more",
            Words.HeatsLeft(new HeatsLeft(5, 6, 34, null, null)),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Up_to_four_tools_at_the_hammer_have_big_digits_at_80_by_24(int tools)
    {
        // title, what was said, two lines of keys, shared heats, the set, two lines of heads
        const int around = 8;
        Picture body = new(80, 24);
        ImmutableArray<PanelFacts> facts =
        [
            .. Enumerable.Range(1, tools).Select(i => new PanelFacts($"R{i}", "rough, cheeks", "8.5", 12, null)),
        ];
        Panels.Draw(body, 24 - around, facts);
        int lit = Enumerable.Range(0, 24).Sum(y => Enumerable.Range(0, 80).Count(x => body[x, y].Text == "█"));
        // 13, 1 and 11 dots of "8.5", each at least two columns wide
        Assert.True(lit >= tools * 25 * 2, $"{lit} blocks\n{body}");
    }
}
