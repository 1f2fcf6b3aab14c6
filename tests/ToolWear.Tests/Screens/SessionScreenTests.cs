using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>A session on the screens: late ones, those that go on after a restart, and what closing asks.</summary>
public sealed class SessionScreenTests : IDisposable
{
    private readonly TestSite site = new();

    public SessionScreenTests() => site.Demo();

    [Fact]
    public void A_forgotten_session_gets_its_day_lubricant_cooling_blows_and_hand()
    {
        using BareScreens screens = new(site);
        screens.Wait();
        screens.Press("h", "e");
        DateOnly day = screens.Sitting.Today.AddDays(-1);
        foreach (string answer in (string[])[$"{day:yyyy-MM-dd}", "graphite", "dip", "4", "Ada", ""])
        {
            screens.Type(answer);
            screens.Press("Enter");
        }

        Assert.Contains($"{day:yyyy-MM-dd}", screens.Current.Heading, StringComparison.Ordinal);
        screens.Press("1");
        Session open = screens.Sitting.Shop.OpenSession!;
        Assert.Equal((day, "Ada"), (open.On, open.Opened.Hand));
        Assert.Equal(new Care("graphite", Cooling.DipWhenBlack, 4), open.Opened.Care);
        // it is the session's day that its heats are of
        Assert.IsType<HeatsWorked>(screens.Sitting.Shop.Ledger[^1].What);
        screens.Press("t");
        Assert.DoesNotContain("e day, lubricant", screens.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_tools_chosen_for_a_session_keep_their_keys_after_a_restart()
    {
        Board before;
        using (BareScreens screens = new(site))
        {
            screens.Wait();
            // one left out, one put in, and two that work together; only the last of them is tallied
            screens.Press("h", "Space", "Down", "Down", "Down", "Down", "Down", "Down", "Down", "Space");
            screens.Press("Up", "t", "Enter");
            before = screens.Host.Board;
            screens.Press($"{before.Chosen.Length}");
        }

        using BareScreens after = new(site);
        after.Wait();
        after.Press("h");
        Assert.Equal(ScreenName.Hammer, after.Current.Name);
        Assert.Equal(before.Chosen, after.Host.Board.Chosen);
        Assert.Equal(before.Together, after.Host.Board.Together);
    }

    [Fact]
    public void Closing_asks_where_the_tally_falls_short_and_fills_it_in()
    {
        using BareScreens screens = new(site);
        screens.Wait();
        screens.Press("h", "Enter");
        int row = Stage(screens, out PatternStage stage, out BoardTool tool);
        for (int i = 0; i < 6; i++)
        {
            screens.Press($"{(char)('a' + row)}");
        }

        screens.Press($"{screens.Host.Board.Chosen.IndexOf(tool) + 1}", "s");
        string session = screens.Sitting.Shop.OpenSession!.Name;
        Through(screens);
        Assert.Contains($"{stage.Name}: 6 heads and 1 heat tallied", screens.Text, StringComparison.Ordinal);
        screens.Press("Enter");
        Through(screens);
        Assert.False(screens.Sitting.Shop.Sessions[session].IsOpen);
        double says = 6 * stage.HeatsAHead!.Value;
        Assert.Equal(says, Board.Tallied(screens.Sitting.Shop, session, tool).Count, 0.5);
        Assert.Contains(
            screens.Sitting.Shop.Tools[tool.Tool].Events,
            each => each.What is HeatsWorked { How: HeatsHow.Estimated } heats && heats.Session == session
        );
    }

    [Fact]
    public void A_stage_with_heads_and_no_tool_is_named_and_n_leaves_the_tally_as_it_is()
    {
        using BareScreens screens = new(site);
        screens.Wait();
        screens.Press("h", "Enter");
        int row = Stage(screens, out PatternStage stage, out BoardTool tool);
        screens.Host.Board = screens.Host.Board.Without(each => each == tool.Tool);
        screens.Press($"{(char)('a' + row)}", "s");
        string session = screens.Sitting.Shop.OpenSession!.Name;
        Through(screens);
        Assert.Contains(
            $"{stage.Name}: 1 head, and no tool for it was chosen.",
            screens.Text,
            StringComparison.Ordinal
        );
        Assert.True(screens.Sitting.Shop.Sessions[session].IsOpen);
        screens.Press("n");
        Through(screens);
        Assert.False(screens.Sitting.Shop.Sessions[session].IsOpen);
        Assert.Equal(Heats.None, Board.Tallied(screens.Sitting.Shop, session, tool));
    }

    [Fact]
    public void The_verb_names_the_stages_that_fall_short()
    {
        site.Done("open-session", "--pattern", "hatchet");
        site.Done("heats", "H5", "1");
        Ran ran = site.Run("close-session", "--heads", "6");
        Assert.Equal(0, ran.Exit);
        Assert.Contains("6 heads and 1 heat tallied; the pattern says about", ran.Error, StringComparison.Ordinal);
    }

    public void Dispose() => site.Dispose();

    // a stage with heats a head and one tool that stands at the hammer for it
    private static int Stage(BareScreens screens, out PatternStage stage, out BoardTool tool)
    {
        Shop shop = screens.Sitting.Shop;
        Board board = screens.Host.Board;
        System.Collections.Immutable.ImmutableArray<PatternStage> stages = LastTime.Stages(shop, board.Pattern);
        for (int i = 0; i < stages.Length; i++)
        {
            PatternStage at = stages[i];
            BoardTool[] fitting =
            [
                .. board.Chosen.Where(each =>
                    LastTime.Fits(at, shop.Tools[each.Tool].Tool)
                    && each.Work == (at.Work ?? shop.Tools[each.Tool].Tool.MainWork)
                ),
            ];
            if (at.HeatsAHead >= 1 && fitting.Length == 1)
            {
                (stage, tool) = (at, fitting[0]);
                return i;
            }
        }

        throw new InvalidOperationException("no such stage");
    }

    // Enter through the stages up to the next question or the end
    private static void Through(BareScreens screens)
    {
        for (int i = 0; i < 12 && screens.Current.Name == ScreenName.Closing && screens.Current.Line is not null; i++)
        {
            screens.Press("Enter");
        }

        if (screens.Text.Contains("Count them off the orders?", StringComparison.Ordinal))
        {
            screens.Press("n");
        }
    }
}
