namespace ToolWear.Tests.Commands;

/// <summary>What people read fits their terminal: 80 columns where it is piped, those of the terminal else.</summary>
[Collection(Screens.ScreenLibrary.Alone)]
public sealed class WidthTests(DemoFixture demo)
{
    // what has a form of its own: a script for a shell, a page for man, CSV
    private static readonly string[] OfTheirOwnForm = ["completion", "man", "template", "export-history"];

    private static readonly string[] OfTheShop =
    [
        "rack --by verdict",
        "plan",
        "costs",
        "order",
        "eyes",
        "eye HF1",
        "eye --eye-mm 36.4",
        "drive-depth TF1",
        "slit H",
        "make-into H5",
        "bars",
        "bars '4140 32'",
        "hand-over",
        "hand-over --units in",
        "forge-list --if-sure 0.99",
        "card T2",
        "card HS2",
        "card HC1",
        "settings all",
        "columns",
        "rack --units in",
        "ledger",
        "import my-tools.csv --try",
        "guide",
        "help all",
        "quote H --heads 12",
    ];

    [Theory]
    [InlineData(80)]
    [InlineData(120)]
    public void No_verb_prints_a_line_wider_than_the_terminal(int width)
    {
        using TestSite shop = ExampleShop.Make(demo);
        string before = Environment.CurrentDirectory;
        Environment.CurrentDirectory = shop.Folder;
        List<string> wide = [];
        try
        {
            foreach (string line in OfTheShop)
            {
                Ran ran = shop.Run(width, ExampleShop.Split(line));
                Assert.True(ran.Output.Length > 0 && ran.Exit == 0, line);
                wide.AddRange(TooWide(ran.Output.Split('\n'), width, line));
            }
        }
        finally
        {
            Environment.CurrentDirectory = before;
        }

        Assert.True(wide.Count == 0, string.Join('\n', wide));
    }

    [Fact]
    public void No_example_of_a_verb_printed_a_line_wider_than_80()
    {
        // what ExampleTests holds the program to: the text comes first, csv and json behind lines of their own
        string[] files = Directory.GetFiles(
            Path.Combine(HouseRules.House.Root, "tests/ToolWear.Tests/goldens/examples"),
            "*.txt"
        );
        Assert.True(files.Length > 50, $"only {files.Length} examples");
        string[] wide =
        [
            .. files
                .Where(file => !OfTheirOwnForm.Contains(Path.GetFileNameWithoutExtension(file)))
                .Select(file => (Name: file, Lines: File.ReadAllLines(file)))
                .Where(file => !file.Lines[0].Contains("--as", StringComparison.Ordinal))
                .SelectMany(file =>
                    TooWide(
                        file.Lines[1..].TakeWhile(line => !line.StartsWith("$ ", StringComparison.Ordinal)),
                        80,
                        file.Name
                    )
                ),
        ];
        Assert.True(wide.Length == 0, string.Join('\n', wide));
    }

    [Fact]
    public void What_is_left_out_is_named_and_wide_shows_it()
    {
        string narrow = demo.Site.Run(60, "rack").Output;
        Assert.Contains("Left out: ", narrow, StringComparison.Ordinal);
        Assert.DoesNotContain("Eye now", narrow.Split('\n')[2], StringComparison.Ordinal);
        Assert.Contains("Eye now", demo.Site.Run(60, "rack", "--wide").Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Left out: ", demo.Site.Run(60, "rack", "--wide").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void On_a_terminal_no_verb_writes_an_escape_sequence_and_its_width_counts()
    {
        if (!OperatingSystem.IsLinux())
        {
            Assert.Skip("a pseudo-terminal of Linux");
        }

        using TestSite site = new();
        site.Demo();
        foreach (string[] line in new string[][] { ["--version"], ["rack", "--store", site.Store], ["card", "nosuch"] })
        {
            using Testing.Terminals.PseudoTerminal terminal = new(
                Screens.WaysOutTests.Opened.Program,
                line,
                new Dictionary<string, string?> { ["TERM"] = "xterm-256color", ["COLUMNS"] = null },
                site.Folder,
                width: 62
            );
            terminal.WaitForExit();
            Assert.DoesNotContain('\e', terminal.Written);
            Assert.All(terminal.Written.Split('\n'), text => Assert.True(text.TrimEnd('\r').Length <= 62, text));
        }
    }

    private static IEnumerable<string> TooWide(IEnumerable<string> lines, int width, string of) =>
        lines.Where(text => text.EnumerateRunes().Count() > width).Select(text => $"{of}: {text.Length}: {text}");
}
