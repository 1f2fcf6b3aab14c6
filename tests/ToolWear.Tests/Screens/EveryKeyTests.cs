using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens;
using ToolWear.Screens.Drawing;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>
/// Every printable key, F1 to F12, the arrows and the rest, pressed on every screen: only what stands at the foot does
/// something, all of it does, and only the keys that say so write into the ledger. Every picture that comes of it is
/// looked at: nothing overlaps, nothing is cut without a sign, nothing is left out where there is room.
/// </summary>
[Collection(ScreenLibrary.Name)]
public sealed class EveryKeyTests
{
    // Ctrl-C first: leaving shows by its exit code, which q sets back
    private static readonly string[] Every =
    [
        "Ctrl+C",
        .. Enumerable.Range(33, 94).Select(each => ((char)each).ToString()),
        .. Enumerable.Range(1, 12).Select(each => $"F{each}"),
        .. (string[])["Up", "Down", "Left", "Right", "Home", "End", "Insert", "Delete", "Tab", "PageUp", "PageDown"],
        .. (string[])["Space", "Enter", "Backspace", "Esc"],
    ];

    /// <summary>How each state of each screen is come by, from the rack: first those on which nothing can be recorded.</summary>
    private static readonly string[][] Reading =
    [
        [],
        ["e", "Backspace"],
        ["i"],
        ["Enter"],
        ["Enter", "w"],
        ["Enter", "x"],
        ["f"],
        ["f", "h"],
        ["c"],
        ["c", .. Enumerable.Repeat("Down", 8), "r"],
        ["r"],
        ["v"],
        ["?"],
        ["l", "/"],
    ];

    // one Enter here and a whole shop is supposed and planned: once is enough
    private static readonly string[][] Supposing =
    [
        ["f", "s"],
        ["f", "l"],
    ];

    private static readonly string[][] Writing =
    [
        ["h"],
        ["h", "e"],
        ["h", "Enter"],
        ["h", "Enter", "3", "b", "s"],
        ["m"],
        ["m", "1"],
        ["m", "Enter", "Enter"],
        ["m", "Enter", "Enter", "k"],
        ["m", "Enter", "Enter", "k", "1"],
        ["m", "Enter", "Enter", "s", "Esc"],
        ["Enter", "r"],
        ["d"],
        ["d", "Enter"],
        ["v", "l"],
        ["l"],
        ["l", "x"],
        ["s"],
        ["s", "Enter"],
        ["a"],
        ["t"],
        ["o"],
        ["o", "a"],
        ["o", "Enter"],
        ["o", "p"],
        ["o", "p", "a"],
        ["o", "p", "n"],
        ["o", "p", "Enter"],
        ["y"],
        ["y", "a"],
        ["y", "n"],
        ["y", "Enter"],
        ["y", "p"],
        ["y", "p", "Enter"],
        ["b"],
        ["b", "a"],
        ["b", "Enter"],
        ["h", "?"],
        ["h", "o"],
        ["n"],
        ["n", "a"],
        ["n", "a", "H", "4", "Enter", "A", "Enter", "Enter"],
        ["n", "Enter"],
        ["k"],
        ["k", "n", "w"],
        ["k", "x"],
    ];

    private static readonly string[][] OfAnEmptyStore =
    [
        [],
        ["i"],
        ["i", "x"],
        ["a"],
        ["t"],
        ["t", "R"],
        ["s"],
        ["y"],
        ["y", "a"],
        ["b"],
        ["b", "a"],
        ["?"],
    ];

    private static readonly HashSet<string> Judged = new(StringComparer.Ordinal);

    private static readonly (int Width, int Height)[] Sizes = [(80, 24), (120, 40), (40, 12)];

    [Fact]
    public void Foot_and_keys_agree_on_every_screen_of_the_demo()
    {
        using TestSite site = new();
        site.Demo();
        using BareScreens screens = new(site);
        screens.Wait();
        int before = screens.Sitting.Shop.Ledger.Count;
        PressEverywhere(screens, Reading);
        (screens.Width, screens.Height) = (80, 24);
        Assert.All(Supposing, way => PressEvery(screens, way));
        Assert.Equal(before, screens.Sitting.Shop.Ledger.Count);
        PressEverywhere(screens, Writing);
        string table = site.Write("a.csv", "tool,form,steel,hand\nR1,drift,4140,left\nX1,drift,,\n");
        string[] imported = ["i", .. table.Select(each => $"{each}"), "Enter"];
        (screens.Width, screens.Height) = (80, 24);
        PressEvery(screens, imported);
        PressEvery(screens, [.. imported, "d"]);
    }

    [Fact]
    public void Foot_and_keys_agree_on_every_screen_of_an_empty_store()
    {
        using TestSite site = new();
        using BareScreens screens = new(site);
        PressEverywhere(screens, OfAnEmptyStore);
    }

    private static void PressEverywhere(BareScreens screens, string[][] ways)
    {
        foreach ((int width, int height) in Sizes)
        {
            (screens.Width, screens.Height) = (width, height);
            foreach (string[] way in ways)
            {
                PressEvery(screens, way);
            }
        }
    }

    private static void PressEvery(BareScreens screens, string[] way)
    {
        HashSet<Act> acted = [];
        Seen start = GoTo(screens, way);
        bool isFresh = true;
        foreach (string key in Every)
        {
            if (!isFresh)
            {
                (start, isFresh) = (GoTo(screens, way), true);
            }

            // which signs a line takes is not a matter of size: beside the first two stand for all
            if (screens.Width != Sizes[0].Width && key is not ("5" or "a") && IsTyped(screens, key))
            {
                continue;
            }

            isFresh = !Press(screens, start, key, way, acted);
        }

        string where = Where(screens, start, way);
        Assert.Empty(
            start.Foot.Where(row => !acted.Contains(row.Act)).Select(row => $"{where}: {row.Shown} does nothing")
        );
    }

    /// <summary>Presses a key and judges what came of it.</summary>
    /// <returns>True where anything changed.</returns>
    private static bool Press(BareScreens screens, Seen start, string key, string[] way, HashSet<Act> acted)
    {
        string name = NameOf(key);
        bool isTyped = IsTyped(screens, key);
        KeyRow? row = KeyTable
            .Of(start.Screen)
            .FirstOrDefault(each => each.Names.Contains(name, StringComparer.Ordinal));
        screens.Press(key);
        Seen after = Look(screens);
        string where = $"{Where(screens, start, way)}, key {key}";
        if (after.Entries != start.Entries)
        {
            Assert.True(!isTyped && row is { Records: true }, $"{where}: wrote into the ledger");
        }

        bool hasChanged = after != start with { Foot = after.Foot, HasSaid = after.HasSaid };
        // Delete takes what stands behind the cursor: at the end of a line that is nothing
        bool isSeen = hasChanged || key == "Delete" || screens.Current.Line?.Text == key;
        Assert.True(isSeen || !isTyped, $"{where}: is typed and not seen");
        if (hasChanged && !isTyped)
        {
            Assert.True(row is not null, $"{where}: does something and stands nowhere");
            Assert.True(
                row.OnlyInHelp || start.Foot.Any(each => each.Act == row.Act) || screens.Height < 20,
                $"{where}: {row.Words} works and does not stand at the foot"
            );
        }

        // a key that answers with a sentence acts too: what it needs is there, else it stood not at the foot
        if (row is not null && (hasChanged || after.HasSaid))
        {
            acted.Add(row.Act);
        }

        return hasChanged;
    }

    private static string NameOf(string key) => KeyPress.Of(Evenings.KeyOf(key)).Name ?? "";

    private static bool IsTyped(BareScreens screens, string key) =>
        screens.Current.Line?.WouldTake(NameOf(key)) == true;

    private static Seen GoTo(BareScreens screens, string[] way)
    {
        screens.Host.Go(screens.Host.Home);
        if (screens.Sitting.Shop.OpenSession is { } open && way.FirstOrDefault() == "h")
        {
            screens.Sitting.Record(new Core.Ledger.SessionClosed(open.Name, null));
        }

        foreach (string key in way)
        {
            screens.Press(key);
            _ = screens.Drawn;
            screens.WaitForPages();
        }

        return Look(screens);
    }

    private static Seen Look(BareScreens screens)
    {
        JudgeSaid(screens);
        bool hasSaid = screens.Sitting.Said.Sentence.Length > 0;
        // what was said about the key is no doing of the key
        screens.Sitting.Say("");
        Picture drawn = screens.Drawn;
        string text = drawn.ToString();
        Judge(screens, drawn, text);
        IReadOnlyList<System.Collections.Immutable.ImmutableArray<KeyRow>> foot = ScreenFrame.Foot(
            screens.Current,
            screens.Width,
            screens.Height
        );
        string[] lines = text.Split('\n');
        string body = string.Join('\n', lines[..(screens.Height - foot.Count)]);
        ReadFoot(screens, foot, lines[(screens.Height - foot.Count)..screens.Height]);
        return new Seen(
            screens.Current.Name,
            body,
            ChosenRow(drawn),
            screens.Sitting.Shop.Ledger.Count,
            (screens.Host.Afterwards, screens.Host.ExitCode),
            hasSaid,
            [.. foot.SelectMany(line => line)]
        );
    }

    private static int ChosenRow(Picture drawn) =>
        Enumerable.Range(0, drawn.Height).FirstOrDefault(row => drawn.Width > 0 && drawn[0, row].Ink == Ink.Chosen, -1);

    private static void JudgeSaid(BareScreens screens)
    {
        string said = screens.Sitting.Said.Sentence;
        int lines = Picture.Wrap(said, screens.Width).Length;
        Assert.True(screens.Height < 20 || lines <= 3, $"cut: {said}");
    }

    private static void Judge(BareScreens screens, Picture drawn, string text)
    {
        string where = $"{screens.Current.Name} at {screens.Width}x{screens.Height}\n{text}";
        Assert.True(drawn.Overlaps.Count == 0, $"{string.Join(", ", drawn.Overlaps)}: {where}");
        Assert.True(
            drawn.LeftOut.Count == 0 || screens.Height < 20,
            $"left out: {string.Join(", ", drawn.LeftOut)}: {where}"
        );
        if (!Judged.Add(text))
        {
            return;
        }

        string[] cut = [.. WholeWords.CutIn(text)];
        Assert.True(cut.Length == 0, $"cut: {string.Join(", ", cut)}: {where}");
    }

    /// <summary>The foot off the screen: the keys that work, each whole, and nothing else.</summary>
    private static void ReadFoot(
        BareScreens screens,
        IReadOnlyList<System.Collections.Immutable.ImmutableArray<KeyRow>> foot,
        string[] lines
    )
    {
        string[] said = [.. foot.Select(line => string.Join("  ", line.Select(row => $"{row.Shown} {row.Words}")))];
        Assert.Equal(said, lines.Select(line => line.TrimEnd('\r')));
        if (screens.Height >= 20)
        {
            KeyRow[] work =
            [
                .. KeyTable
                    .Of(screens.Current.Name)
                    .Where(row => !row.OnlyInHelp && ScreenFrame.Works(screens.Current, row)),
            ];
            Assert.Equal(
                work.Select(row => row.Shown).Order(StringComparer.Ordinal),
                foot.SelectMany(line => line).Select(row => row.Shown).Order(StringComparer.Ordinal)
            );
        }
    }

    private static string Where(BareScreens screens, Seen start, string[] way) =>
        $"{start.Screen} ({string.Join(' ', way)}) at {screens.Width}x{screens.Height}";

    private sealed record Seen(
        ScreenName Screen,
        string Body,
        int ChosenRow,
        int Entries,
        (Afterwards, int) Left,
        bool HasSaid,
        IReadOnlyList<KeyRow> Foot
    );
}
