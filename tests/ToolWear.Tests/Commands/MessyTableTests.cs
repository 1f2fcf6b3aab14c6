using ToolWear.Testing.Goldens;

namespace ToolWear.Tests.Commands;

/// <summary>Tables as people really save them, each named for what makes it messy: taken as meant, or refused with what mends it.</summary>
public sealed class MessyTableTests
{
    private static readonly string Folder = Path.Combine(Repository.Folder, "tests", "ToolWear.Tests", "messy-tables");

    public static TheoryData<string> Names =>
        [
            .. Directory
                .GetFiles(Folder)
                .Select(path => Path.GetFileNameWithoutExtension(path))
                .Order(StringComparer.Ordinal),
        ];

    [Fact]
    public void There_are_more_than_twenty_five_of_them() => Assert.InRange(Names.Count, 26, 100);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_messy_table_is_taken_as_meant_or_refused_with_what_mends_it(string name)
    {
        using TestSite site = Shop();
        Dictionary<string, string> before = site.Bytes();
        Ran tried = site.Run("import", Path.Combine(Folder, name + ".csv"), "--try");
        Assert.Equal(before, site.Bytes());
        Ran done = site.Run("import", Path.Combine(Folder, name + ".csv"));
        Assert.Equal(tried.Exit, done.Exit);
        Golden.Same(
            $"messy/{name}.txt",
            $"{tried.Output}exit {tried.Exit}\n\nwithout --try:\n{done.Output}{done.Error}exit {done.Exit}\n"
        );
    }

    [Theory]
    [InlineData("tools-unknown-columns", "--keep-unknown")]
    [InlineData("tools-unknown-columns", "--ignore-unknown")]
    [InlineData("tools-blanks-to-carry-down", "--carry-down=Form,eye,place,steel")]
    [InlineData("tools-semicolons-decimal-commas", "--units=in")]
    [InlineData("readings-no-day", "--on=2023-05-01")]
    [InlineData("readings-day-in-some-rows", "--on=2023-05-01")]
    public void What_is_asked_for_mends_it(string name, string option) =>
        Golden.Same($"messy/{name} {option}.txt", Tried(name, option));

    // both were filled in and saved as xlsx, then as CSV, by LibreOffice 7.4 in that language
    [Fact]
    public void The_template_filled_in_two_languages_makes_the_same_shop()
    {
        string[] shops =
        [
            .. ((string[])["english", "german"]).Select(language =>
            {
                using TestSite site = Shop();
                site.Done("import", Path.Combine(Folder, $"tools-template-saved-in-{language}.csv"));
                return site.Done("export", "-", "--as", "json");
            }),
        ];
        Assert.Contains("5/8 bar; blue", shops[0], StringComparison.Ordinal);
        Assert.Equal(shops[0], shops[1]);
    }

    private static string Tried(string name, string option)
    {
        using TestSite site = Shop();
        return site.Run("import", Path.Combine(Folder, name + ".csv"), "--try", option).Output;
    }

    /// <summary>A drift, a slot punch with two gauge marks, a pattern.</summary>
    private static TestSite Shop()
    {
        TestSite site = new();
        site.Write("shop/tools.csv", "tool,form,place,made_on\nD1,drift,rough,2023-01-01\nP1,slot punch,,2023-01-01\n");
        site.Write("shop/gauge-marks.csv", "tool,gauge,wears\nD1,width,smaller\nP1,width,smaller\nP1,edge,larger\n");
        site.Write("shop/patterns.csv", "pattern,stage\nhatchet,rough\n");
        site.Done("import", site.In("shop"));
        return site;
    }
}
