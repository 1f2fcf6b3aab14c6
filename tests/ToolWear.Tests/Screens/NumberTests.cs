using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Screens;
using ToolWear.Tests.Commands;
using ToolWear.Wording;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>
/// Every number that stands on the rack and on the wear card of every tool of the demo is read off the screen and found
/// in the files that the verbs write, after rounding as the screen rounds. What is no figure of a forecast is held
/// against the ledger: sizes, dates, numbers of entries; and nothing may be left over.
/// </summary>
public sealed class NumberTests(DemoFixture demo)
{
    private const string Today = "2026-11-12";

    private Dictionary<string, Dictionary<string, string>> Rack { get; } =
        ByName(RackTable.Columns.Over(RackTable.Rows(demo.Forecasts)).ToCsv(), row => row["tool"]);

    private Dictionary<string, Dictionary<string, string>> Forecast { get; } =
        ByName(
            ForecastTable.Of(demo.Forecasts.Tools.SelectMany(tool => tool.Gauges), LengthUnit.Mm).ToCsv(),
            row => $"{row["tool"]} {row["gauge"]}"
        );

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Every_number_on_the_rack(int width, int height)
    {
        using BareScreens screens = new(demo.Site, width, height);
        screens.Wait();
        HashSet<string> seen = [];
        int tools = screens.Sitting.Shop.Tools.Values.Count(tool => tool.State == ToolState.InService);
        Assert.InRange(tools, 20, 40);
        while (seen.Count < tools)
        {
            int before = seen.Count;
            string[] lines = screens.Text.Split('\n');
            Assert.Equal(Today, lines[0][^10..]);
            Assert.DoesNotContain(lines[0][..^10], char.IsDigit);
            int row = 2;
            for (; lines[row].Length > 6 && lines[row][5] == ' ' && lines[row][1] == ' '; row++)
            {
                seen.Add(JudgeRackRow(lines[row].PadRight(width)));
            }

            string chosen = lines[row].Split(':')[0];
            string why = lines[row]
                .Replace($"{Words.MeasureOnceMore}; ", "", StringComparison.Ordinal)
                .Replace($"; {Words.MeasureOnceMore}", "", StringComparison.Ordinal);
            // what a window has no room for is cut with an ellipsis
            Assert.StartsWith(why.TrimEnd('\u2026'), $"{chosen}: {Rack[chosen]["why"]}", StringComparison.Ordinal);
            Assert.DoesNotContain(string.Join(' ', lines[(row + 1)..]), char.IsDigit);
            screens.Press("PageDown");
            Assert.True(seen.Count > before, "a page brought nothing new");
        }
    }

    [Fact]
    public void Every_number_on_every_wear_card_in_words()
    {
        using BareScreens screens = new(demo.Site, 80, 300);
        screens.Wait();
        foreach (ToolForecast tool in InService)
        {
            Open(screens, tool);
            screens.Press("w");
            Card card = Card.Of(demo.Forecasts, tool.Tool, LengthUnit.Mm);
            string[] lines = Body(screens);
            Numbers words = new(string.Join('\n', lines), $"{tool.Tool.Mark} in words");
            CardNumbers judged = new(card, Rack[tool.Tool.Mark.Text], Forecast);
            judged.TakeHistory(words);
            judged.TakeHead(words);
            judged.TakeGauges(words, card.Forecast.Gauges);
            judged.TakeWhole(words);
            words.MustBeExplained();
        }
    }

    [Fact]
    public void Every_number_on_every_wear_card_with_its_chart_in_a_small_window_and_a_large_one()
    {
        using BareScreens screens = new(demo.Site);
        screens.Wait();
        foreach (ToolForecast tool in InService)
        {
            Card card = Card.Of(demo.Forecasts, tool.Tool, LengthUnit.Mm);
            foreach ((int width, int height) in ((int, int)[])[(80, 24), (120, 40)])
            {
                (screens.Width, screens.Height) = (width, height);
                Open(screens, tool);
                screens.WaitForPages();
                JudgeChart(screens, card);
            }
        }
    }

    private void JudgeChart(BareScreens screens, Card card)
    {
        List<string> lines = [.. Body(screens)];
        string mark = card.Forecast.Tool.Mark.Text;
        GaugeForecast gauge = card.Forecast.Gauges[0];
        string where = $"{mark} with its chart at {screens.Width}x{screens.Height}";
        bool hasChart = lines.Exists(line => line.Contains('└', StringComparison.Ordinal));
        Assert.True(hasChart || screens.Height < 40, where);
        if (hasChart)
        {
            ChartNumbers.Judge(lines, gauge, Forecast[$"{mark} {gauge.History.Gauge.Name}"], where);
        }

        Numbers words = new(string.Join('\n', lines), where);
        CardNumbers judged = new(card, Rack[mark], Forecast);
        judged.TakeHead(words);
        judged.TakeGauges(words, [gauge]);
        judged.TakeWhole(words);
        words.MustBeExplained();
    }

    private IEnumerable<ToolForecast> InService =>
        demo.Forecasts.Tools.Where(tool => tool.Tool.State == ToolState.InService);

    private static void Open(BareScreens screens, ToolForecast tool)
    {
        screens.Host.ToolInHand = tool.Tool.Id;
        screens.Host.Go(ScreenName.WearCard);
        string title = screens.Text.Split('\n')[0];
        Assert.StartsWith($"Wear card {tool.Tool.Mark}  [demo", title, StringComparison.Ordinal);
        Assert.EndsWith(Today, title, StringComparison.Ordinal);
    }

    /// <summary>What stands between title and foot.</summary>
    private static string[] Body(BareScreens screens)
    {
        string[] lines = screens.Text.Split('\n');
        int foot = ScreenFrame.Foot(screens.Current, screens.Width, screens.Height).Count;
        Assert.DoesNotContain(string.Join(' ', lines[(screens.Height - foot)..]), char.IsDigit);
        return lines[1..(screens.Height - foot)];
    }

    /// <summary>A row of the rack, column by column; between the columns nothing stands.</summary>
    private string JudgeRackRow(string line)
    {
        string mark = line.Substring(6, 6).Trim();
        Dictionary<string, string> row = Rack[mark];
        Dictionary<string, string>? forecast = Forecast.GetValueOrDefault($"{mark} {row["gauge"]}");
        string range =
            row["left_lo90"].Length == 0 ? "-"
            : row["left_hi90"].Length == 0 ? $"over {About(row["left_lo90"])}"
            : $"{About(row["left_lo90"])}-{About(row["left_hi90"])}";
        string eye =
            row["eye_length_mm"].Length == 0
                ? "-"
                : $"{Rounded(row["eye_length_mm"], 1)}x{Rounded(row["eye_width_mm"], 1)}";
        (int From, int Width, string Expected)[] columns =
        [
            (
                0,
                1,
                row["next"] == "yes" ? ">"
                : row["verdict"] is "out" or "dress first" or "past its limit" ? "!"
                : ""
            ),
            (13, 10, row["place"].Length > 0 ? row["place"] : row["form"]),
            (24, 5, Rounded(forecast?["wear_now_mm"] ?? "", 2)),
            (30, 5, Rounded(forecast?["limit_mm"] ?? "", 2)),
            (36, 5, About(row["heats_left"])),
            (42, 9, range),
            (52, 10, eye),
            (63, 16, row["verdict"]),
        ];
        foreach ((int from, int width, string expected) in columns)
        {
            string shown = line.Substring(from, width).Trim().TrimEnd('*');
            Assert.True(expected == shown, $"{mark}: {shown} in column {from}, expected {expected}");
        }

        Assert.All([1, 5, 12, 23, 29, 35, 41, 51, 62], gap => Assert.Equal(' ', line[gap]));
        Assert.Contains(line.Substring(2, 3).Trim(), new[] { "", row["eye"], "all" });
        string why = line.Length > 80 ? line[80..].TrimEnd() : "";
        Assert.True(
            why.EndsWith('…')
                ? row["why"].StartsWith(why[..^1], StringComparison.Ordinal)
                : why == row["why"] || line.Length <= 80,
            $"{mark}: {why}, expected {row["why"]}"
        );
        return mark;
    }

    internal static string About(string number) => Rounded(number, 0);

    internal static string Rounded(string number, int places) =>
        number.Length == 0 ? "-" : Numbers.Rounded(double.Parse(number, CultureInfo.InvariantCulture), places);

    internal static Dictionary<string, Dictionary<string, string>> ByName(
        string csv,
        Func<Dictionary<string, string>, string> name
    )
    {
        List<List<string>> rows = CsvCells.Of(csv);
        return rows.Skip(1)
            .Where(row => row.Count == rows[0].Count)
            .Select(row =>
                rows[0].Zip(row).ToDictionary(each => each.First, each => each.Second, StringComparer.Ordinal)
            )
            .ToDictionary(name, StringComparer.Ordinal);
    }
}
