using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace ToolWear.Tests.Commands;

/// <summary>Printed sheets: they say what the commands say, they only show, and nothing of the store is markup in them.</summary>
public sealed partial class SheetTests(DemoFixture demo)
{
    private static readonly string[][] Sheets =
    [
        ["rack", "--as", "html"],
        ["card", "H5", "--as", "html"],
        ["card", "H5", "--as", "svg"],
        ["card", "HC1", "--as", "svg"],
        ["forge-list", "--as", "html"],
        ["hand-over", "--pattern", "hatchet", "--as", "html"],
    ];

    public static TheoryData<string> Lines => [.. Sheets.Select(line => string.Join(' ', line))];

    [Theory]
    [MemberData(nameof(Lines))]
    public void A_sheet_is_one_file_black_on_white_with_its_caution(string line)
    {
        string text = demo.Site.Done(line.Split(' '));
        XElement sheet = Markup.Read(text);
        Assert.All(
            Colour().Matches(text).Select(match => match.Value),
            colour => Assert.True(colour is "#000" or "#fff")
        );
        string said = Blanks()
            .Replace(string.Join(' ', sheet.DescendantNodes().OfType<XText>().Select(node => node.Value)), " ");
        Assert.Contains("Heats left is an estimate, not a go-ahead", said, StringComparison.Ordinal);
        Assert.Contains("[demo: an invented shop]", said, StringComparison.Ordinal);
        Assert.DoesNotMatch("\\b(is|are|be|remains|still|as|not) fit\\b", said);
    }

    [Fact]
    public void The_rack_on_paper_has_the_figures_of_the_rack_in_csv()
    {
        List<List<string>> csv = CsvCells.Of(demo.Site.Done("rack", "--as", "csv"));
        List<List<string>> paper = Cells(Markup.Read(demo.Site.Done("rack", "--as", "html")));
        Assert.Equal(csv.Count, paper.Count);
        int compared = 0;
        foreach ((List<string> row, List<string> cells) in csv.Zip(paper).Skip(1))
        {
            Assert.Equal(row[csv[0].IndexOf("tool")], cells[paper[0].IndexOf("Tool")]);
            string left = row[csv[0].IndexOf("heats_left")];
            if (left.Length > 0)
            {
                double full = double.Parse(left, System.Globalization.CultureInfo.InvariantCulture);
                Assert.Equal(
                    full.ToString("0", System.Globalization.CultureInfo.InvariantCulture),
                    cells[paper[0].IndexOf("Left")]
                );
                compared++;
            }
        }

        Assert.True(compared > 20, $"only {compared} tools");
    }

    [Fact]
    public void Limits_stand_in_the_shops_fractions_and_as_the_caliper_reads_them()
    {
        List<List<string>> paper = Cells(Markup.Read(demo.Site.Done("rack", "--as", "html", "--units", "in")));
        string H5 = paper.Single(row => row.Contains("H5"))[paper[0].IndexOf("Done at")];
        // 12.8 mm is 0.5039 in: by hand
        Assert.Equal("width under 1/2 (0.504)", H5);
    }

    [Fact]
    public void A_chart_has_a_mark_for_each_reading_and_each_made_size()
    {
        XElement svg = Markup.Read(demo.Site.Done("card", "H5", "--as", "svg"));
        // 4 readings each of width and length, and one mark in each legend
        Assert.Equal(8 + 2, svg.All("circle").Count());
        Assert.Equal(
            2,
            svg.All("path")
                .Count(path =>
                    path.Attribute("d")!.Value.EndsWith('Z')
                    && path.Attribute("stroke")!.Value == "#000"
                    && path.Attribute("stroke-width")!.Value == "0.3"
                )
        );
    }

    [Fact]
    public void Nothing_of_the_store_is_markup_on_a_sheet()
    {
        const string mark = "<script>x</script>";
        const string other = "]]>&\"'<b>";
        using TestSite site = new();
        foreach (string tool in new[] { mark, other })
        {
            site.Done(
                "add-tool",
                tool,
                "--form",
                "drift",
                "--place",
                "rough",
                "--eye",
                "<i>e",
                "--steel",
                "]]></style><p>",
                "--peg",
                "<u>",
                "--gauge",
                "width,smaller,60,14.0,12.8,",
                "--note",
                "</title><script>y</script>"
            );
            site.Done("heats", tool, "3");
            site.Done("measure", tool, "width", "13.8", "--by", "<img src=x onerror=z>");
            site.Done("look-over", tool, "sound", "--by", "<a href='//x'>", "--note", "</svg><script>");
        }

        foreach (
            string[] line in new[]
            {
                ["rack", "--as", "html"],
                ["card", mark, "--as", "html"],
                ["card", mark, "--as", "svg"],
                ["card", other, "--as", "html"],
                new[] { "card", other, "--as", "svg" },
            }
        )
        {
            XElement sheet = Markup.Read(site.Done(line));
            string said = string.Concat(sheet.DescendantNodes().OfType<XText>().Select(node => node.Value));
            Assert.Contains(line.Length > 3 ? line[1] : mark, said, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_helper_is_handed_the_tools_of_the_pattern_in_its_order()
    {
        List<List<string>> csv = CsvCells.Of(demo.Site.Done("hand-over", "--pattern", "hatchet", "--as", "csv"));
        Assert.Equal(["slit", "open", "cheeks", "second", "finish", "draw the bit"], csv.Skip(1).Select(row => row[1]));
        // a rough drift wears a quarter as much when it opens: four times the heats of its cheek work, rounded down
        int Stop(int row) =>
            int.Parse(csv[row][csv[0].IndexOf("stop_after_heats")], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(4 * Stop(3), Stop(2));
        Assert.DoesNotContain(csv.Skip(1), row => row.Contains("H4") || row.Contains("out"));
        Assert.Contains("hatchet", demo.Site.Refused(1, "hand-over", "--pattern", "no such"), StringComparison.Ordinal);
    }

    private static List<List<string>> Cells(XElement sheet) =>
        [.. sheet.All("table").First().All("tr").Select(row => row.Elements().Select(cell => cell.Value).ToList())];

    [GeneratedRegex("#[0-9a-fA-F]{3,8}")]
    private static partial Regex Colour();

    [GeneratedRegex("\\s+")]
    private static partial Regex Blanks();
}
