using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Wear;
using ToolWear.Keys;
using ToolWear.Screens;
using ToolWear.Screens.Drawing;
using ToolWear.Tests.Commands;
using ToolWear.Tests.Screens.Terminals;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>
/// The recorded evening once more, key by key: in a window a column and a row too small, in a shop that speaks inches,
/// without colour, and on a console that has neither colours nor braille to spare. It comes to the same.
/// </summary>
[Collection(ScreenLibrary.Name)]
public sealed class SameEveningTests
{
    [Fact]
    public void A_small_window_and_inches_come_to_the_same()
    {
        Ended small = Play(79, 23, "mm");
        Ended inches = Play(80, 24, "in");
        Assert.Equal(small.Entries, inches.Entries);
        Assert.Equal(small.Verdicts, inches.Verdicts);
        // by hand: opened, 5 heats, 2 heads, closed, an order counted down, 3 readings, 2 tools looked over
        Assert.Equal(15, small.Entries.Length);
    }

    [Fact]
    public void Without_colour_and_on_a_console_without_braille()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "a pseudo-terminal by the numbers of Linux");
        using EveningOnTerminal console = new(new() { ["TERM"] = "linux", ["NO_COLOR"] = "1" });
        console.Play();
        // ECMA-48, SGR: bold, faint, underlined, reversed, their ends, and the terminal's own colours
        string[] styles = ["", "0", "1", "2", "4", "7", "22", "24", "27", "39", "49"];
        Assert.Empty(console.Styles.Except(styles, StringComparer.Ordinal));
        Assert.Contains("7", console.Styles);
        Assert.DoesNotContain(console.Written, each => each is > '\u2800' and <= '\u28ff');
        Assert.Contains("-- -- -- --", console.Card, StringComparison.Ordinal);
    }

    private static Ended Play(int width, int height, string units)
    {
        using TestSite site = new();
        site.Demo();
        site.Done("set", "units", units);
        int before = 0;
        using (Evenings night = new(site, width: width, height: height))
        {
            before = night.Sitting.Shop.Ledger.Count;
            Press(night, EveningScript.Night);
        }

        site.Clock.Advance(TimeSpan.FromHours(13));
        using Evenings morning = new(site, width: width, height: height);
        Press(morning, EveningScript.Morning);
        morning.Type(site.In("history.csv"));
        morning.Press("Enter");
        Assert.Contains("readings written to", morning.Text, StringComparison.Ordinal);
        ShopForecasts forecasts = ShopForecasts.Of(morning.Sitting.Shop);
        return new(
            [.. morning.Sitting.Shop.Ledger.Skip(before).Select(each => Testing.Told.Of(each.What))],
            [
                .. forecasts
                    .Tools.Select(each => $"{each.Tool.Id} {forecasts.VerdictOf(each).Word}")
                    .Order(StringComparer.Ordinal),
            ]
        );
    }

    // sizes are typed in mm: in a shop of inches with their mark
    private static void Press(Evenings evening, IReadOnlyList<(string Caption, string[] Keys)> steps)
    {
        bool isInches = evening.Sitting.Units == Core.Measure.LengthUnit.Inch;
        foreach ((string _, string[] keys) in steps)
        {
            foreach (string key in keys)
            {
                if (
                    isInches
                    && key == "Enter"
                    && evening.Host.Current is { Name: ScreenName.CaliperRound, Line.Text.Length: > 0 }
                )
                {
                    evening.Press("m", "m");
                }

                evening.Press(key);
            }

            evening.WaitForAll();
            Judge(evening);
        }
    }

    private static void Judge(Evenings evening)
    {
        string text = evening.Text;
        string[] lines = text.TrimEnd('\n').Split('\n');
        (int width, int height) = evening.Size;
        Picture drawn = evening.Host.Current.Whole(width, height).WithList();
        string[] pure = [.. drawn.ToString().TrimEnd('\n').Split('\n').Select(line => line.TrimEnd())];
        Assert.Equal(pure, lines.Zip(pure, WithoutBar));
        Assert.True(drawn.Overlaps.Count == 0, text);
        Assert.True(drawn.LeftOut.Count == 0, $"left out: {string.Join(", ", drawn.LeftOut)}\n{text}");
        Assert.True(!WholeWords.CutIn(text).Any(), $"cut: {string.Join(", ", WholeWords.CutIn(text))}\n{text}");
        IEnumerable<string> foot = ScreenFrame
            .Foot(evening.Host.Current, width, height)
            .Select(line => string.Join("  ", line.Select(row => $"{row.Shown} {row.Words}")));
        Assert.Equal(foot, lines[^foot.Count()..]);
    }

    // beside a long list the library draws its bar
    private static string WithoutBar(string line, string pure) =>
        string.Concat(
                line.Select((each, i) => "▲▼█░".Contains(each) && pure.ElementAtOrDefault(i) != each ? ' ' : each)
            )
            .TrimEnd();

    /// <summary>What an evening came to.</summary>
    /// <param name="Entries">Its entries, told in full.</param>
    /// <param name="Verdicts">The verdict of every tool after it.</param>
    internal sealed record Ended(ImmutableArray<string> Entries, ImmutableArray<string> Verdicts);
}
