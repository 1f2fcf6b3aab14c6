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
        // in an empty home, with the table as README has it
        using TestSite site = new();
        site.Write("my-tools.csv", Table().Match(before).Groups["text"].Value);
        int run = 0;
        string after = Example()
            .Replace(
                before,
                example =>
                {
                    run++;
                    string line = example.Groups["line"].Value;
                    return $"```sh\ntoolwear {line}\n```\n\n```text\n{Printed(site, line)}```";
                }
            );

        Assert.Equal(6, run);
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

    [Fact]
    public void Every_other_block_for_the_shell_works_too_and_README_is_a_front_door()
    {
        string readme = File.ReadAllText(Path.Combine(Repository.Folder, "README.md"));
        Assert.InRange(readme.Split('\n').Length, 100, 200);
        using TestSite site = new();
        site.Write("my-tools.csv", Table().Match(readme).Groups["text"].Value);
        string[] lines = [.. Blocks().Matches(readme).SelectMany(block => block.Groups["text"].Value.Split('\n'))];
        string[] typed = [.. lines.Where(line => line.StartsWith("toolwear ", StringComparison.Ordinal))];
        Assert.True(typed.Length >= 11, $"only {typed.Length} lines");
        foreach (string line in typed)
        {
            site.Done([.. Words(site, line.Split(['>', '#'])[0].Trim()["toolwear ".Length..])]);
        }

        foreach (Match picture in Pictures().Matches(readme))
        {
            Assert.True(File.Exists(Path.Combine(Repository.Folder, picture.Value)), picture.Value);
        }
    }

    private static IEnumerable<string> Words(TestSite site, string line) =>
        line.Split(' ').Select(word => word.EndsWith(".csv", StringComparison.Ordinal) ? site.In(word) : word);

    /// <summary>What a user sees: results and what is said beside them.</summary>
    private static string Printed(TestSite site, string line)
    {
        Ran ran = site.Run([.. Words(site, line)]);
        Assert.Equal(0, ran.Exit);
        return (ran.Output + ran.Error).Replace(
            site.Folder + Path.DirectorySeparatorChar,
            "",
            StringComparison.Ordinal
        );
    }

    [GeneratedRegex("```csv\\n(?<text>(?s:.*?))```")]
    private static partial Regex Table();

    [GeneratedRegex("```sh\\n(?<text>(?s:.*?))```")]
    private static partial Regex Blocks();

    [GeneratedRegex("\\.build/pictures/[a-z-]+\\.svg")]
    private static partial Regex Pictures();

    [GeneratedRegex("```sh\\n(?<line>[^\\n]+)\\n```")]
    private static partial Regex Shell();

    [GeneratedRegex("```sh\\ntoolwear (?<line>[^\\n]+)\\n```\\n\\n```text\\n(?<text>(?s:.*?))```")]
    private static partial Regex Example();
}
