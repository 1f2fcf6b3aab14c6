using System.Text.RegularExpressions;

namespace ToolWear.Tests.Commands;

/// <summary>The guide and the manual page say what the program does: each command in them was typed.</summary>
public sealed partial class GuideTests(DemoFixture demo)
{
    private static readonly string[] Asked = ["first-evening", "morning-after", "big-order", "crack", "year"];

    [Theory]
    [InlineData("first-evening")]
    [InlineData("morning-after")]
    [InlineData("big-order")]
    [InlineData("crack")]
    [InlineData("year")]
    public void Each_command_of_a_page_works_where_the_page_begins(string name)
    {
        using TestSite site = new();
        string page = site.Done("guide", name);
        if (name == "first-evening")
        {
            string rows = string.Join(
                '\n',
                page.Split('\n')
                    .Where(line =>
                        line.Contains(',', StringComparison.Ordinal)
                        && line.StartsWith("     ", StringComparison.Ordinal)
                    )
                    .Select(line => line.Trim())
            );
            site.Write("my-tools.csv", rows + "\n");
        }
        else
        {
            site.Demo();
        }

        string[] typed = [.. Typed().Matches(page).Select(match => match.Groups["line"].Value)];
        Assert.True(typed.Length >= 3, $"only {typed.Length} commands");
        foreach (string line in typed)
        {
            site.Done([.. ExampleShop.Split(line).Select(word => File(site, word))]);
        }
    }

    [Fact]
    public void A_page_fits_a_sheet_and_eighty_columns()
    {
        foreach (string name in Asked)
        {
            string[] lines = demo.Site.Done("guide", name).Split('\n');
            Assert.All(lines, line => Assert.True(line.Length <= 80, line));
            // 273 mm of A4 at 10 pt letters of 4.6 mm, less the heading and the caution
            Assert.InRange(lines.Length, 20, 50);
        }

        string all = demo.Site.Done("guide");
        string sheet = demo.Site.Done("guide", "--as", "html");
        Assert.Equal(4, Regex.Count(sheet, "break-before:page"));
        Assert.All(Asked, name => Assert.Contains(demo.Site.Done("guide", name), all, StringComparison.Ordinal));
        Ran wrong = demo.Site.Run("guide", "cracks");
        Assert.Equal((2, ""), (wrong.Exit, wrong.Output));
        Assert.Contains("crack", wrong.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_manual_page_has_every_verb_with_its_options_and_no_line_that_is_taken_for_a_request()
    {
        string page = demo.Site.Done("man");
        string[] known = [".TH", ".SH", ".SS", ".TP", ".PP", ".nf", ".fi", ".I", ".B"];
        foreach (string line in page.Split('\n').Where(line => line is ['.' or '\'', ..]))
        {
            Assert.Contains(line.Split(' ')[0], known);
        }

        string[] verbs =
        [
            .. Directory
                .GetFiles(Path.Combine(Repository.Folder, "tests/ToolWear.Tests/goldens/help"))
                .Select(path => Path.GetFileNameWithoutExtension(path)!)
                .Where(verb => verb != "toolwear"),
        ];
        Assert.True(verbs.Length > 50, $"only {verbs.Length} verbs");
        Assert.All(verbs, verb => Assert.Contains($"\n.SS {verb}\n", page, StringComparison.Ordinal));
        Assert.Contains("\\fB\\-\\-not\\-seen\\fR", page, StringComparison.Ordinal);
    }

    private static string File(TestSite site, string word) =>
        word.EndsWith(".csv", StringComparison.Ordinal) || word.EndsWith(".db", StringComparison.Ordinal)
            ? site.In(word)
            : word;

    [GeneratedRegex("^ +toolwear (?<line>.+)$", RegexOptions.Multiline)]
    private static partial Regex Typed();
}
