using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Screens.Drawing;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Heads by stage in the ledger, and what taking the last thing back comes to.</summary>
public sealed class TallyTests : IDisposable
{
    private readonly TestSite site = new();

    public TallyTests() => site.Demo();

    public void Dispose() => site.Dispose();

    [Fact]
    public void A_head_is_on_the_disk_at_the_key_press_and_there_again_after_a_crash()
    {
        using (BareScreens evening = new(site))
        {
            foreach (string key in (string[])["h", "Enter", "c", "c", "b"])
            {
                evening.Press(key);
                site.Clock.Advance(TimeSpan.FromSeconds(40));
            }

            HeadsDone last = Assert.IsType<HeadsDone>(evening.Sitting.Shop.Ledger[^1].What);
            Assert.Equal(("2026-11-12", "open", 1), (last.Session, last.Stage, last.Heads));
            // what a second program reads meanwhile is what is on the disk
            Assert.Contains("heads-done", File.ReadAllText(site.Store + ".journal"), StringComparison.Ordinal);
        }

        using BareScreens again = new(site);
        again.Press("h");
        Assert.Contains("b open 1  c cheeks 2", again.Text, StringComparison.Ordinal);
        again.Press("Backspace");
        Assert.Contains("b open 0  c cheeks 2", again.Text, StringComparison.Ordinal);
        again.Press("s");
        Assert.Matches("cheeks +2", again.Text);
    }

    [Fact]
    public void Closing_makes_the_counted_heads_what_the_smith_types_at_the_end()
    {
        using BareScreens evening = new(site);
        evening.Press("h", "Enter", "c", "c", "c", "e", "s");
        // slit 4, open empty, cheeks 1 in place of 3, finish stays at 1
        evening.Press("4", "Enter", "Enter", "1", "Enter", "Enter", "Enter", "Enter");
        // the open order is asked about, and left as it is
        evening.Press("n");
        Session closed = evening.Sitting.Shop.Sessions["2026-11-12"];
        Assert.False(closed.IsOpen);
        Assert.Equal(1, closed.Heads);
        Assert.Equal(
            "cheeks 1, finish 1, slit 4",
            string.Join(
                ", ",
                closed.HeadsByStage.Where(each => each.Value > 0).Select(each => $"{each.Key} {each.Value}")
            )
        );
        // all of it is one thing to take back: the session is open again, with the heads as they were tallied
        evening.Press("Backspace");
        Session open = evening.Sitting.Shop.Sessions["2026-11-12"];
        Assert.True(open.IsOpen);
        Assert.Equal(3, open.HeadsByStage["cheeks"]);
        Assert.False(open.HeadsByStage.ContainsKey("slit"));
    }

    [Fact]
    public void Heads_by_stage_stay_out_of_the_CSV_set_and_export_says_so()
    {
        using (BareScreens evening = new(site))
        {
            evening.Press("h", "Enter", "c", "s", "Enter", "Enter", "Enter", "Enter", "Enter", "Enter");
        }

        Ran export = site.Run("export", site.In("out"));
        Assert.Contains("heads by stage of one session have no column", export.Error, StringComparison.Ordinal);
        site.Done("import", site.In("out"), "--store", site.In("other.db"));
        Assert.Empty(site.Run("export", site.In("again"), "--store", site.In("other.db")).Error);
        foreach (string file in Directory.GetFiles(site.In("out")))
        {
            Assert.Equal(
                File.ReadAllBytes(file),
                File.ReadAllBytes(Path.Combine(site.In("again"), Path.GetFileName(file)))
            );
        }
    }

    [Fact]
    public void Taking_back_after_a_crossing_out_gives_the_entry_back_and_then_goes_on_with_the_one_before()
    {
        using BareScreens evening = new(site);
        evening.Press("h", "2", "Esc", "l");
        long heat = evening.Sitting.Shop.Ledger.Count;
        long crossed = heat - 20;
        evening.Press([.. Enumerable.Repeat("Down", 20)]);
        evening.Press("x", "Enter");
        Assert.True(evening.Sitting.Shop.CrossedOut.ContainsKey(crossed));
        evening.Press("Backspace");
        Assert.Equal(new EntryCountsAgain(crossed, "undone at once"), evening.Sitting.Shop.Ledger[^1].What);
        Assert.Empty(evening.Sitting.Shop.CrossedOut);
        Assert.Contains($"Undone: entry {crossed} crossed out", evening.Text, StringComparison.Ordinal);
        evening.Press("Backspace");
        Assert.Equal([heat], evening.Sitting.Shop.CrossedOut.Keys);
    }

    [Fact]
    public void In_the_ledger_a_crossed_out_entry_counts_again_by_the_same_key()
    {
        using BareScreens evening = new(site);
        evening.Press("l", "x", "Enter");
        long crossed = evening.Sitting.Shop.Ledger.Count - 1;
        evening.Press("Down", "x");
        Assert.Contains("It counts again, because:", evening.Text, StringComparison.Ordinal);
        evening.Press("Enter");
        Assert.Equal(
            (0, $"Entry {crossed} counts again."),
            (evening.Sitting.Shop.CrossedOut.Count, evening.Sitting.Said.Sentence)
        );
        // the verb knows it too: crossing a crossing out out
        evening.Press("Backspace");
        Assert.Single(evening.Sitting.Shop.CrossedOut);
    }

    [Fact]
    public void The_verb_crosses_a_crossing_out_out()
    {
        site.Done("cross-out", "1026", "slip");
        site.Done("cross-out", "1027", "it was right");
        Assert.Contains(
            "entry 1026 is not crossed out",
            site.Run("cross-out", "1027", "more").Error,
            StringComparison.Ordinal
        );
        using BareScreens evening = new(site);
        Assert.Empty(evening.Sitting.Shop.CrossedOut);
    }

    [Fact]
    public void Nine_tools_at_the_hammer_show_their_figures_and_their_facts_at_80x24()
    {
        using BareScreens evening = new(site);
        evening.Wait();
        evening.Press("h");
        evening.Press([.. Enumerable.Repeat("Down", 8)]);
        evening.Press("Space", "t", "Up", "t", "Down", "Down", "Down", "Space", "Enter");
        evening.Press("9", "9");
        string text = evening.Text;
        Assert.Equal(9, evening.Host.Board.Chosen.Length);
        Assert.All(
            evening.Host.Board.Chosen,
            tool => Assert.Contains(evening.Sitting.Shop.Tools[tool.Tool].Mark.Text, text, StringComparison.Ordinal)
        );
        // five rows of blocks for each of the nine, and how many more beside eight: one has no forecast left to give
        Assert.True(text.Count(each => each == '█') > 9 * 5 * 4, text);
        Assert.True(text.Split("more").Length + text.Split("enough for").Length >= 10, text);
        Assert.Contains("Space: a heat to", text, StringComparison.Ordinal);
        Picture drawn = evening.Drawn;
        Assert.Empty(drawn.Overlaps);
        Assert.Empty(drawn.LeftOut);
    }
}
