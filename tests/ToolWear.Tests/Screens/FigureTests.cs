using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using ToolWear.Tests.Commands;
using ToolWear.Tests.HouseRules;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Every figure that a screen shows is given by a command too: the list of which, and each held against it.</summary>
public sealed partial class FigureTests(DemoFixture demo)
{
    // a text of so many columns leaves none out
    private const int Wide = 400;

    // what is only typed or chosen there, or explains keys, and shows no figure of the shop
    private static readonly string[] WithoutFigures = ["FirstStartText", "GuidedText", "HelpText", "ToolTableText"];

    /// <summary>For each text class of the screens how its picture is come by from the rack, and the commands that give its figures.</summary>
    private static readonly (string Text, string[] Keys, string[] Commands)[] Figures =
    [
        ("ToolRackText", [], ["rack", "rack --as csv"]),
        ("ChoosingText", ["h"], ["rack --as csv", "hand-over"]),
        (
            "HammerText",
            ["h", "Enter"],
            ["hand-over --as csv", "card H6 --as json", "card FU1 --as json", "card SF1 --as json"]
        ),
        ("ClosingText", ["h", "Enter", "3", "b", "s"], ["hand-over", "ledger"]),
        ("CaliperRoundText", ["m"], ["to-measure", "rack --as csv"]),
        ("WearCardText", ["Enter", "w"], ["card AP1"]),
        ("WearCardText", [.. Enumerable.Repeat("Down", 6), "Enter"], ["card H5", "card H5 --as svg", "rack"]),
        ("ForgeListText", ["f"], ["forge-list", "forge-list --as csv"]),
        ("BothText", ["f", "s", "0", ".", "9", "9", "Enter"], ["forge-list --if-sure 0.99", "forge-list"]),
        ("OrdersText", ["o"], ["order", "plan"]),
        ("CostsText", ["c"], ["costs"]),
        ("EyesText", ["y"], ["eyes"]),
        ("SeriesPagesText", ["y", "p"], ["series A"]),
        ("StockRackText", ["b"], ["bars", "bars '4140 32'"]),
        ("TrialPagesText", ["r"], ["trials"]),
        ("YearText", ["v"], ["year"]),
        ("LoansText", ["n"], ["loans"]),
        ("PatternsText", ["o", "p"], ["patterns"]),
        ("HandOverText", ["h", "o"], ["hand-over", "hand-over --as csv"]),
        ("StockTakeText", ["k"], ["stock-take"]),
        ("LedgerPagesText", ["l"], ["ledger"]),
        ("ShopPageText", ["s"], ["settings all", "year"]),
    ];

    public static TheoryData<int> All => [.. Enumerable.Range(0, Figures.Length)];

    [Fact]
    public void Every_text_of_a_screen_is_in_the_list()
    {
        string[] texts =
        [
            .. House
                .Program.GetTypes()
                .Where(type => type.Namespace?.StartsWith("ToolWear.Screens.", StringComparison.Ordinal) == true)
                .Where(type =>
                    type.Name.EndsWith("Text", StringComparison.Ordinal) && type is { IsAbstract: true, IsSealed: true }
                )
                .Where(type =>
                    type.GetMethods(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
                        .Any(method => method.Name.StartsWith("Draw", StringComparison.Ordinal))
                )
                .Select(type => type.Name),
        ];
        Assert.True(texts.Length > 15, $"only {texts.Length} texts");
        Assert.Empty(texts.Except(WithoutFigures).Except(Figures.Select(each => each.Text)));
        Assert.Empty(Figures.Select(each => each.Text).Concat(WithoutFigures).Except(texts));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_figure_of_a_screen_is_given_by_a_command(int which)
    {
        (string text, string[] keys, string[] commands) = Figures[which];
        using TestSite site = ExampleShop.Make(demo);
        string picture = Shown(site, keys);
        HashSet<string> given =
        [
            .. commands.SelectMany(line => Numbers(site.Run(Wide, ExampleShop.Split(line)).Output)).SelectMany(Rounded),
        ];
        string[] shown = [.. Numbers(Figured(picture)).Distinct()];
        string[] missing = [.. shown.Where(number => !given.Contains(number))];
        Assert.True(
            missing.Length == 0,
            $"{text}: {string.Join(" ", missing)} of {shown.Length} figures is given by none of {string.Join(", ", commands)}\n{picture}"
        );
    }

    private static string Shown(TestSite site, string[] keys)
    {
        using BareScreens screens = new(site, 120, 40);
        screens.Wait();
        foreach (string key in keys)
        {
            screens.Press(key);
            screens.Wait();
        }

        return screens.Text;
    }

    /// <summary>What shows figures: no heading, no foot, no axis of a chart, no number of a row or key.</summary>
    private static string Figured(string picture)
    {
        string[] lines = picture.TrimEnd('\n').Split('\n');
        int foot = Array.FindLastIndex(lines, line => line.Trim().Length == 0);
        return string.Join(
            '\n',
            lines[1..(foot < 1 ? ^1 : foot)]
                .Where(line => !Axis().IsMatch(line))
                .Select(line => NoFigure().Replace(line, ""))
        );
    }

    /// <summary>A number of a command, whole and as people round it: files hold more decimals than a screen has room for.</summary>
    private static IEnumerable<string> Rounded(string number)
    {
        double value = double.Parse("0" + number, CultureInfo.InvariantCulture);
        string[] ways =
        [
            number,
            .. new[] { "F0", "F1", "F2", "F3" }.Select(way => value.ToString(way, CultureInfo.InvariantCulture)),
            (value * 100).ToString("0.#", CultureInfo.InvariantCulture),
        ];
        return ways.Select(way => way.TrimStart('0'));
    }

    private static IEnumerable<string> Numbers(string text) =>
        Number().Matches(text).Select(match => match.Value.TrimStart('0'));

    [GeneratedRegex("(?<![0-9.A-Za-z])[0-9]+(\\.[0-9]+)?")]
    private static partial Regex Number();

    [GeneratedRegex("[│└┤]|heats$")]
    private static partial Regex Axis();

    // headings, the numbers that are keys or say how many of what stands there, and paragraphs of a law
    [GeneratedRegex(
        "(?<![0-9])9 in 10(?![0-9])|\\[[0-9]\\]|^[0-9] |\\([0-9]+ of [0-9]+\\)|[0-9]+ chosen|29 CFR|1926\\.301|1910\\.242"
    )]
    private static partial Regex NoFigure();
}
