using ToolWear.Keys;
using ToolWear.Screens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>The mouse on list and foot, a paste, and cursor keys inside a line, at both sizes.</summary>
public sealed class MouseTests
{
    public static TheoryData<int, int> Sizes => new() { { 80, 24 }, { 120, 40 } };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void A_click_on_a_key_at_the_foot_presses_it(int width, int height)
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site, width: width, height: height);
        evening.Click("m measure");
        Assert.Equal(ScreenName.CaliperRound, evening.Host.Current.Name);
        evening.Click("Esc");
        evening.Click("l ledger");
        Assert.Equal(ScreenName.LedgerPages, evening.Host.Current.Name);
        string first = evening.Text;
        // the second half of a key with two arrows is the second arrow
        string foot = evening.Text.Split('\n').Last(line => line.Contains("↑↓", StringComparison.Ordinal));
        evening.Click(foot.IndexOf('↓', StringComparison.Ordinal), Row(evening, "↑↓"));
        Assert.Equal(1, Chosen(evening));
        evening.Click("↑↓");
        Assert.Equal(0, Chosen(evening));
        Assert.Equal(first, evening.Text);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void A_size_is_pasted_and_mended_with_cursor_keys(int width, int height)
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site, width: width, height: height);
        evening.Press("m");
        evening.Paste("13.9");
        Assert.Equal("13.9", evening.Host.Current.Line?.Text);
        Assert.Contains("13.9_", evening.Text, StringComparison.Ordinal);
        evening.Press("Left", "Backspace", "2", "Home", "Delete", "1", "End", "5");
        Assert.Equal("13295", evening.Host.Current.Line?.Text.Replace(".", "", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Wheel_and_click_choose_a_tool_on_the_rack_and_the_bar_scrolls_it(int width, int height)
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site, width: width, height: height);
        evening.Wheel(down: true, 10, 5);
        evening.Wheel(down: true, 10, 5);
        evening.Wheel(down: false, 10, 5);
        Assert.Equal(1, evening.Host.Current.List.Chosen);
        // title, headings, then the first tool
        evening.Click(10, 6);
        Assert.Equal(4, evening.Host.Current.List.Chosen);
        string mark = evening.Text.Split('\n')[6][6..12].Trim();
        evening.Press("Enter");
        Assert.Contains(mark, evening.Text.Split('\n')[0], StringComparison.Ordinal);
        evening.Press("Esc");
        if (evening.Host.Current.List.Count > evening.Host.Current.List.Room)
        {
            // the arrow at the lower end of the bar
            evening.Click(width - 1, evening.Host.Current.List.Room + 1);
            Assert.Equal(1, evening.Host.Current.List.First);
        }
    }

    [Fact]
    public void What_is_offered_is_replaced_by_what_is_typed_and_kept_by_a_cursor_key()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        evening.Press("e", "x");
        Assert.Equal("x", evening.Host.Current.Line?.Text);
        evening.Press("Esc", "e", "Home", "x");
        Assert.Equal("xwear-2026-11-12.csv", evening.Host.Current.Line?.Text);
    }

    private static int Row(Evenings evening, string text) =>
        Array.FindIndex(evening.Text.Split('\n'), line => line.Contains(text, StringComparison.Ordinal));

    private static int Chosen(Evenings evening) => evening.Host.Current.List.Chosen;
}
