using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Doors;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens;
using ToolWear.Tests.Screens;

namespace ToolWear.Tests.Commands;

/// <summary>Texts that a terminal, a page or a spreadsheet would obey: they show harmlessly everywhere and come back unchanged.</summary>
[Collection(Screens.ScreenLibrary.Name)]
public sealed class HarmfulTextTests(HarmfulTextTests.FilledShop filled) : IClassFixture<HarmfulTextTests.FilledShop>
{
    // clears the screen, sets the window's title, rings, turns the direction round, hides; and what CSV and XML would trip over
    private const string Note =
        "\u001B[2J\u001B[H\u001B]0;owned\a\u009B31m\r\n\v\b\u007F\u202Edirection\u200B\uFEFF\u2028,\"=1+1\"<script>]]>&";

    private static readonly string[] Marks = ["<script>alert(1)</script>", "]]>", "=1+1", "&amp;\"'"];

    [Fact]
    public void No_output_of_any_verb_holds_anything_a_terminal_obeys()
    {
        TestSite site = filled.Site;
        string[][] commands =
        [
            .. ((string[])["text", "csv", "json"]).SelectMany(format =>
                (string[][])
                    [
                        ["rack", "--as", format],
                        ["card", Marks[0], "--as", format],
                    ]
            ),
            ["card", Marks[2]],
            ["forecast", "--as", "csv"],
            ["forge-list"],
            ["check"],
        ];
        foreach (string[] command in commands)
        {
            string output = site.Done(command);
            MustBeHarmless(output);
            if (command[^1] == "json")
            {
                JsonDocument.Parse(output).Dispose();
                Assert.DoesNotContain("<script>", output, StringComparison.Ordinal);
            }
        }

        Assert.Contains("found sound: \uFFFD[2J\uFFFD[H", site.Done("card", Marks[0]), StringComparison.Ordinal);
        // what is refused is repeated, harmlessly too
        MustBeHarmless(site.Refused(1, "card", "R\u00A09"));
        MustBeHarmless(site.Refused(2, "card", "\u001B[2J"));
        MustBeHarmless(site.Refused(2, "\u001B[2J"));
        MustBeHarmless(site.Refused(2, "rack", "--as", "\u001B[2J"));
        MustBeHarmless(site.Refused(1, "import", site.In("\u001B[2J")));
    }

    [Fact]
    public void A_note_comes_back_from_export_unchanged_and_export_of_it_gives_the_same_bytes()
    {
        TestSite site = filled.Site;
        site.Done("export", site.In("out"));
        string findings = File.ReadAllText(site.In("out/findings.csv"));
        Assert.Contains(
            "\"" + Note.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"",
            findings,
            StringComparison.Ordinal
        );
        string other = site.In("other.db");
        site.Done("import", site.In("out"), "--store", other);
        site.Done("export", site.In("again"), "--store", other);
        foreach (string file in Directory.GetFiles(site.In("out")))
        {
            Assert.Equal(
                File.ReadAllBytes(file),
                File.ReadAllBytes(Path.Combine(site.In("again"), Path.GetFileName(file)))
            );
        }
    }

    [Fact]
    public void No_screen_shows_anything_a_terminal_obeys()
    {
        TestSite site = filled.Site;
        using Evenings evening = new(site, width: 120, height: 40);
        evening.WaitForForecasts();
        evening.Host.ToolInHand = evening.Sitting.Shop.Tools.Values.First().Id;
        foreach (ScreenName name in Enum.GetValues<ScreenName>())
        {
            if (name == ScreenName.Closing)
            {
                evening.Host.Go(ScreenName.Hammer);
                evening.Press("s");
            }
            else
            {
                evening.Host.Go(name);
            }

            Assert.Equal(name, evening.Host.Current.Name);
            MustBeHarmless(evening.Text);
            if (name == ScreenName.LedgerPages)
            {
                Assert.Contains("\uFFFD[2J", evening.Text, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void A_drawing_takes_no_text_for_its_own_markup()
    {
        Length mm = Length.FromMm(20m);
        Assert.True(Section.TryMake(SectionKind.Round, mm, mm, Length.Zero, out Section? round, out _));
        foreach (string title in (string[])[.. Marks, Note])
        {
            string svg = OutlineSvg.Of([(round, 0)], title);
            XElement drawing = XDocument.Parse(svg).Root!;
            Assert.Equal(["title", "path"], drawing.Elements().Select(each => each.Name.LocalName));
            Assert.Equal(
                HarmlessWriter.Of(title).ReplaceLineEndings("\n"),
                drawing.Elements().First().Value.ReplaceLineEndings("\n")
            );
            MustBeHarmless(svg);
            Assert.DoesNotContain("<script", svg, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("]]>", svg, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("R\u0301", "R\u0301")]
    [InlineData("Å1", "A\u030A1")]
    public void A_mark_typed_in_another_normal_form_is_the_same_mark_and_taken(string mark, string again)
    {
        using TestSite site = new();
        site.Done("add-tool", mark, "--form", "punch");
        Assert.Contains("is taken", site.Refused(1, "add-tool", again, "--form", "punch"), StringComparison.Ordinal);
    }

    [Fact]
    public void Marks_that_differ_only_in_capital_letters_are_two_tools_and_warned_of()
    {
        using TestSite site = new();
        site.Done("add-tool", "ÄR3", "--form", "punch");
        Ran added = site.Run("add-tool", "är3", "--form", "punch");
        Assert.Equal(0, added.Exit);
        Assert.Contains("är3 and ÄR3 differ only in capital letters", added.Error, StringComparison.Ordinal);
        site.Done("add-tool", "H1", "--form", "punch");
        Ran marked = site.Run("re-mark", "H1", "Är3");
        Assert.Contains("Är3 and ÄR3 differ only", marked.Error, StringComparison.Ordinal);
        site.Done("export", site.In("out"));
        Ran imported = site.Run("import", site.In("out"), "--store", site.In("other.db"));
        Assert.Equal(0, imported.Exit);
        Assert.Equal(
            3,
            imported.Error.Split('\n').Count(line => line.Contains("differ only", StringComparison.Ordinal))
        );
        Assert.DoesNotContain("differ", site.Run("add-tool", "H2", "--form", "punch").Error, StringComparison.Ordinal);
    }

    private static void Fill(TestSite site)
    {
        foreach (string mark in Marks)
        {
            string[] gauge = ["--gauge", "width,smaller,60,14.0,12.8,"];
            site.Done(["add-tool", mark, "--form", "drift", "--eye", mark, "--steel", mark, "--note", Note, .. gauge]);
        }

        string tool = Marks[0];
        site.Done("open-session", "--hand", "=HYPERLINK()", "--note", Note);
        site.Done("heats", tool, "3");
        site.Done("close-session");
        site.Done("measure", tool, "width", "13.9", "--by", "@SUM(A1)", "--note", Note);
        site.Done("rework", tool, "dressed", "--note", Note);
        site.Done("look-over", tool, "sound", "--note", Note);
        site.Done("set-aside", Marks[1], Note);
        site.Done("scrap", Marks[2], "worn", "--note", Note);
        site.Done("open-session", "--note", Note);
        site.Done("heats", tool, "1");
        site.Done("cross-out", site.Done("look-over", tool, "sound").Split(' ', '\n')[1], Note);
    }

    private static void MustBeHarmless(string text)
    {
        Assert.NotEqual("", text);
        Assert.DoesNotContain(
            text.Replace("\r\n", "\n", StringComparison.Ordinal).EnumerateRunes(),
            rune =>
                rune.Value is not '\n'
                && Rune.GetUnicodeCategory(rune)
                    is System.Globalization.UnicodeCategory.Control
                        or System.Globalization.UnicodeCategory.Format
                        or System.Globalization.UnicodeCategory.LineSeparator
                        or System.Globalization.UnicodeCategory.ParagraphSeparator
        );
    }

    /// <summary>A shop whose every text is harmful, filled once and only read.</summary>
    public sealed class FilledShop : IDisposable
    {
        public FilledShop() => Fill(Site);

        internal TestSite Site { get; } = new();

        public void Dispose() => Site.Dispose();
    }
}
