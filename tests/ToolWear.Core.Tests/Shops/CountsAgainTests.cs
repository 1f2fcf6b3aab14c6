using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using Xunit;
using static ToolWear.Core.Tests.Shops.Story;

namespace ToolWear.Core.Tests.Shops;

public sealed class CountsAgainTests
{
    private readonly Story story = new();

    [Fact]
    public void An_entry_counts_again_in_its_own_place_as_if_it_had_never_been_crossed_out()
    {
        story.Add("R1");
        story.Open("s1");
        long first = story.Enter(Worked("s1", "R1", 3));
        long second = story.Enter(Worked("s1", "R1", 1));
        story.CrossOut(first);
        Assert.Equal([second], story.History("R1"));
        story.CountAgain(first);
        Assert.Equal([first, second], story.History("R1"));
        Assert.Empty(story.Shop.CrossedOut);
    }

    [Fact]
    public void A_later_setting_keeps_its_say()
    {
        long first = story.Enter(new SettingChanged("units", "in"));
        story.Enter(new SettingChanged("units", "mm"));
        story.CrossOut(first);
        story.CountAgain(first);
        Assert.Equal("mm", story.Shop.Settings.Get(ShopSetting.Units));
    }

    [Fact]
    public void It_can_be_crossed_out_and_count_again_as_often_as_the_smith_changes_his_mind()
    {
        story.Add("R1");
        for (int i = 0; i < 3; i++)
        {
            story.CrossOut(1);
            Assert.Empty(story.Shop.Tools);
            story.CountAgain(1);
            Assert.Equal(1, story.Tool("R1").Id);
        }

        Shop? folded = Shop.Fold(story.Shop.Ledger).After;
        Assert.Single(folded!.Tools);
        Assert.Equal(7, folded.Ledger.Count);
    }

    [Fact]
    public void What_is_not_crossed_out_cannot_count_again()
    {
        story.Add("R1");
        Assert.Equal("entry 1 is not crossed out", story.Refused(new EntryCountsAgain(1, "why not")));
        story.CrossOut(1);
        Assert.Equal("entry 2 is not crossed out", story.Refused(new EntryCountsAgain(2, "why not")));
        Assert.Equal("there is no entry 3: the ledger holds 1 to 2", story.Refused(new EntryCountsAgain(3, "why not")));
    }

    [Fact]
    public void What_it_rested_on_must_stand()
    {
        story.Add("R1");
        story.Enter(Measured("R1", Day(1)));
        story.CrossOut(2);
        story.CrossOut(1);
        Assert.Equal(
            "entry 2 cannot count again: what it rested on is crossed out",
            story.Refused(new EntryCountsAgain(2, "it was right"))
        );
        story.CountAgain(1);
        story.CountAgain(2);
        Assert.Equal([2], story.History("R1"));
    }

    [Fact]
    public void What_was_entered_in_its_stead_stands_in_its_way()
    {
        story.Add("R1");
        story.CrossOut(1);
        story.Add("R1");
        story.Enter(Measured("R1", Day(1)));
        Assert.Equal(
            "entry 1 cannot count again: entries 3, 4 would not go with it; cross out the last of them first",
            story.Refused(new EntryCountsAgain(1, "it was right"))
        );
    }

    [Fact]
    public void A_reading_that_would_speak_of_another_tool_stands_in_its_way()
    {
        story.Add("R1");
        long mark = story.Enter(new ToolRemarked(Mark("R1"), Mark("R2")));
        story.CrossOut(mark);
        story.Enter(Scrapped("R1", Day(1)));
        Assert.Equal(
            $"entry {mark} cannot count again: entry 4 would not go with it; cross out the last of them first",
            story.Refused(new EntryCountsAgain(mark, "it was right"))
        );
    }
}
