using System.Globalization;
using System.Text.RegularExpressions;
using ToolWear.Keys;
using ToolWear.Screens.Drawing;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Walks every golden of every screen: as many rows and columns as the window, whole words, keys of the table.</summary>
public sealed partial class ScreenGoldenTests
{
    public static TheoryData<string> Goldens =>
        [
            .. Directory
                .GetFiles(Folder, "*.txt")
                .Select(Path.GetFileName)
                .OfType<string>()
                .Order(StringComparer.Ordinal),
        ];

    private static string Folder =>
        Path.Combine(HouseRules.House.Root, "tests", "ToolWear.Tests", "goldens", "screens");

    [Theory]
    [MemberData(nameof(Goldens))]
    public void Every_screen_is_whole(string golden)
    {
        Match size = Size().Match(golden);
        Assert.True(size.Success, $"{golden}: the size is missing, as in name.80x24.txt");
        int width = int.Parse(size.Groups["width"].Value, CultureInfo.InvariantCulture);
        int height = int.Parse(size.Groups["height"].Value, CultureInfo.InvariantCulture);
        (string Caption, string[] Rows)[] screens = [.. Screens(File.ReadAllText(Path.Combine(Folder, golden)))];
        Assert.NotEmpty(screens);
        foreach ((string caption, string[] rows) in screens)
        {
            string where = $"{golden}, {caption}:\n{string.Join('\n', rows)}";
            Assert.True(rows.Length == height, $"{rows.Length} rows: {where}");
            Assert.True(rows.All(row => Picture.ColumnsOf(row) <= width), $"a row is too long: {where}");
            string[] cut = [.. WholeWords.CutIn(string.Join('\n', rows))];
            Assert.True(cut.Length == 0, $"cut: {string.Join(", ", cut)}: {where}");
            string[] foot = [.. rows.Reverse().TakeWhile(row => row.Length > 0 && IsOfKeys(row)).Reverse()];
            Assert.True(foot.Length > 0, $"no key stands at the foot: {where}");
            string[] keys = [.. foot.SelectMany(row => row.Split("  "))];
            Assert.True(keys.Distinct(StringComparer.Ordinal).Count() == keys.Length, $"a key stands twice: {where}");
        }
    }

    [Fact]
    public void The_recorded_evening_names_its_keys_and_shows_what_it_has_to()
    {
        string[] wanted =
        [
            "five heats on two drifts",
            "closing offers the heads that were counted",
            "the verdicts",
            "the forge list",
            "the history is written",
        ];
        foreach (string size in (string[])["80x24", "120x40"])
        {
            (string Caption, string[] Rows)[] screens =
            [
                .. Screens(File.ReadAllText(Path.Combine(Folder, $"evening.{size}.txt"))),
            ];
            Assert.All(screens, screen => Assert.Contains("keys: ", screen.Caption, StringComparison.Ordinal));
            Assert.All(
                wanted,
                step => Assert.Contains(screens, screen => screen.Caption.Contains(step, StringComparison.Ordinal))
            );
        }
    }

    /// <summary>Whether a row holds keys with their words and nothing else.</summary>
    private static bool IsOfKeys(string row) =>
        row.Split("  ")
            .All(each =>
                KeyTable.All.Any(key => each.StartsWith(key.Shown + " ", StringComparison.Ordinal) && each[^1] != ' ')
            );

    private static IEnumerable<(string Caption, string[] Rows)> Screens(string golden)
    {
        foreach (Match block in Block().Matches(golden))
        {
            // an empty line stands between two screens
            string[] rows = block.Groups["screen"].Value.Split('\n')[..^2];
            yield return (block.Groups["caption"].Value.Trim(), rows);
        }
    }

    [GeneratedRegex(@"\.(?<width>\d+)x(?<height>\d+)\.txt$")]
    private static partial Regex Size();

    [GeneratedRegex(@"(?<caption>(?:^== [^\n]*\n)+)(?<screen>(?:(?!== )[^\n]*\n)+)", RegexOptions.Multiline)]
    private static partial Regex Block();
}
