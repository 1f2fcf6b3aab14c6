namespace ToolWear.Tests.Commands;

/// <summary>What shells are offered.</summary>
public sealed class CompletionTests(DemoFixture demo)
{
    [Theory]
    [InlineData("ra", "rack")]
    [InlineData("card H", "H5")]
    [InlineData("look-over H5 s", "sound")]
    [InlineData("measure H5 ", "width")]
    [InlineData("rack --as ", "json")]
    [InlineData("set ham", "hammer_days")]
    [InlineData("open-session --pattern ", "hatchet")]
    [InlineData("completion ", "fish")]
    public void What_may_follow_is_offered(string typed, string offered) =>
        Assert.Contains(offered, Offered(demo.Site, typed));

    [Fact]
    public void A_scrapped_tool_is_not_offered_and_no_shop_offers_nothing()
    {
        Assert.DoesNotContain("H1", Offered(demo.Site, "card H"));
        using TestSite empty = new();
        Assert.DoesNotContain("H5", Offered(empty, "card "));
        Assert.Empty(empty.Bytes());
    }

    [Theory]
    [InlineData("bash", "complete -o default -F _toolwear toolwear")]
    [InlineData("zsh", "#compdef toolwear")]
    [InlineData("fish", "complete -c toolwear")]
    public void A_script_asks_the_program(string shell, string says)
    {
        string script = demo.Site.Done("completion", shell);
        Assert.Contains(says, script, StringComparison.Ordinal);
        Assert.Contains("[suggest:", script, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_shell_is_refused() =>
        Assert.Contains("bash, fish, zsh", demo.Site.Refused(2, "completion", "tcsh"), StringComparison.Ordinal);

    private static string[] Offered(TestSite site, string typed) =>
        site.Done($"[suggest:{typed.Length}]", typed).Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
