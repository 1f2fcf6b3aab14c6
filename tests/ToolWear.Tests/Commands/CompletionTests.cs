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

    [Theory]
    [InlineData("measure H5 ", "length overall width")]
    [InlineData("measure HS2 ", "overall width")]
    [InlineData("measure H5 width ", "")]
    [InlineData("rework HS2 dressed --gauge ", "overall width")]
    [InlineData("rack --by ", "place verdict")]
    [InlineData("rack ", "")]
    [InlineData("import ", "<file>")]
    [InlineData("import my", "<file>")]
    [InlineData("rack --store ", "<file>")]
    [InlineData("rack --st", "--store")]
    [InlineData("rack -", "--alone --as --by --help --on --once --quiet --semicolon --store --units --wide")]
    public void Nothing_else_is_offered(string typed, string offered) =>
        Assert.Equal(offered, string.Join(' ', Offered(demo.Site, typed)));

    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    public void The_shell_itself_offers_gauge_marks_verbs_and_files(string shell)
    {
        string[] path = [.. (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':')];
        if (!path.Any(folder => File.Exists(Path.Combine(folder, shell))))
        {
            Assert.Skip($"{shell} is not installed here");
        }

        using TestSite site = new();
        site.Demo();
        Directory.CreateDirectory(site.In("data/toolwear"));
        foreach (string ending in new[] { "", ".journal" })
        {
            File.Copy(site.Store + ending, site.In("data/toolwear/shop.db" + ending));
        }

        site.Write("work/some-table.csv", "");
        site.Write("script", demo.Site.Done("completion", shell));
        Assert.Equal("length overall width", ByShell(shell, site, "toolwear measure H5 "));
        Assert.Equal("measure", ByShell(shell, site, "toolwear meas"));
        Assert.Equal("some-table.csv", ByShell(shell, site, "toolwear import som"));
        Assert.Equal("", ByShell(shell, site, "toolwear measure H5 width "));
    }

    /// <summary>What the shell has on offer behind a line, sorted: its own completion is asked, with our script in it.</summary>
    private static string ByShell(string shell, TestSite site, string line)
    {
        string asked = shell switch
        {
            "bash" => """
                source ../script
                COMP_LINE=$1; COMP_POINT=${#1}
                read -ra COMP_WORDS <<< "$1"; [[ $1 == *" " ]] && COMP_WORDS+=("")
                COMP_CWORD=$(( ${#COMP_WORDS[@]} - 1 ))
                compopt() { mapfile -t COMPREPLY < <(compgen -f -- "${COMP_WORDS[COMP_CWORD]}"); }
                _toolwear
                printf '%s\n' "${COMPREPLY[@]}"
                """,
            "zsh" => """
                autoload -U compinit && compinit -u -D
                compadd() { while [[ $1 == -* && $1 != -- ]]; do shift; done; [[ $1 == -- ]] && shift; print -rl -- "$@"; }
                _files() { print -rl -- ${words[CURRENT]}*(N); }
                source ../script
                words=(${(z)1}); [[ $1 == *" " ]] && words+=("")
                CURRENT=$#words
                _toolwear
                """,
            _ => "source ../script\ncomplete -C $argv[1]",
        };
        string file = site.Write("asked", asked + "\n");
        System.Diagnostics.ProcessStartInfo start = new(
            shell,
            shell == "bash" ? ["--norc", file, line]
                : shell == "zsh" ? ["-f", file, line]
                : ["--no-config", file, line]
        )
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
            WorkingDirectory = site.In("work"),
        };
        start.Environment["PATH"] = $"{AppContext.BaseDirectory}:{start.Environment["PATH"]}";
        start.Environment["XDG_DATA_HOME"] = site.In("data");
        start.Environment["HOME"] = site.Folder;
        using System.Diagnostics.Process process = System.Diagnostics.Process.Start(start)!;
        string output = process.StandardOutput.ReadToEnd();
        Assert.True(process.WaitForExit(60_000), $"{shell} did not end");
        return string.Join(
            ' ',
            output
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Select(text => text.Split('\t')[0].Trim())
                .Where(text => text.Length > 0)
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void A_scrapped_tool_is_not_offered_and_no_shop_offers_nothing()
    {
        Assert.DoesNotContain("H1", Offered(demo.Site, "card H"));
        using TestSite empty = new();
        Assert.DoesNotContain("H5", Offered(empty, "card "));
        Assert.Empty(empty.Bytes());
    }

    [Theory]
    [InlineData("bash", "complete -F _toolwear toolwear")]
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
