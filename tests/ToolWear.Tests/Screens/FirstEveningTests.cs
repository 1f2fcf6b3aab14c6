using System.Globalization;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>The first evening: an empty store.</summary>
[Collection(ScreenLibrary.Name)]
public sealed class FirstEveningTests
{
    [Fact]
    public void Twenty_five_tools_go_into_the_table_with_at_most_thirty_keys_each()
    {
        using TestSite site = new();
        using Evenings evening = new(site);
        Assert.Equal(ScreenName.FirstStart, evening.Host.Current.Name);
        evening.Press("t");
        string last = "";
        for (int i = 0; i < 25; i++)
        {
            int before = evening.Pressed;
            string series =
                i < 10 ? "R"
                : i < 20 ? "S"
                : "F";
            string[] row =
            [
                $"{series}{(i % 10) + 1}",
                i < 20 ? "dri" : "ful",
                i < 10 ? "H"
                : i < 20 ? "T"
                : "",
                i < 20 ? "ro" : "no",
                "4140",
                string.Create(CultureInfo.InvariantCulture, $"{(i < 20 ? 13.0 + (i * 0.05) : 1.5):0.00}"),
                i < 20 ? "12.5" : "1.8",
            ];
            // what repeats is carried down: only the first of a series types it all
            bool isFirst = series != last;
            last = series;
            for (int cell = 0; cell < row.Length; cell++)
            {
                if (isFirst || cell == 5)
                {
                    Clear(evening, isFirst && row[cell].Length == 0);
                    evening.Type(row[cell]);
                }

                evening.Press("Enter");
            }

            Assert.InRange(evening.Pressed - before, 1, 30);
        }

        Assert.Equal(25, evening.Sitting.Shop.Tools.Count);
        ToolInShop seventh = evening.Sitting.Shop.Tools.Values.Single(tool => tool.Mark.Text == "R7");
        Assert.Equal("H", seventh.Tool.Eye);
        Assert.Equal(Core.Tools.Place.Rough, seventh.Tool.Place);
        Assert.True(seventh.Tool.Start.IsUnknown);
        Assert.Equal("13.3 mm", Assert.IsType<Core.Ledger.ToolMeasured>(seventh.Events[0].What).Size.ToString());
        Assert.Equal("fuller", evening.Sitting.Shop.Tools.Values.Last().Tool.Form.Name);
    }

    [Fact]
    public void One_tool_is_added_question_by_question()
    {
        using TestSite site = new();
        using Evenings evening = new(site);
        evening.Press("a");
        evening.Type("H9");
        evening.Press("Enter", "Enter");
        evening.Type("H");
        evening.Press("Enter");
        evening.Type("fin");
        evening.Press("Enter", "Enter", "Enter", "Enter");
        evening.Type("17.6");
        evening.Press("Enter");
        evening.Type("18");
        evening.Press("Enter");
        Assert.Contains("must lie under", evening.Text, StringComparison.Ordinal);
        evening.Type("17.25");
        evening.Press("Enter");
        ToolInShop tool = Assert.Single(evening.Sitting.Shop.Tools.Values);
        Assert.Equal("17.6 mm", tool.Tool.GaugeMarks[0].Start.ToString());
        Assert.Equal(ScreenName.ToolRack, evening.Host.Current.Name);
    }

    [Fact]
    public void Import_says_what_is_wrong_and_takes_what_is_right()
    {
        using TestSite site = new();
        site.Write("bad/tools.csv", "tool,form\nR1,hammer\n");
        string good = site.Write("mine.csv", "tool,form,size_mm\nR1,drift,13.5\n");
        using Evenings evening = new(site);
        evening.Press("i");
        evening.Type(site.In("bad"));
        evening.Press("Enter");
        Assert.Contains("\"hammer\" is not known", evening.Text, StringComparison.Ordinal);
        evening.Press("Enter");
        Assert.Contains("nothing to import", evening.Sitting.Said.Sentence, StringComparison.Ordinal);
        evening.Press("Esc");
        evening.Type(good);
        evening.Press("Enter");
        // tried first: what would come in stands there, nothing is recorded yet
        Assert.Contains("1 row can come in", evening.Text, StringComparison.Ordinal);
        Assert.Empty(evening.Sitting.Shop.Tools);
        evening.Press("Enter");
        Assert.Single(evening.Sitting.Shop.Tools);
    }

    [Fact]
    public void A_later_table_comes_in_on_the_screens_and_corrects_only_where_it_is_told_to()
    {
        using TestSite site = new();
        site.Done("add-tool", "R1", "--form", "drift", "--gauge", "width,smaller,60,14,12.8,");
        string later = site.Write(
            "later.csv",
            "tool,form,steel,size_mm,weight\nR1,drift,4140,13.5,9\nR2,drift,mild,13.1,8\n"
        );
        using Evenings evening = new(site);
        Assert.Equal(ScreenName.ToolRack, evening.Host.Current.Name);
        evening.Press("i");
        evening.Type(later);
        evening.Press("Enter");
        Assert.Contains("a table of tools has no such column", evening.Text, StringComparison.Ordinal);
        evening.Press("x");
        Assert.Contains("R1 is in the shop already", evening.Text, StringComparison.Ordinal);
        evening.Press("u");
        Assert.Contains("2 rows can come in", evening.Text, StringComparison.Ordinal);
        Assert.Single(evening.Sitting.Shop.Tools);
        evening.Press("Enter");
        Assert.Equal(2, evening.Sitting.Shop.Tools.Count);
        Assert.Equal("4140", evening.Sitting.Shop.Tools.Values.First().Tool.Steel);
        Assert.Equal(ScreenName.ToolRack, evening.Host.Current.Name);
    }

    [Fact]
    public void A_folder_goes_into_an_empty_store_only()
    {
        using TestSite site = new();
        site.Done("add-tool", "R1", "--form", "drift");
        site.Write("set/tools.csv", "tool,form\nR2,drift\n");
        using Evenings evening = new(site);
        evening.Press("i");
        evening.Type(site.In("set"));
        evening.Press("Enter");
        Assert.Contains(
            "a folder goes into an empty store only",
            evening.Sitting.Said.Sentence,
            StringComparison.Ordinal
        );
        Assert.Equal(1, site.Run("import", site.In("set"), "--try").Exit);
    }

    [Fact]
    public void Without_a_terminal_the_verbs_are_named()
    {
        using TestSite site = new();
        Ran ran = site.Run();
        Assert.Equal(2, ran.Exit);
        Assert.Empty(ran.Output);
        Assert.Contains("measure TOOL GAUGE SIZE", ran.Error, StringComparison.Ordinal);
        Assert.Equal(2, site.Run("demo").Exit);
        Assert.Empty(Directory.GetFileSystemEntries(site.Folder));
    }

    private static void Clear(Evenings evening, bool isEmpty)
    {
        if (isEmpty)
        {
            evening.Press("Backspace");
        }
    }
}
