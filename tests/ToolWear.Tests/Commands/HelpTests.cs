using ToolWear.Commands;
using ToolWear.Core.Measure;

namespace ToolWear.Tests.Commands;

/// <summary>Help that fits, leads from the everyday verbs to all of them, and meets a slip with what was meant.</summary>
public sealed class HelpTests(DemoFixture demo)
{
    [Fact]
    public void No_line_of_help_is_wider_than_80()
    {
        string[][] pages =
        [
            ["--help"],
            ["help", "all"],
            ["help", "examples"],
            ["help", "typing"],
            .. ExampleShop.All().Select(each => new[] { each.Verb, "--help" }),
        ];
        string[] wide =
        [
            .. pages.SelectMany(page => demo.Site.Done(page).Split('\n').Where(line => line.TrimEnd('\r').Length > 80)),
        ];
        Assert.Empty(wide);
    }

    [Fact]
    public void Help_begins_with_15_everyday_verbs_in_four_groups()
    {
        string[] everyday = ExampleShop.Named(demo.Site.Done("--help").Split("The evening:")[1].Split("More:")[0]);
        Assert.InRange(everyday.Length, 8, 15);
        string help = demo.Site.Done("--help");
        Assert.All(
            ["The evening:", "What I have:", "Planning:", "Files:", "toolwear help all"],
            part => Assert.Contains(part, help, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Help_of_a_verb_is_what_its_own_option_shows()
    {
        Assert.Equal(demo.Site.Done("measure", "--help"), demo.Site.Done("help", "measure"));
        Assert.Equal(demo.Site.Done("--help"), demo.Site.Done("help"));
        Assert.Contains("Did you mean rack?", demo.Site.Refused(2, "help", "rak"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_it_says_to_type_when_works()
    {
        Assert.True(HelpVerb.Examples.Length >= 10);
        using TestSite site = ExampleShop.Make(demo);
        string before = Environment.CurrentDirectory;
        foreach ((string when, string line) in HelpVerb.Examples)
        {
            string[] words = ExampleShop.Split(
                line.Replace("my-tools.csv", site.In("my-tools.csv"), StringComparison.Ordinal)
            );
            // there has to be a session to close
            string[] store = words[0] == "import" ? ["--store", site.In("new.db")] : [];
            Ran ran = site.Run([.. words, .. store]);
            Assert.True(ran.Exit == 0, $"{when}: {line}\n{ran.Error}");
        }

        Assert.Equal(before, Environment.CurrentDirectory);
    }

    [Fact]
    public void What_it_says_can_be_typed_is_read()
    {
        Assert.All(
            HelpVerb.Typed,
            row => Assert.All(row.Such.Split("; "), such => Assert.True(IsRead(row.What, such)))
        );

        bool IsRead(string what, string such) =>
            what switch
            {
                "Sizes" => SizeText.TryParse(such, LengthUnit.Mm, out _, out _),
                "Days" => DayText.TryRead(such, new DateOnly(2026, 12, 2), out _, out _),
                "Days to come" => DayText.TryRead(such, new DateOnly(2026, 12, 2), out _, out _, isToCome: true),
                "Heats" => Heats.TryParse(such, out _, out _),
                "Shares" => demo.Site.Run(
                    "plan",
                    "--life-median",
                    "60",
                    "--life-sdlog",
                    "0.3",
                    "--demand",
                    "9",
                    "--sure",
                    such
                ).Exit == 0,
                _ => false,
            };
    }

    [Theory]
    [InlineData("rak", "No verb \"rak\". Did you mean rack?")]
    [InlineData("meassure H5 width 13.5", "No verb \"meassure\". Did you mean measure?")]
    [InlineData("heats H55 2", "No tool \"H55\". Did you mean H5?")]
    [InlineData("card Q9", "No tool \"Q9\". There are A2, A2ND,")]
    [InlineData("look-over H5 mushromed", "No finding \"mushromed\". Did you mean mushroomed?")]
    [InlineData("measure H5 widht 13.5", "No gauge mark on H5 \"widht\". Did you mean width?")]
    [InlineData("heats H5 2 --sesion s", "No option \"--sesion\". Did you mean --session?")]
    [InlineData("set hamer_days mon", "No setting \"hamer_days\". Did you mean hammer_days?")]
    [InlineData("measure H5", "Give GAUGE: ")]
    [InlineData("card H5 H6", "card has no use for \"H6\".")]
    public void A_slip_is_met_with_what_was_meant(string line, string says)
    {
        using TestSite site = ExampleShop.Make(demo);
        Ran ran = site.Run(ExampleShop.Split(line));
        Assert.InRange(ran.Exit, 1, 2);
        Assert.Equal("", ran.Output);
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
        Assert.True(ran.Error.Length < 400, ran.Error);
    }
}
