using System.Text.RegularExpressions;
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

    [GeneratedRegex("```console\\n\\$ toolwear (?<line>[^\\n]+)\\n(?<text>(?s:.*?))```")]
    private static partial Regex Example();
}
