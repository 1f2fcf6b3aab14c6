using System.Globalization;
using System.Text;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using ToolWear.Screens.Drawing;
using ToolWear.Testing.Goldens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>The page that brings a table in: what mends a fault stands there whole, however wide the window.</summary>
public sealed class ImportScreenTests
{
    private const string Mine =
        "Mark;Form;Eye;Place;Steel;Size;Scrap;weight;hand\r\n"
        + "R1;drift;H;rough;4140;13,6;12,8;2;left\r\n"
        + "R2;;;;;13,1;12,8;3;\r\n";

    private const string Wide =
        "tool,form,eye,place,section,steel,peg,size,scrap,made,heats,heats_before_how,guess_heats,on,note\n"
        + "R8,drift,H,second,oval,H13,A3,16.25,15.2,17,120,counted,300,2026-10-31,corner chipped\n"
        + "R9,slitter,,,,,,2.5,2,,,,,,\n";

    private static readonly string Faulty = "tool,form,size\n" + Each("drift,wide");

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void A_table_is_mended_by_keys_and_comes_in(int width, int height)
    {
        using TestSite site = new();
        using BareScreens screens = new(site, width, height);
        StringBuilder record = new();
        void Step(string caption, params string[] keys)
        {
            screens.Press(keys);
            screens.Wait();
            Picture drawn = screens.Drawn;
            Assert.Empty(drawn.Overlaps);
            Assert.Empty(drawn.LeftOut);
            record.Append($"== {caption}\n== keys: {string.Join(' ', keys)}\n{drawn}\n");
        }

        Try(screens, site.Write("faults.csv", Faulty));
        Step("more faults than twenty");
        Step("the last of them", [.. Enumerable.Repeat("PageDown", 4)]);
        Step("nothing comes in", "Enter");
        Try(screens, site.Write("mine.csv", Mine));
        Step("unknown columns and blank cells");
        Step("unknown columns are left out", "x");
        Step("unknown columns are kept", "n");
        Step("which columns are carried down?", "d");
        Step("they are carried down", "Enter");
        Assert.Empty(screens.Sitting.Shop.Tools);
        screens.Press("Enter");
        Tool second = screens.Sitting.Shop.Tools.Values.Last().Tool;
        Assert.Equal(("R2", "4140", "weight: 3"), (second.Mark.Text, second.Steel, second.Note));
        Try(screens, site.In("mine.csv"));
        Step("the marks are there already", "n", "d", "Enter");
        Step("it may correct them, and there is nothing to correct", "u", "Enter");
        Try(screens, site.Write("sizes.csv", "tool,size\nR1,13.4\nR2,13\n"));
        Step("sizes, and no day");
        Step("of which day are they?", "o");
        Step("that is no day", "x", "Enter");
        Step("the day before", ["Backspace", .. "11.11.".Select(each => $"{each}"), "Enter"]);
        screens.Press("Enter");
        Assert.Equal("2026-11-11", $"{((ToolMeasured)screens.Sitting.Shop.Ledger[^1].What).On:yyyy-MM-dd}");
        Try(screens, site.Write("wide.csv", Wide));
        Step("a wide table");
        Golden.Same($"screens/import.{width}x{height}.txt", record.ToString());
    }

    [Fact]
    public void A_folder_tells_its_first_faults_and_how_many_more()
    {
        using TestSite site = new();
        site.Write("set/tools.csv", "tool,form\n" + Each("hammer"));
        using BareScreens screens = new(site, 120, 40);
        Try(screens, site.In("set"));
        Assert.DoesNotContain("  and 10 more", screens.Text, StringComparison.Ordinal);
        screens.Press("PageDown", "PageDown");
        Assert.Contains("  and 10 more", screens.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("carry down", screens.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("'{0}'")]
    [InlineData("\"{0}\" ")]
    [InlineData("file://{0}")]
    [InlineData("{0}")]
    public void A_path_is_taken_as_a_terminal_pastes_it(string pasted)
    {
        using TestSite site = new();
        string file = site.Write("my tools.csv", "tool,form,size\nR1,drift,13.4\n");
        using BareScreens screens = new(site);
        Try(screens, string.Format(CultureInfo.InvariantCulture, pasted, file));
        Assert.Contains("1 row can come in", screens.Text, StringComparison.Ordinal);
        Try(screens, file.Replace(" ", "\\ ", StringComparison.Ordinal));
        Assert.Contains("1 row can come in", screens.Text, StringComparison.Ordinal);
    }

    private static string Each(string cells) => string.Concat(Enumerable.Range(1, 30).Select(i => $"R{i},{cells}\n"));

    private static void Try(BareScreens screens, string path)
    {
        screens.Host.Go(screens.Host.Home);
        screens.Press("i");
        screens.Type(path);
        screens.Press("Enter");
    }
}
