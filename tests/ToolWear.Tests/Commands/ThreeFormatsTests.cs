using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Tools;

namespace ToolWear.Tests.Commands;

/// <summary>Text, csv and json say the same, number by number, for every tool of the demo.</summary>
public sealed partial class ThreeFormatsTests(DemoFixture demo)
{
    [Fact]
    public void The_rack_says_the_same_in_all_three_formats() =>
        Agree(RackTable.Columns.Over(RackTable.Rows(demo.Forecasts)), demo.RackText, demo.Forecasts.Tools.Length);

    [Fact]
    public void The_forecast_says_the_same_in_all_three_formats()
    {
        GaugeForecast[] gauges = [.. demo.Forecasts.InService.SelectMany(tool => tool.Gauges)];
        Agree(ForecastTable.Of(gauges, LengthUnit.Mm), demo.ForecastText, gauges.Length);
    }

    [Fact]
    public void Every_card_says_the_same_in_all_three_formats()
    {
        int numbers = 0;
        foreach (ToolForecast tool in demo.Forecasts.All)
        {
            Card card = Card.Of(demo.Forecasts, tool.Tool, LengthUnit.Mm);
            using JsonDocument json = JsonDocument.Parse(Card.Columns.Of(card).ToJson());
            Table gauges = ForecastTable.Of(tool.Gauges);
            string text = CardText.Of(card);
            Compare(Rows(gauges.ToCsv()), json.RootElement.GetProperty("gauges"));
            Compare(Rows(card.Readings.ToCsv()), json.RootElement.GetProperty("readings"));
            numbers += EveryNumberIn(text, tool, Rows(gauges.ToCsv()));
            if (!card.Readings.Rows.IsEmpty)
            {
                Assert.Contains("\nReadings\n" + card.Readings.ToText(), text, StringComparison.Ordinal);
                Shown(Rows(card.Readings.ToCsv()), card.Readings);
            }
        }

        // three of each of the demo's gauge marks that has heats left and a range: scrapped tools have none
        Assert.Equal(3 * 43, numbers);
    }

    [Fact]
    public void The_commands_print_just_these_tables()
    {
        Assert.Equal(
            RackTable.Columns.Over(RackTable.Rows(demo.Forecasts)).ToCsv(),
            demo.Site.Done("rack", "--as", "csv")
        );
        Assert.Equal(
            Card.Columns.Of(Card.Of(demo.Forecasts, demo.Forecasts.Tools[0].Tool, LengthUnit.Mm)).ToJson(),
            demo.Site.Done("card", demo.Forecasts.Tools[0].Tool.Mark.Text, "--as", "json")
        );
    }

    /// <summary>The figures of a gauge mark on a card are those of its csv row, rounded as the card rounds.</summary>
    private static int EveryNumberIn(string text, ToolForecast tool, List<Dictionary<string, string>> rows)
    {
        int numbers = 0;
        foreach ((GaugeForecast gauge, Dictionary<string, string> row) in tool.Gauges.Zip(rows))
        {
            string part = text[text.IndexOf($"\n{gauge.History.Gauge.Name}: start", StringComparison.Ordinal)..];
            // a sentence may go on in the next line
            string[] words = part[..part.IndexOf("\n\n", StringComparison.Ordinal)]
                .Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries);
            Match left = LeftOnCard().Match(string.Join(' ', words));
            if (row["heats_left"].Length > 0 && row["left_hi90"].Length > 0 && !IsPast(row["chance_past_limit"]))
            {
                Assert.Equal(Whole(row["heats_left"]), left.Groups["about"].Value);
                Assert.Equal(Whole(row["left_lo90"]), left.Groups["low"].Value);
                Assert.Equal(Whole(row["left_hi90"]), left.Groups["high"].Value);
                numbers += 3;
            }
        }

        return numbers;
    }

    private static string Whole(string csv) =>
        double.Parse(csv, CultureInfo.InvariantCulture).ToString("0", CultureInfo.InvariantCulture);

    private static void Agree(Table table, string text, int rows)
    {
        List<Dictionary<string, string>> csv = Rows(table.ToCsv());
        Assert.Equal(rows, csv.Count);
        using JsonDocument json = JsonDocument.Parse(table.ToJson());
        Compare(csv, json.RootElement);
        Assert.Contains(table.ToText(80), text, StringComparison.Ordinal);
        Shown(csv, table);
    }

    private static void Compare(List<Dictionary<string, string>> csv, JsonElement json)
    {
        Assert.Equal(csv.Count, json.GetArrayLength());
        foreach ((Dictionary<string, string> row, JsonElement item) in csv.Zip(json.EnumerateArray()))
        {
            Assert.Equal(row.Keys, item.EnumerateObject().Select(member => member.Name));
            foreach (JsonProperty member in item.EnumerateObject())
            {
                string value = member.Value.ValueKind == JsonValueKind.Null ? "" : member.Value.ToString();
                Assert.Equal(row[member.Name].TrimStart('\''), value.TrimStart('\''));
            }
        }
    }

    /// <summary>Reads the numbers back out of the text by their columns and finds them in the csv after rounding.</summary>
    private static void Shown(List<Dictionary<string, string>> csv, Table table)
    {
        string[] lines = table.ToText().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(csv.Count, lines.Length - 1);
        int compared = 0;
        for (int row = 0; row < csv.Count; row++)
        {
            string[] words = lines[row + 1].Split(' ', StringSplitOptions.RemoveEmptyEntries);
            int from = 0;
            for (int column = 0; column < table.Columns.Length; column++)
            {
                if (table.Columns[column] is not { Heading: not null, Name: { } name } || csv[row][name].Length == 0)
                {
                    continue;
                }

                if (!double.TryParse(csv[row][name], CultureInfo.InvariantCulture, out double full))
                {
                    continue;
                }

                bool isPast = csv[row].TryGetValue("chance_past_limit", out string? chance) && IsPast(chance);
                int at = Array.FindIndex(
                    words,
                    from,
                    word => IsRounded(word, full) || (isPast && word == ForecastTable.Past)
                );
                Assert.True(at >= 0, $"{name} {full} is not in \"{lines[row + 1]}\"");
                from = at + 1;
                compared++;
            }
        }

        Assert.True(csv.Count == 0 || compared > 0, "no number was compared");
    }

    private static bool IsPast(string chance) =>
        double.TryParse(chance, CultureInfo.InvariantCulture, out double past) && past >= 0.5;

    private static bool IsRounded(string word, double full)
    {
        bool isPercent = word.EndsWith('%');
        string digits = word.TrimEnd('%', '*');
        if (!double.TryParse(digits, CultureInfo.InvariantCulture, out double shown))
        {
            return false;
        }

        int point = digits.IndexOf('.', StringComparison.Ordinal);
        int places = point < 0 ? 0 : digits.Length - point - 1;
        double value = isPercent ? full * 100 : full;
        return Math.Abs(shown - value) <= (0.5 * Math.Pow(10, -places)) + 1e-9;
    }

    private static List<Dictionary<string, string>> Rows(string csv)
    {
        List<List<string>> cells = CsvCells.Of(csv);
        return
        [
            .. cells.Skip(1).Select(row => cells[0].Zip(row).ToDictionary(pair => pair.First, pair => pair.Second)),
        ];
    }

    [GeneratedRegex("about (?<about>[0-9]+) heats? left; nine times in ten between (?<low>[0-9]+) and (?<high>[0-9]+)")]
    private static partial Regex LeftOnCard();
}
