using System.Globalization;
using System.Text.Json;
using ToolWear.Results;
using ToolWear.Testing.Goldens;

namespace ToolWear.Tests.Commands;

/// <summary>plan, forge-list, costs, order and close-session on the demo shop.</summary>
public sealed class PlanningVerbTests(DemoFixture demo)
{
    [Fact]
    public void The_forge_list_as_it_hangs_on_the_wall() =>
        Golden.Same("commands/forge-list.txt", demo.Site.Done("forge-list"));

    [Fact]
    public void The_forge_list_in_inches() =>
        Golden.Same(
            "commands/forge-list-in.txt",
            demo.Site.Done("forge-list", "--units", "in", "--until", "2026-11-20")
        );

    [Fact]
    public void What_if_beside_the_plan_as_it_is() =>
        Golden.Same(
            "commands/forge-list-if.txt",
            demo.Site.Done("forge-list", "--if-sure", "0.99", "--if-lost", "H5", "--if-heads", "hammers=40")
        );

    [Fact]
    public void The_plan_and_the_orders()
    {
        Golden.Same("commands/plan.txt", demo.Site.Done("plan"));
        Golden.Same("commands/order.txt", demo.Site.Done("order"));
    }

    [Fact]
    public void The_costs() => Golden.Same("commands/costs.txt", demo.Site.Done("costs"));

    [Fact]
    public void The_wall_sheet_fits_eighty_columns_and_says_day_bar_length_and_number()
    {
        string sheet = demo.Site.Done("forge-list");
        Assert.All(sheet.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
        string flat = string.Join(' ', sheet.Split('\n').Select(line => line.Trim()));
        Assert.Contains(
            "X2: about 10 heats left, X3: 39; make one X rough drift by Thu 2026-11-12 from the 32 round (bar 4140 32), 66 mm.",
            flat,
            StringComparison.Ordinal
        );
        Assert.Contains("an estimate, not a go-ahead", flat, StringComparison.Ordinal);
    }

    [Fact]
    public void The_forge_list_as_csv_names_days_numbers_bars_lengths_weights_costs_and_reasons()
    {
        List<List<string>> rows = CsvCells.Of(demo.Site.Done("forge-list", "--as", "csv"));
        int Column(string name) => rows[0].IndexOf(name);
        List<string>[] whole =
        [
            .. rows.Skip(1).Where(row => row[Column("bar")].Length > 0 && row[Column("cost")].Length > 0),
        ];
        Assert.InRange(whole.Length, 2, 100);
        string[] tools = ["X2ND", "X2, X3", "A2"];
        string[] orders = ["hammers", "hammers", "adzes"];
        foreach ((string tool, string order) in tools.Zip(orders))
        {
            List<string> row = Assert.Single(
                whole,
                each => each[Column("why")].StartsWith(tool + " may run out", StringComparison.Ordinal)
            );
            Assert.Equal(order, row[Column("order")]);
            Assert.Contains($"order {order}", row[Column("why")], StringComparison.Ordinal);
            Assert.Equal("4140 32", row[Column("bar")]);
            Assert.True(DateOnly.TryParseExact(row[Column("forge_by")], "yyyy-MM-dd", out DateOnly by));
            Assert.True(by <= DateOnly.Parse(row[Column("ready_by")], CultureInfo.InvariantCulture));
            foreach (string figure in (string[])["number", "cut_mm", "piece_kg", "batch_kg", "cost", "hours"])
            {
                Assert.True(double.Parse(row[Column(figure)], CultureInfo.InvariantCulture) > 0, figure);
            }
        }
    }

    // planning.md, worked example: h* = 3.5470 at 15.5501, whole 4 at 15.6242, none 23.76; t = 34.05 at .6761 against 1.9120
    [Fact]
    public void The_split_of_heats_and_the_early_pulling_of_the_worked_example()
    {
        JsonElement split = Json(
            "heat-split --rough-cost 25 --rough-life 60 --finish-cost 120 --finish-life 250 --heat-cost 1.5 --least 2 --more 10 --helps 2.5"
        );
        Assert.Equal(3.5470, Number(split, "rough_heats"), 4);
        Assert.Equal(15.5501, Number(split, "cost_at_best"), 4);
        Assert.Equal(4, Number(split, "whole_heats"));
        Assert.Equal(15.6242, Number(split, "cost_at_whole"), 4);
        Assert.Equal(23.76, Number(split, "cost_without"), 9);
        JsonElement pull = Json("pull-early --life-median 60 --life-sdlog 0.3 --planned 20 --failure 120");
        Assert.Equal(34.05, Number(pull, "pull_at_heats"), 2);
        Assert.Equal(0.6761, Number(pull, "cost_a_heat"), 4);
        Assert.Equal(1.9120, Number(pull, "run_to_failure_a_heat"), 4);
    }

    // planning.md, worked example; reference/wear/cases.json s10 is held to 1e-6 beside the code
    [Fact]
    public void The_plan_of_the_worked_example()
    {
        JsonElement plan = Json("plan --life-median 60 --life-sdlog 0.3 --used 15,40 --demand 360 --sure 0.9");
        Assert.Equal(6, Number(plan, "needed"));
        Assert.Equal(5.16216, Number(plan, "expected"), 5);
        double[] cover = [0, 0, 0.00040, 0.01729, 0.19843, 0.66662, 0.95650];
        Assert.All(
            cover.Zip(plan.GetProperty("cover").EnumerateArray().Select(each => each.GetDouble())),
            pair => Assert.Equal(pair.First, pair.Second, 5)
        );
    }

    private JsonElement Json(string line)
    {
        using JsonDocument document = JsonDocument.Parse(demo.Site.Done([.. line.Split(' '), "--as", "json"]));
        return document.RootElement.Clone();
    }

    private static double Number(JsonElement of, string name) => of.GetProperty(name).GetDouble();

    [Theory]
    [InlineData(1, "heat-split", "--pattern", "hatchet")]
    [InlineData(1, "heat-split", "--pattern", "nosuch")]
    [InlineData(2, "heat-split", "--rough-cost", "3")]
    [InlineData(2, "pull-early")]
    [InlineData(1, "pull-early", "Z9")]
    [InlineData(2, "quote", "--section", "oval 28 19", "--heads", "3", "--make")]
    [InlineData(1, "quote", "--handle", "nosuch", "--heads", "3")]
    [InlineData(2, "quote", "C", "--name", "other", "--heads", "3")]
    [InlineData(2, "close-session", "--count-off")]
    [InlineData(2, "order", "--heads", "3")]
    [InlineData(2, "costs", "--hours", "3")]
    [InlineData(2, "costs", "--reforge", "H4", "--hours", "1", "--gains", "0")]
    [InlineData(1, "costs", "--reforge", "B1", "--hours", "1", "--gains", "10")]
    [InlineData(1, "costs", "--reforge", "Z9", "--hours", "1", "--gains", "10")]
    [InlineData(2, "forge-list", "--if-sure", "95")]
    [InlineData(2, "forge-list", "--if-heads", "hammers")]
    [InlineData(1, "forge-list", "--if-heads", "nobody=3")]
    [InlineData(1, "forge-list", "--if-lost", "Z9")]
    public void What_cannot_be_is_refused_in_one_line(int exit, params string[] arguments)
    {
        Ran ran = demo.Site.Run(arguments);
        Assert.Equal(exit, ran.Exit);
        Assert.Empty(ran.Output);
        Assert.Contains("toolwear: ", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_quote_names_stock_hours_and_what_is_left_and_makes_the_series()
    {
        using TestSite site = new();
        site.Demo();
        string[] asked = ["quote", "--section", "teardrop 28.6 9.5 3.4", "--taper", "0.035", "--heads", "3"];
        Golden.Same("commands/quote.txt", site.Done(asked));
        Assert.StartsWith("entry ", site.Done([.. asked, "--make", "--name", "Q"]), StringComparison.Ordinal);
        site.Done("export", site.In("out"));
        string[] series =
        [
            .. File.ReadLines(site.In("out/series.csv")).Where(row => row.StartsWith("Q,", StringComparison.Ordinal)),
        ];
        Assert.Equal(4, series.Length);
        Assert.Contains("Q,rough,drift,teardrop,26.55,15.55", string.Join('\n', series), StringComparison.Ordinal);
        Assert.Contains("Q,teardrop", File.ReadAllText(site.In("out/eyes.csv")), StringComparison.Ordinal);
        Assert.Contains(
            "on record already",
            site.Run("quote", "Q", "--heads", "3", "--make").Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_batch_weighs_as_many_pieces_as_it_has()
    {
        using TestSite site = new();
        site.Demo();
        site.Done("order", "hammers", "--heads", "200");
        List<List<string>> rows = CsvCells.Of(site.Done("forge-list", "--as", "csv"));
        double Of(List<string> row, string column) =>
            double.Parse(row[rows[0].IndexOf(column)], CultureInfo.InvariantCulture);
        List<string>[] several =
        [
            .. rows.Skip(1).Where(row => Of(row, "number") > 1 && row[rows[0].IndexOf("piece_kg")].Length > 0),
        ];
        Assert.NotEmpty(several);
        Assert.All(several, row => Assert.Equal(Of(row, "number") * Of(row, "piece_kg"), Of(row, "batch_kg"), 1e-9));
    }

    // 20 minutes at 30 an hour are 10: with a head of 10 a failure costs twice as much
    [Fact]
    public void The_spoilt_head_counts_among_what_a_failure_costs()
    {
        using TestSite site = new();
        site.Done("set", "hour_rate", "30");
        foreach (string mark in (string[])["S1", "S2", "S3"])
        {
            site.Done("add-tool", mark, "--form", "slitter");
            site.Done("heats", mark, "12");
        }

        site.Done("scrap", "S1", "cracked");
        site.Done("scrap", "S2", "cracked");
        double Staying(params string[] more)
        {
            using JsonDocument answer = JsonDocument.Parse(site.Done([.. more, "--as", "json"]));
            return Number(answer.RootElement, "cost_of_staying");
        }

        double alone = Staying("pull-early", "S3");
        Assert.True(alone > 0);
        Assert.Equal(2 * alone, Staying("pull-early", "S3", "--head", "10"), 1e-9);
        Assert.Equal(alone, Staying("pull-early", "S3", "--failure", "10"), 1e-9);
    }

    // 0.1 h at 45 for 20 heats is 0.225 a heat, and with 4 besides 0.425
    [Fact]
    public void What_else_a_rework_costs_is_added_to_its_hours()
    {
        Assert.Equal(0.225, Number(Json("costs --reforge H4 --hours 0.1 --gains 20"), "rework_a_heat"), 1e-12);
        Assert.Equal(0.425, Number(Json("costs --reforge H4 --hours 0.1 --gains 20 --cost 4"), "rework_a_heat"), 1e-12);
    }

    [Fact]
    public void A_rework_is_weighed_against_a_new_tool()
    {
        // 0.1 h at 45 for 20 heats is 0.23 a heat, under the whole range of a new one
        Assert.Contains(
            "re-forge it\n",
            demo.Site.Done("costs", "--reforge", "H4", "--hours", "0.1", "--gains", "20"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "scrap it and make a new one\n",
            demo.Site.Done("costs", "--reforge", "H4", "--hours", "2", "--gains", "20"),
            StringComparison.Ordinal
        );
    }
}
