using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using Xunit;
using static ToolWear.Core.Tests.Shops.Story;

namespace ToolWear.Core.Tests.Shops;

/// <summary>What the shop refuses, with its sentence. What it takes is in the other stories.</summary>
public sealed class RefusalTests
{
    private readonly Story story = new() { Today = Day(10) };

    public RefusalTests()
    {
        story.Enter(new ToolAdded(Drift("R1", madeOn: Day(3))));
        story.Add("R2");
        story.Open("s1", Day(5));
    }

    [Fact]
    public void A_mark_is_meant_without_regard_to_case_where_only_one_fits()
    {
        story.Add("Q1");
        story.Add("q2");
        story.Add("Q2");
        Assert.Equal("Q1", story.Shop.Meant(Mark("q1")).Text);
        Assert.Equal("q2", story.Shop.Meant(Mark("q2")).Text);
        Assert.Equal("R9", story.Shop.Meant(Mark("R9")).Text);
        story.Add("Ab");
        story.Add("aB");
        Assert.Equal("AB", story.Shop.Meant(Mark("AB")).Text);
    }

    [Fact]
    public void Days_in_the_future_are_refused_everywhere()
    {
        const string future = "2026-05-11 lies in the future: today is 2026-05-10 by this computer's clock";
        DateOnly on = Day(11);
        Assert.Equal(future, story.Refused(new ToolAdded(Drift("R3", madeOn: on))));
        Assert.Equal(future, story.Refused(Measured("R1", on)));
        Assert.Equal(future, story.Refused(Reworked("R1", on)));
        Assert.Equal(future, story.Refused(LookedOver("R1", on)));
        Assert.Equal(future, story.Refused(Scrapped("R1", on)));
        Assert.Equal(future, story.Refused(new ToolSetAside(Mark("R1"), on, null)));
        Assert.Equal(future, story.Refused(new EyeMeasured("hatchet", on, null, null, null, null, null, null)));
        story.Close("s1");
        Assert.Equal(future, story.Refused(Opening("s2", on)));
    }

    [Fact]
    public void Nothing_happens_to_a_tool_before_it_was_made()
    {
        const string unmade = "R1 was made on 2026-05-03: nothing can have happened to it on 2026-05-02";
        Assert.Equal(unmade, story.Refused(Measured("R1", Day(2))));
        Assert.Equal(unmade, story.Refused(Reworked("R1", Day(2))));
        Assert.Equal(unmade, story.Refused(LookedOver("R1", Day(2))));
        story.Enter(LookedOver("R1", Day(3)));
    }

    [Fact]
    public void A_mark_in_use_is_taken()
    {
        const string taken = "mark R2 is taken: a mark is unique among the tools that are not scrapped";
        Assert.Equal(taken, story.Refused(new ToolAdded(Drift("R2"))));
        Assert.Equal(taken, story.Refused(new ToolRemarked(Mark("R1"), Mark("R2"))));
        Assert.StartsWith(
            "No tool \"R9\". ",
            story.Refused(new ToolRemarked(Mark("R9"), Mark("R8"))),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "No tool \"R9\". ",
            story.Refused(new ToolStartedHere(Mark("R9"), null)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_state_changes_only_from_the_other()
    {
        Assert.Equal(
            "R1 is in service, so it cannot be brought back",
            story.Refused(new ToolBroughtBack(Mark("R1"), Day(6), null))
        );
        story.Enter(new ToolSetAside(Mark("R1"), Day(6), null));
        Assert.Equal(
            "R1 is set aside, so it cannot be set aside",
            story.Refused(new ToolSetAside(Mark("R1"), Day(6), null))
        );
        Assert.Equal(
            "R1 changed its state on 2026-05-06 last: give that day or a later one",
            story.Refused(new ToolBroughtBack(Mark("R1"), Day(5), null))
        );
        story.Enter(Worked("s1", "R1"));
        story.Close("s1");
        story.Open("s2", Day(7));
        // heats happened: they are told, not refused
        story.Enter(Worked("s2", "R1"));
        story.Enter(new ToolBroughtBack(Mark("R1"), Day(7), null));
        story.Enter(Worked("s2", "R1"));
    }

    [Fact]
    public void A_scrapped_tool_takes_late_entries_but_nothing_after_its_end()
    {
        story.Enter(Scrapped("R1", Day(6)));
        story.Enter(Worked("s1", "R1"));
        story.Enter(LookedOver("R1", Day(6)));
        story.Enter(Worked("s1", "R1"));
        const string scrapped = "R1 was scrapped on 2026-05-06";
        Assert.Equal(scrapped, story.Refused(LookedOver("R1", Day(7))));
        Assert.Equal(scrapped, story.Refused(Scrapped("R1", Day(6))));
        Assert.Equal(scrapped, story.Refused(new ToolSetAside(Mark("R1"), Day(5), null)));
    }

    [Fact]
    public void A_tool_ends_after_all_that_happened_to_it_and_names_what_it_became()
    {
        story.Enter(Measured("R1", Day(8), "s1"));
        Assert.Equal(
            "R1 still has entries of 2026-05-08: it cannot have been scrapped on 2026-05-07",
            story.Refused(Scrapped("R1", Day(7)))
        );
        const string cause = "the cause made-into goes with the mark of the tool it was made into, and only with it";
        ToolScrapped made = Scrapped("R1", Day(8)) with { Cause = ScrapCause.MadeInto };
        Assert.Equal(cause, story.Refused(made));
        Assert.Equal(cause, story.Refused(Scrapped("R1", Day(8)) with { Into = Mark("R2") }));
        Assert.Equal("R1 cannot be made into itself", story.Refused(made with { Into = Mark("R1") }));
        Assert.StartsWith("No tool \"R9\". ", story.Refused(made with { Into = Mark("R9") }), StringComparison.Ordinal);
        story.Enter(made with { Into = Mark("R2") });
        Assert.Equal(ToolState.Scrapped, story.Tool("R1").State);
    }

    [Fact]
    public void Sessions_open_once_one_at_a_time_and_close_once()
    {
        Assert.Equal("there is a session s1 already: each has a name of its own", story.Refused(Opening("s1", Day(5))));
        Assert.Equal("session s1 is still open: close it first", story.Refused(Opening("s2", Day(5))));
        Assert.Equal("heads -1: a number from 0 to 10000", story.Refused(new SessionClosed("s1", -1)));
        Assert.Equal("there is no session s9", story.Refused(new SessionClosed("s9", null)));
        story.Enter(new SessionClosed("s1", 12));
        Assert.Equal(12, story.Shop.Sessions["s1"].Heads);
        Assert.Equal("session s1 is closed already", story.Refused(new SessionClosed("s1", null)));
        Assert.Equal(
            "blows 0: a number from 1 to 1000",
            story.Refused(Opening("s2", Day(5)) with { Care = new(null, null, 0) })
        );
    }

    [Fact]
    public void Heats_want_a_session_a_tool_and_a_number()
    {
        Assert.Equal("there is no session s9", story.Refused(Worked("s9", "R1")));
        Assert.StartsWith("No tool \"R9\". ", story.Refused(Worked("s1", "R9")), StringComparison.Ordinal);
        const string number = ": a number from 0.5 to 1000 in steps of a half";
        Assert.Equal("heats 0" + number, story.Refused(Worked("s1", "R1", 0)));
        Assert.Equal("heats 1001" + number, story.Refused(Worked("s1", "R1", 1001)));
        story.Enter(Worked("s1", "R1", 1000));
    }

    [Fact]
    public void A_reading_wants_a_gauge_mark_a_size_and_a_session_before_it()
    {
        Assert.Equal(
            "No gauge mark on R1 \"nose\". There are width, overall.",
            story.Refused(Measured("R1", Day(5)) with { Gauge = "nose" })
        );
        const string size = "a size is above zero and at most 10 m";
        Assert.Equal(size, story.Refused(Measured("R1", Day(5), mm: 0)));
        Assert.Equal(size, story.Refused(Measured("R1", Day(5), mm: 10_001)));
        Assert.Equal(size, story.Refused(Measured("R1", Day(5)) with { Resolution = Length.Zero }));
        Assert.Equal("there is no session s9", story.Refused(Measured("R1", Day(5), "s9")));
        Assert.Equal(
            "a reading of 2026-05-04 cannot follow session s1 of 2026-05-05",
            story.Refused(Measured("R1", Day(4), "s1"))
        );
    }

    [Fact]
    public void A_rework_has_its_sizes_at_a_gauge_mark()
    {
        Assert.Equal(
            "No gauge mark on R1 \"nose\". There are width, overall.",
            story.Refused(Reworked("R1", Day(5), "nose"))
        );
        Assert.Equal(
            "a size before or after goes with the gauge mark where it was read",
            story.Refused(Reworked("R1", Day(5)) with { After = Mm(16) })
        );
        const string sizes = "sizes are above zero and at most 10 m, hours and costs zero or more";
        Assert.Equal(sizes, story.Refused(Reworked("R1", Day(5), "width") with { Before = Length.Zero }));
        Assert.Equal(sizes, story.Refused(Reworked("R1", Day(5)) with { Hours = -1 }));
        Assert.Equal(sizes, story.Refused(Reworked("R1", Day(5)) with { Cost = -1 }));
    }

    [Fact]
    public void Orders_want_a_pattern_and_patterns_a_stage()
    {
        OrderDescribed order = new("o1", "axe", 12, Day(30), OrderState.Open);
        Assert.Equal("pattern: No pattern \"axe\". None is entered yet.", story.Refused(order));
        Assert.Equal("pattern axe has no stage: give at least one", story.Refused(new PatternDescribed("axe", [])));
        PatternStage stage = new("rough", null, null, Place.Rough, null, null, null);
        Assert.Equal(
            "load: NaN lies outside; a number above 0 to 100 (stage rough)",
            story.Refused(new PatternDescribed("axe", [stage with { Load = double.NaN }]))
        );
        story.Enter(new PatternDescribed("axe", [stage]));
        Assert.Equal("heads: 0 lies outside; a whole number from 1 to 100000", story.Refused(order with { Heads = 0 }));
        Assert.Equal(
            "pattern: No pattern \"pick\". The only one is axe.",
            story.Refused(order with { Pattern = "pick" })
        );
        story.Enter(order);
    }

    [Theory]
    [InlineData("units", "cm", "units \"cm\": one of mm, in")]
    [InlineData("sure", "90", "sure \"90\": a number from 0.01 to 0.999 with a point")]
    [InlineData("sure", "0,9", "sure \"0,9\": a number from 0.01 to 0.999 with a point")]
    [InlineData("blows", "0", "blows \"0\": a number from 1 to 1000 with a point")]
    [InlineData("colour", "red", "No setting \"colour\". There are units,")]
    [InlineData("lubricants", "oil", "No setting \"lubricants\". Did you mean lubricant?")]
    [InlineData("guess_heats_ruogh", "9", "No setting \"guess_heats_ruogh\". Did you mean guess_heats_rough?")]
    public void Settings_say_which_values_they_take(string setting, string value, string why) =>
        Assert.StartsWith(why, story.Refused(new SettingChanged(setting, value)), StringComparison.Ordinal);

    [Fact]
    public void Every_setting_takes_its_usual_value_and_goes_back_to_it()
    {
        foreach (ShopSetting setting in ShopSetting.All)
        {
            Assert.True(setting.Usual.Length == 0 || setting.Fault(setting.Usual) is null, setting.Name);
            story.Enter(new SettingChanged(setting.Name, ""));
            Assert.Equal(setting.Usual, story.Shop.Settings.Get(setting));
        }
    }
}
