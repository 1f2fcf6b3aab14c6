using System.Text;
using ToolWear.Core.Ledger;
using ToolWear.Doors;
using ToolWear.Keys;
using ToolWear.Testing.Goldens;
using ToolWear.Testing.LargeShops;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Every page where there is nothing yet, and where there is far too much: 200 tools, names of 40 characters,
/// long notes. The usual state of each page is the demo's, in the goldens of the evening and the rest.</summary>
public sealed class PageGoldenTests
{
    private const int Tools = 200;
    private const int Entries = 800;

    private static readonly (string Caption, string[] Keys)[] OfAnEmptyStore =
    [
        ("the first start", []),
        ("the table of the tools one has", ["t"]),
        ("one tool, question by question", ["a"]),
        ("a folder to import is asked", ["i"]),
        ("the shop's settings", ["s"]),
        ("eyes and handles", ["y"]),
        ("a new eye", ["y", "a"]),
        ("a new handle", ["y", "n"]),
        ("the stock rack", ["b"]),
        ("a new bar", ["b", "a"]),
        ("help", ["?"]),
    ];

    /// <summary>Every page, from the rack; what records comes last.</summary>
    private static readonly (string Caption, string[] Keys)[] EveryPage =
    [
        ("the rack", []),
        ("the rack, a file is named", ["e"]),
        ("a card", ["Enter"]),
        ("a card in words", ["Enter", "w"]),
        ("scrapping it", ["Enter", "x"]),
        ("the forge list", ["f"]),
        ("the forge list's last rows", ["f", "PageDown", "PageDown", "PageDown", "PageDown", "PageDown", "PageDown"]),
        ("the orders", ["o"]),
        ("an order", ["o", "a"]),
        ("the patterns", ["o", "p"]),
        ("a pattern", ["o", "p", "n"]),
        ("the costs", ["c"]),
        ("eyes and handles", ["y"]),
        ("the series of an eye", ["y", "p"]),
        ("the stock rack", ["b"]),
        ("the trials", ["r"]),
        ("the year", ["v"]),
        ("the ledger", ["l"]),
        ("finding in the ledger", ["l", "/", "l", "o", "n", "g", "Enter"]),
        ("crossing out", ["l", "x"]),
        ("the shop", ["s"]),
        ("one tool more", ["a"]),
        ("the table", ["t"]),
        ("the loans", ["n"]),
        ("a tool is lent", ["n", "a"]),
        ("the stock-take", ["k"]),
        ("to measure", ["m"]),
        ("what was found?", ["m", "Enter", "Enter"]),
        ("a crack, and where?", ["m", "Enter", "Enter", "k"]),
        ("a finding, and the verdicts", ["m", "Enter", "Enter", "k", "1", "Esc"]),
        ("what was done to a tool", ["Enter", "r"]),
        ("what was lost", ["v", "l"]),
    ];

    private static readonly (string Caption, string[] Keys)[] FirstHeats =
    [
        ("choosing tools", ["h"]),
        ("a pattern is asked for, and there is none", ["h", "p"]),
        ("hand over", ["h", "o"]),
        ("one is chosen", ["h", "Space"]),
        ("at the hammer", ["h", "Space", "Enter"]),
        ("three heats", ["h", "1", "1", "1"]),
        ("closed", ["h", "s", "Enter"]),
        ("to measure, after it", ["m"]),
        ("a size", ["m", "1", "3", ".", "8", "Enter"]),
    ];

    private static readonly (string Caption, string[] Keys)[] CrowdedHeats =
    [
        ("choosing tools", ["h"]),
        ("another pattern", ["h", "p"]),
        ("hand over", ["h", "p", "o"]),
        ("at the hammer", ["h", "p", "Enter"]),
        ("a heat, and a head", ["h", "1", "a"]),
        ("closing", ["h", "s"]),
        ("the orders are asked about", ["h", "s", "Enter", "Enter", "Enter", "Enter", "1", "Enter"]),
        ("closed", ["h", "s", "Enter", "Enter", "Enter", "Enter", "1", "Enter", "n"]),
    ];

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Pages_of_an_empty_shop(int width, int height)
    {
        StringBuilder record = new();
        using TestSite site = new();
        using (BareScreens empty = new(site, width, height))
        {
            Walk(empty, OfAnEmptyStore, record);
        }

        site.Done("add-tool", "R1", "--form", "drift", "--gauge", "width,smaller,60,14,12.8,");
        using BareScreens one = new(site, width, height);
        Walk(one, [.. EveryPage, .. FirstHeats], record);
        Golden.Same($"screens/empty.{width}x{height}.txt", record.ToString());
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Pages_of_a_crowded_shop(int width, int height)
    {
        using TestSite site = new();
        Make(site);
        StringBuilder record = new();
        using BareScreens crowded = new(site, width, height);
        Walk(crowded, [.. EveryPage, .. CrowdedHeats], record);
        Golden.Same($"screens/crowded.{width}x{height}.txt", record.ToString());
    }

    private static void Make(TestSite site)
    {
        Site world = new(
            TextWriter.Null,
            TextWriter.Null,
            site.Clock,
            new Storage.Disks.RealDisk(),
            () => new string('0', 32),
            site.Store,
            site.Folder
        );
        using Bench bench = Bench.ToWrite(world, site.Store);
        DateOnly today = DateOnly.FromDateTime(site.Clock.GetUtcNow().Date);
        // an evening and its morning after are two days: what follows on one day is recorded together
        List<LedgerEntry> together = [];
        DateOnly last = today;
        void Record()
        {
            Assert.True(together.Count == 0 || bench.RecordAll([.. together], last).Refusal is null);
            together.Clear();
        }

        foreach ((DateOnly day, LedgerEntry entry) in CrowdedShop.Ledger(Tools, Entries, seed: 1, today, areLong: true))
        {
            if (day != last)
            {
                Record();
            }

            last = day;
            together.Add(entry);
        }

        Record();
    }

    private static void Walk(BareScreens screens, (string Caption, string[] Keys)[] ways, StringBuilder record)
    {
        foreach ((string caption, string[] keys) in ways)
        {
            screens.Host.Go(screens.Host.Home);
            WaitFor(screens);
            foreach (string key in keys)
            {
                screens.Press(key);
                WaitFor(screens);
            }

            string text = screens.Text;
            string lines = string.Concat(text.Split('\n').Take(screens.Height).Select(line => line.TrimEnd() + "\n"));
            record.Append($"== {caption}\n== keys: {(keys.Length == 0 ? "none" : string.Join(' ', keys))}\n{lines}\n");
            Assert.Empty(screens.Drawn.Overlaps);
            Assert.Empty(screens.Drawn.LeftOut);
        }
    }

    private static void WaitFor(BareScreens screens)
    {
        _ = screens.Drawn;
        // at the hammer nothing is worked out, so that no key waits
        if (screens.Current.Name is not (ScreenName.Hammer or ScreenName.Closing))
        {
            screens.Wait();
        }
    }
}
