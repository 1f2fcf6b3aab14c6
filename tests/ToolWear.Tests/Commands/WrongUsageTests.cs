namespace ToolWear.Tests.Commands;

/// <summary>Every verb used wrongly: exit 2, nothing on standard output, a line that says what and where help is.</summary>
public sealed class WrongUsageTests
{
    public static TheoryData<string, string> Verbs => [.. ExampleShop.All()];

    [Theory]
    [MemberData(nameof(Verbs))]
    public void A_verb_used_wrongly_says_so_and_does_nothing(string verb, string example)
    {
        using TestSite site = new();
        string[] right = ExampleShop.Split(example);
        Refused(site, [.. right, "--no-such-option"], "--no-such-option", $"toolwear {verb} --help");
        Refused(site, [.. right, "one", "two", "three", "four"], $"toolwear {verb} --help");
        Refused(site, [.. right, "--on", "2026-02-30"], "2026-02-30", "2026-05-01");
        Refused(site, [.. right, "--units", "cm"], "cm", "mm or in");
        string[] without = [.. right.TakeWhile(word => word != "--as")];
        Refused(site, [.. without, "--as", "xml"], "xml", "text, csv, json");
        Assert.Empty(site.Bytes());
    }

    [Fact]
    public void A_verb_without_its_arguments_says_which()
    {
        using TestSite site = new();
        int wanting = 0;
        foreach ((string verb, string _) in ExampleShop.All())
        {
            Ran ran = site.Run(verb);
            if (ran.Exit == 2)
            {
                wanting++;
                Assert.Equal("", ran.Output);
                Assert.True(ran.Error.Length > 20, $"{verb}: {ran.Error}");
            }
        }

        Assert.True(wanting >= 25, $"only {wanting} verbs want something");
    }

    [Theory]
    [InlineData("settings")]
    [InlineData("costs")]
    [InlineData("forecast")]
    public void A_day_is_refused_where_nothing_hangs_on_it(string verb)
    {
        using TestSite site = new();
        Refused(site, [verb, "--on", "2026-05-01"], $"{verb} is the same on every day");
        Refused(site, ["--on", "2026-05-01", verb], $"{verb} is the same on every day");
        Assert.DoesNotContain("every day", site.Run("rack", "--on", "2026-05-01").Error, StringComparison.Ordinal);
    }

    private static void Refused(TestSite site, string[] line, params string[] says)
    {
        Ran ran = site.Run(line);
        Assert.True(ran.Exit == 2, $"{string.Join(' ', line)}: exit {ran.Exit}\n{ran.Output}{ran.Error}");
        Assert.Equal("", ran.Output);
        Assert.All(says, part => Assert.Contains(part, ran.Error, StringComparison.Ordinal));
    }
}
