using System.Globalization;
using System.Text.Json;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Pens;
using ToolWear.Results.Tools;

namespace ToolWear.Tests.Commands;

/// <summary>What a card says beyond its tables, and that it fits the narrowest screen.</summary>
public sealed class CardTests(DemoFixture demo)
{
    [Theory]
    [InlineData(LengthUnit.Mm)]
    [InlineData(LengthUnit.Inch)]
    public void Every_card_of_the_demo_fits_80_columns(LengthUnit units)
    {
        int lines = 0;
        foreach (ToolInShop tool in demo.Forecasts.Shop.Tools.Values)
        {
            string text = CardText.Of(Card.Of(demo.Forecasts, tool, units));
            Assert.Equal([], TooWide(text));
            lines += text.Count(c => c == '\n');
        }

        Assert.True(lines > 500, $"only {lines} lines");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(12)]
    public void A_card_with_any_number_of_readings_fits_80_columns(int readings)
    {
        using TestSite site = new();
        site.Done("add-tool", "R3", "--form", "drift", "--place", "rough", "--gauge", "width,smaller,60,14,12.8,");
        for (int i = 1; i <= readings; i++)
        {
            site.Done("heats", "R3", "3.5", "--on", Day(i));
            site.Done("close-session", "--on", Day(i));
            string size = (14 - (0.07 * i)).ToString("0.00", CultureInfo.InvariantCulture);
            site.Done("measure", "R3", "width", size, "--on", Day(i), "--by", "Orla");
        }

        string card = site.Done("card", "R3");
        Assert.Equal([], TooWide(card));
        Assert.Equal(readings, card.Split('\n').Count(line => line.StartsWith("width ", StringComparison.Ordinal)));
        Assert.Contains("one of these usually lasts 60 heats (assumed)", OnOneLine(card), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_a_sister_cracked_the_card_says_what_that_takes()
    {
        using JsonDocument json = JsonDocument.Parse(demo.Site.Done("card", "HS2", "--as", "json"));
        double byWear = json.RootElement.GetProperty("chance_lasts_session").GetDouble();
        double withCracks = json.RootElement.GetProperty("chance_lasts_session_with_cracks").GetDouble();
        Assert.InRange(withCracks, 0.5, byWear - 0.005);
        int slitters = demo.Forecasts.Shop.Tools.Values.Count(tool => tool.Tool.Form.Name == "slitter");
        Assert.Contains(
            $"Lasts its next usual session (12 heats): {ChanceText.Of(byWear)} by wear; {ChanceText.Of(withCracks)} with "
                + $"cracks as on record (1 crack in {slitters} such tools)",
            OnOneLine(demo.Site.Done("card", "HS2")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Where_none_cracked_no_number_is_made_up()
    {
        using JsonDocument json = JsonDocument.Parse(demo.Site.Done("card", "H5", "--as", "json"));
        ToolForecast H5 = demo.Forecasts.Tools.Single(tool => tool.Tool.Mark.Text == "H5");
        Assert.Equal(
            1 - H5.ChancePastLimit(H5.UsualSession)!.Value,
            json.RootElement.GetProperty("chance_lasts_session").GetDouble()
        );
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("chance_lasts_session_with_cracks").ValueKind);
        Assert.DoesNotContain("as on record", demo.Site.Done("card", "H5"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("HS1")]
    [InlineData("H3")]
    public void A_scrapped_tool_lasts_no_session(string mark)
    {
        using JsonDocument json = JsonDocument.Parse(demo.Site.Done("card", mark, "--as", "json"));
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("chance_lasts_session").ValueKind);
        Assert.DoesNotContain("Lasts its next", demo.Site.Done("card", mark), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.004, "under 1 in 100")]
    [InlineData(0.0051, "1 in 100")]
    [InlineData(0.97, "97 in 100")]
    [InlineData(0.994, "99 in 100")]
    [InlineData(0.9951, "over 99 in 100")]
    public void A_chance_is_said_in_hundreds(double chance, string words) => Assert.Equal(words, ChanceText.Of(chance));

    [Fact]
    public void Words_are_wrapped_between_and_never_within()
    {
        string word = new('x', 90);
        Assert.Equal($"- a\n  {word}\n  b\n", Wrapped.Of($"a {word} b", "- ", "  "));
        Assert.Equal("\n", Wrapped.Of(""));
        string exactly = new string('a', 39) + " " + new string('b', 40);
        Assert.Equal(exactly + "\n", Wrapped.Of(exactly));
        Assert.Equal($"{exactly}\nc\n", Wrapped.Of($"{exactly}\nc"));
    }

    [Theory]
    [InlineData("cut to 94 mm", "cut to\n94 mm\n")]
    [InlineData("sure 92.9 %.", "sure\n92.9 %.\n")]
    [InlineData("at 0.59 kg.", "at\n0.59 kg.\n")]
    [InlineData("of 10 mmm", "of 10\nmmm\n")]
    public void A_number_keeps_its_unit_on_its_line(string text, string lines) =>
        Assert.Equal(lines, Wrapped.Of(text, width: text.Length - 1));

    // names and notes may be of any length; the rest is the program's own
    private static string[] TooWide(string card) =>
        [
            .. card.Split('\n')
                .Where(line => line.Length > Wrapped.Columns && !line.Contains("(entry ", StringComparison.Ordinal)),
        ];

    private static string OnOneLine(string text) =>
        string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private static string Day(int i) => new DateOnly(2026, 8, 1).AddDays(7 * i).ToString("yyyy-MM-dd", null);
}
