using System.Globalization;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Core.Wear.Verdicts;
using ToolWear.Pens;
using ToolWear.Results.Tools;

namespace ToolWear.Tests.Commands;

/// <summary>Each tool of the demo gets the verdict that the rules give it, and each verdict is given to some tool.</summary>
public sealed class VerdictTests(DemoFixture demo)
{
    [Fact]
    public void Every_verdict_of_the_demo_follows_from_its_forecast_and_its_ledger()
    {
        List<List<string>> csv = CsvCells.Of(
            ForecastTable.Of(demo.Forecasts.All.SelectMany(each => each.Gauges), LengthUnit.Mm).ToCsv()
        );
        foreach (ToolForecast tool in demo.Forecasts.Tools)
        {
            string mark = tool.Tool.Mark.Text;
            double past = csv.Skip(1)
                .Where(row => row[2] == mark && row[15].Length > 0)
                .Select(row => Number(row[15]))
                .DefaultIfEmpty()
                .Max();
            string expected = Derived(tool, past);
            string given = demo.Forecasts.VerdictOf(tool).Word;
            // the three most overdue readings are told apart among all tools, below
            Assert.Equal(expected, given == "measure it" ? "inside its limit" : given);
        }
    }

    [Fact]
    public void At_most_three_tools_are_to_be_measured_and_they_are_the_most_overdue()
    {
        ToolForecast[] told =
        [
            .. demo.Forecasts.Tools.Where(tool => demo.Forecasts.VerdictOf(tool).Verdict == Verdict.MeasureIt),
        ];
        Assert.InRange(told.Length, 1, 3);
        double least = told.Min(ShopVerdicts.ReadingOverdue);
        Assert.True(least >= 1);
        Assert.All(
            demo.Forecasts.Tools.Where(tool => demo.Forecasts.VerdictOf(tool).Verdict == Verdict.InsideItsLimit),
            tool => Assert.True(ShopVerdicts.ReadingOverdue(tool) <= least)
        );
    }

    [Fact]
    public void Every_verdict_is_given() =>
        Assert.Equal(
            // every gauge mark of the demo has a size at which it is done
            Enum.GetValues<Verdict>().Where(each => each != Verdict.NoLimitKnown),
            demo.Forecasts.InService.Select(tool => demo.Forecasts.VerdictOf(tool).Verdict).Distinct().Order()
        );

    [Fact]
    public void No_verdict_calls_a_tool_fit() =>
        Assert.DoesNotContain(Judged.Words.All, word => word.Contains("fit", StringComparison.OrdinalIgnoreCase));

    /// <summary>The rules told once more, plainly, from the ledger's entries and the chance in the csv.</summary>
    private string Derived(ToolForecast tool, double past)
    {
        List<LedgerEntry> history = [.. demo.Forecasts.Shop.HistoryOf(tool.Tool).Select(each => each.Entered.What)];
        List<(ToolLookedOver Found, bool Forbids)> open = BadDayTests.OpenPlainly(demo.Forecasts.Shop, tool.Tool);
        bool isOut = open.Exists(each =>
            each.Forbids && each.Found.Finding is Finding.Cracked or Finding.Broken or Finding.Soft or Finding.GlassHard
        );
        bool isReadPast = tool.Gauges.Any(each =>
            each.History.LastKnown is { } size
            && each.History.Gauge.ScrapSize is { } scrap
            && (each.History.Gauge.Wears == Core.Tools.Wears.Smaller ? size <= scrap : size >= scrap)
        );
        int heats = history.FindLastIndex(what => what is HeatsWorked);
        int sound = history.FindLastIndex(what => what is ToolLookedOver { Finding: Finding.Sound });
        return isOut ? "out"
            : open.Exists(each => each.Forbids) ? "dress first"
            : past > 0.5 || isReadPast ? "past its limit"
            : tool.ChancePastLimit(UsualSession(history, tool)) > 0.2 ? "near its limit"
            : heats > sound ? "look it over"
            : "inside its limit";
    }

    private double UsualSession(List<LedgerEntry> history, ToolForecast tool)
    {
        Shop shop = demo.Forecasts.Shop;
        string[] sessions = [.. history.OfType<HeatsWorked>().Select(heats => heats.Session).Distinct().TakeLast(3)];
        return sessions.Length == 0
            ? 10
            : history
                .OfType<HeatsWorked>()
                .Where(heats => sessions.Contains(heats.Session))
                .Sum(heats => shop.Weighted(tool.Tool.Tool, heats)) / sessions.Length;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
