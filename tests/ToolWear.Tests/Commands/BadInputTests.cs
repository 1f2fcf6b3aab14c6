namespace ToolWear.Tests.Commands;

/// <summary>Bad input: the exit code, a sentence that says where, what and what would be right, and nothing changed.</summary>
public sealed class BadInputTests
{
    public static TheoryData<string, int, string[]> Typed =>
        new()
        {
            { "measure R3 width '1 7/16/2'", 2, ["1 7/16/2", "1 7/16"] },
            { "measure R3 width 0", 2, ["above zero"] },
            { "measure R3 girth 13", 1, ["girth", "width, overall"] },
            { "measure R9 width 13", 1, ["No tool \"R9\"", "R3"] },
            { "heats R3 -3", 2, ["heats"] },
            { "heats R3 0.3", 2, ["0.3", "0.5 to 1000"] },
            { "heats R3 1 --on 2026-02-30", 2, ["2026-02-30", "2026-05-01"] },
            { "heats R3 1 --on 2027-01-01", 1, ["future", "2026-11-12"] },
            { "heats R3 1 --work chiselling", 2, ["chiselling", "cheeks"] },
            { "add-tool R3 --form drift", 1, ["R3 is taken", "unique"] },
            { "add-tool R4 --form wedge", 2, ["wedge", "drift"] },
            { "add-tool R4 --form drift --gauge 'width,smaller,60,14,15,'", 1, ["15", "under", "14"] },
            { "cross-out 99 slip", 1, ["99", "1 to 1"] },
            { "set sure 90", 1, ["90", "0.01 to 0.999"] },
            { "look-over R3 fit", 2, ["fit", "sound"] },
            { "card ''", 2, ["mark"] },
            { "pull-early ''", 2, ["TOOL", "leave it out"] },
            { "order ''", 2, ["ORDER", "leave it out"] },
            { "rack --on", 2, ["--on"] },
            { "inside --outer 'round 20' --inner ''", 2, ["--inner", "round d"] },
            { "rack --as xml", 2, ["xml", "text, csv, json"] },
            { "import /nowhere/at/all", 1, ["/nowhere/at/all"] },
            { "fly R3", 2, ["fly", "--help"] },
            { "set-aside R3 @/etc/hostname extra", 2, ["extra"] },
        };

    public static TheoryData<string, string, string[]> Tables =>
        new()
        {
            { "unknown column", "tool,form,size_mm,colour\nR1,drift,14,red\n", [":1: colour", "scrap_mm"] },
            { "missing column", "tool,form\nR1,drift\n", [":1: size_mm"] },
            { "no such day", "tool,form,size_mm,on\nR1,drift,14,2026-02-30\n", [":2: on", "2026-02-30"] },
            { "duplicate mark", "tool,form,size_mm\nR1,drift,14\nR1,drift,14\n", [":3: tool", "R1"] },
            { "size in words", "tool,form,size_mm\nR1,drift,thick\n", [":2: size_mm", "thick", "36.5"] },
            { "negative heats", "tool,form,size_mm,heats_before\nR1,drift,14,-3\n", [":2: heats_before", "-3"] },
            { "empty file", "", [":1:", "empty"] },
            { "short row", "tool,form,size_mm\nR1,drift\n", [":2:"] },
            { "binary file", "tool\0form\u0001\u0002", ["NUL"] },
        };

    [Theory]
    [MemberData(nameof(Typed))]
    public void What_is_typed_wrongly_gets_a_sentence_and_changes_nothing(string line, int exit, string[] says)
    {
        using TestSite site = new();
        site.Done("add-tool", "R3", "--form", "drift", "--gauge", "width,smaller,60,14.0,12.8,");
        Dictionary<string, string> before = site.Bytes();

        Ran ran = site.Run(CommandLineOf(line));

        Assert.Equal(exit, ran.Exit);
        Assert.Equal("", ran.Output);
        Assert.All(says, part => Assert.Contains(part, ran.Error, StringComparison.Ordinal));
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, site.Bytes());
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_wrong_table_is_told_at_its_cell_and_changes_nothing(string what, string table, string[] says)
    {
        Assert.NotEmpty(what);
        Refused(table, says);
    }

    [Fact]
    public void A_line_of_five_megabytes_is_refused_civilly() =>
        Refused("tool,form,size_mm\nR1,drift," + new string('9', 5_000_000) + "\n", [":2:"]);

    private static void Refused(string table, string[] says)
    {
        using TestSite site = new();
        site.Write("mine.csv", table);
        Dictionary<string, string> before = site.Bytes();
        Ran ran = site.Run("import", site.In("mine.csv"));
        Assert.Equal(1, ran.Exit);
        Assert.Equal("", ran.Output);
        Assert.All(says, part => Assert.Contains(part, ran.Error, StringComparison.Ordinal));
        Assert.True(ran.Error.Length < 2000, "the refusal repeats the whole input");
        Assert.Equal(before, site.Bytes());
    }

    private static string[] CommandLineOf(string line) =>
        [
            .. line.Split('\'')
                .SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries)),
        ];
}
