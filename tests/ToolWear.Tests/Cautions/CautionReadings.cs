using System.Collections.Immutable;
using System.Text.RegularExpressions;
using ToolWear.Keys;
using ToolWear.Screens;
using ToolWear.Tests.Commands;
using ToolWear.Tests.Screens;

namespace ToolWear.Tests.Cautions;

/// <summary>Every screen, sheet and text on which a caution could stand, and how each is come by.</summary>
public sealed partial class CautionReadings
{
    /// <summary>The screens of the demo in the order in which they are walked: what records comes last.</summary>
    private static readonly (string Place, string[] Keys)[] OfTheDemo =
    [
        ("tool rack", []),
        ("tool rack", ["e"]),
        ("wear card: chart", ["Down", "Enter"]),
        ("wear card: words", ["PageUp", "Down", "Enter", "w"]),
        ("scrapping, with what it could be made into", ["PageUp", "Down", "Enter", "x"]),
        ("tool page", ["d"]),
        ("forge list", ["f"]),
        ("forge list", ["f", "-"]),
        ("forge list: a supposed one beside it", ["f", "s", "Enter"]),
        ("orders", ["o"]),
        ("an order", ["o", "a"]),
        ("patterns", ["o", "p"]),
        ("a stage that slits or opens", ["o", "p", "Enter"]),
        ("another stage", ["o", "p", "Down", "Down", "Enter"]),
        ("a new pattern", ["o", "p", "n"]),
        ("costs", ["c"]),
        ("re-forge or scrap", ["c", .. Enumerable.Repeat("Down", 8), "r"]),
        ("eyes and handles", ["y"]),
        ("an eye or a handle", ["y", "a"]),
        ("an eye or a handle", ["y", "n"]),
        ("series of an eye", ["y", "p"]),
        ("a place of a series", ["y", "p", "Enter"]),
        ("stock rack", ["b"]),
        ("a bar", ["b", "a"]),
        ("trials", ["r"]),
        ("year", ["v"]),
        ("ledger", ["l"]),
        ("crossing out", ["l", "x"]),
        ("shop", ["s"]),
        ("shop: lubricant", ["s", "PageUp", "Down", "Down", "Down"]),
        ("shop: lubricant", ["s", "PageUp", "Down", "Down", "Down", "Enter"]),
        ("adding a tool", ["a"]),
        ("adding a tool", ["t"]),
        ("stock-take", ["k"]),
        ("at the hammer: choosing", ["h"]),
        ("hand-over", ["h", "o"]),
        ("caliper round", ["m"]),
        ("caliper round: what was found", ["m", "Enter", "Enter"]),
        ("caliper round: found cracked", ["m", "Enter", "Enter", "k", "3"]),
        ("caliper round: found stuck", ["m", "Down", "Enter", "t"]),
        ("caliper round: verdicts", ["m", "Enter", "Enter", "s", "Esc"]),
        ("what was done to a tool", ["Enter", "r"]),
        ("what was lost", ["v", "l"]),
        ("loans", ["n"]),
        ("lending", ["n", "a"]),
        ("a tool is back", ["n", "a", "H", "4", "Enter", "A", "Enter", "Enter", "Enter"]),
        ("at the hammer: tally", ["h", "Enter"]),
        ("closing", ["h", "s"]),
    ];

    private static readonly (string Place, string[] Keys)[] OfAnEmptyStore =
    [
        ("first start", []),
        ("import", ["i"]),
        ("adding a tool", ["t"]),
        ("adding a tool", ["a"]),
        ("shop", ["s"]),
    ];

    /// <summary>Sheets of the demo shop.</summary>
    private static readonly (string Place, string Line)[] Sheets =
    [
        ("rack", "rack --as html"),
        ("card", "card A2 --as html"),
        ("card", "card A2 --as svg"),
        ("forge list", "forge-list --as html"),
        ("hand-over", "hand-over --pattern hatchet --as html"),
    ];

    /// <summary>What commands say when they record.</summary>
    private static readonly (string Place, string Line)[] Recording =
    [
        ("add-tool", "add-tool D1 --form drift --place rough --eye H --gauge width,smaller,60,14,12.8,"),
        ("look-over", "look-over D1 sound"),
        ("look-over mushroomed", "look-over D1 mushroomed"),
        ("look-over soft", "look-over D1 soft"),
        ("measure", "measure D1 width 13.9"),
        ("rework", "rework D1 re-forged"),
        ("open-session", "open-session"),
        ("heats", "heats D1 2"),
        ("close-session", "close-session"),
        ("open-session --lubricant", "open-session --lubricant oil"),
        ("set lubricant", "set lubricant oil"),
        ("set blows", "set blows 8"),
        ("order", "order x --pattern p --heads 3 --due 2026-12-01"),
        ("scrap", "scrap D1 worn"),
    ];

    private readonly HashSet<ScreenName> screens = [];

    public CautionReadings()
    {
        using DemoFixture demo = new();
        using TestSite shop = ExampleShop.Make(demo);
        using TestSite empty = new();
        All =
        [
            .. Walk(shop, OfTheDemo),
            .. Walk(empty, OfAnEmptyStore),
            .. Sheets.Select(each => new CautionRead(
                PlaceKind.Sheet,
                each.Place,
                each.Line,
                Run(demo.Site, each.Line)
            )),
            .. Recorded(),
            .. Texts(),
        ];
    }

    /// <summary>Every place read.</summary>
    internal ImmutableArray<CautionRead> All { get; }

    /// <summary>The screens that were come by.</summary>
    internal IReadOnlyCollection<ScreenName> Screens => screens;

    private IEnumerable<CautionRead> Walk(TestSite site, (string Place, string[] Keys)[] ways)
    {
        using BareScreens bare = new(site);
        if (!bare.Sitting.Shop.Tools.IsEmpty)
        {
            bare.Wait();
        }

        foreach ((string place, string[] keys) in ways)
        {
            bare.Host.Go(bare.Host.Home);
            foreach (string key in keys)
            {
                bare.Press(key);
                _ = bare.Drawn;
                bare.WaitForPages();
            }

            if (bare.Current.Name == ScreenName.HandOver)
            {
                bare.Wait();
            }

            screens.Add(bare.Current.Name);
            yield return new(PlaceKind.Screen, place, string.Join(' ', keys), InOneLine(Pages(bare)));
            if (KeyTable.Of(bare.Current.Name).Any(row => row.Act == Act.Help))
            {
                bare.Press("F1");
                screens.Add(bare.Current.Name);
                yield return new(PlaceKind.Help, place, string.Join(' ', keys), InOneLine(Pages(bare)));
                bare.Press("Esc");
            }
        }
    }

    // what is longer than the window is read to its end
    private static string Pages(BareScreens screens)
    {
        string all = screens.Text;
        if (
            screens.Current.Name
            is not (ScreenName.Help or ScreenName.WearCard or ScreenName.HandOver or ScreenName.Year)
        )
        {
            return all;
        }

        for (string last = ""; last != screens.Text; )
        {
            last = screens.Text;
            screens.Press("PageDown");
            all += screens.Text;
        }

        return all;
    }

    // what every verb prints, for its example and for the shop, is kept and held against the program elsewhere
    private static IEnumerable<CautionRead> Texts()
    {
        string goldens = Path.Combine(HouseRules.House.Root, "tests", "ToolWear.Tests", "goldens");
        string[] verbs =
        [
            .. Directory
                .GetFiles(Path.Combine(goldens, "help"))
                .Select(file => Path.GetFileNameWithoutExtension(file)!)
                .OrderByDescending(verb => verb.Length),
        ];
        return from folder in (string[])["commands", "examples", Path.Combine("examples", "of-the-shop")]
            from file in Directory.GetFiles(Path.Combine(goldens, folder), "*.txt")
            let text = File.ReadAllText(file)
            // a sheet stands among the sheets
            where !text.Contains("<html", StringComparison.Ordinal)
            let name = Path.GetFileName(file)
            select new CautionRead(
                PlaceKind.Command,
                verbs.First(verb => name.StartsWith(verb, StringComparison.Ordinal)),
                name,
                InOneLine(text)
            );
    }

    private static IEnumerable<CautionRead> Recorded()
    {
        using TestSite site = new();
        foreach ((string place, string line) in Recording)
        {
            yield return new(PlaceKind.Command, place, line, Run(site, line));
        }
    }

    private static string Run(TestSite site, string line)
    {
        Ran ran = site.Run(ExampleShop.Split(line));
        string text =
            line.Contains("html", StringComparison.Ordinal) || line.Contains("svg", StringComparison.Ordinal)
                ? string.Join(' ', Markup.Read(ran.Output).DescendantNodes().OfType<System.Xml.Linq.XText>())
                : ran.Output;
        return InOneLine($"{text} {ran.Error}");
    }

    private static string InOneLine(string text) => Blanks().Replace(text, " ");

    [GeneratedRegex("\\s+")]
    private static partial Regex Blanks();
}

/// <summary>What sort of place was read.</summary>
internal enum PlaceKind
{
    /// <summary>A screen.</summary>
    Screen,

    /// <summary>The help of a screen.</summary>
    Help,

    /// <summary>A printed sheet.</summary>
    Sheet,

    /// <summary>What a command prints or says.</summary>
    Command,
}

/// <summary>A place read.</summary>
/// <param name="Kind">What sort.</param>
/// <param name="Place">Its name.</param>
/// <param name="How">Its keys, or its command line.</param>
/// <param name="Text">Its text in one line.</param>
internal sealed record CautionRead(PlaceKind Kind, string Place, string How, string Text);
