using System.Text.RegularExpressions;
using ToolWear.Keys;
using ToolWear.Testing.Goldens;

namespace ToolWear.Tests.Commands;

/// <summary>What README shows is what the program prints.</summary>
public sealed partial class ReadmeTests
{
    [Fact]
    public void The_commands_of_README_print_what_stands_there()
    {
        string path = Path.Combine(Repository.Folder, "README.md");
        string before = File.ReadAllText(path);
        using TestSite site = new();
        site.Done("demo", "--no-screens", "--store", site.Store);
        int run = 0;
        string after = Example()
            .Replace(
                before,
                example =>
                {
                    run++;
                    string line = example.Groups["line"].Value;
                    return $"```console\n$ toolwear {line}\n{Printed(site, line)}```";
                }
            );

        Assert.Equal(5, run);
        if (Environment.GetEnvironmentVariable(Golden.Accept) == "1")
        {
            File.WriteAllText(path, after);
            return;
        }

        Assert.Equal(before, after);
    }

    [Fact]
    public void Its_first_command_opens_the_demo_and_it_says_how_to_leave_and_how_to_do_without_screens()
    {
        string readme = File.ReadAllText(Path.Combine(Repository.Folder, "README.md"));
        string[] commands = [.. Shell().Matches(readme).Select(block => block.Groups["line"].Value)];
        Assert.Equal("dotnet run --project src/ToolWear -- demo", commands[0]);
        Assert.Equal("dotnet test --solution ToolWear.sln", commands[1]);
        KeyRow[] leaving = [.. KeyTable.Of(ScreenName.ToolRack).Where(row => row.Act == Act.Leave)];
        Assert.Equal(2, leaving.Length);
        foreach (KeyRow key in leaving)
        {
            Assert.Matches($"`?{key.Shown}`?[^.]* leaves", readme);
        }

        const string without = "-- demo --no-screens --store demo.db";
        Assert.Contains(without, readme, StringComparison.Ordinal);
        using TestSite site = new();
        // the screens want a terminal, which a test has not
        Assert.Equal(2, site.Run("demo").Exit);
        string[] words = without.Replace("demo.db", site.In("demo.db"), StringComparison.Ordinal).Split(' ')[1..];
        site.Done(words);
        Assert.Contains("H5", site.Done("rack", "--store", site.In("demo.db")), StringComparison.Ordinal);
    }

    /// <summary>What a user sees: results and what is said beside them.</summary>
    private static string Printed(TestSite site, string line)
    {
        string[] words = line.Split(' ');
        string[] inFolder = words[0] == "export-history" ? [words[0], site.In(words[1])] : words;
        Ran ran = site.Run(inFolder);
        Assert.Equal(0, ran.Exit);
        return (ran.Output + ran.Error).Replace(
            site.Folder + Path.DirectorySeparatorChar,
            "",
            StringComparison.Ordinal
        );
    }

    [GeneratedRegex("```sh\\n(?<line>[^\\n]+)\\n```")]
    private static partial Regex Shell();

    [GeneratedRegex("```console\\n\\$ toolwear (?<line>[^\\n]+)\\n(?<text>(?s:.*?))```")]
    private static partial Regex Example();
}
