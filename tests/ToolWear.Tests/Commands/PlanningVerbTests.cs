using System.Globalization;
using ToolWear.Testing.Goldens;

namespace ToolWear.Tests.Commands;

/// <summary>plan, forge-list, costs, order and close-session on the demo shop.</summary>
public sealed class PlanningVerbTests(DemoFixture demo) : IClassFixture<DemoFixture>
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
            "X2: about 11 heats left, X3: 41; make one X rough drift by Thu 2026-11-19 from the 32 round (bar 4140 32), 66 mm.",
            flat,
            StringComparison.Ordinal
        );
        Assert.Contains("an estimate, not a permission", flat, StringComparison.Ordinal);
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

    [Theory]
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
