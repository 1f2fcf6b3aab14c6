using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using Xunit;
using static ToolWear.Core.Tests.Shops.Story;

namespace ToolWear.Core.Tests.Shops;

public sealed class CorrectedToolTests
{
    private readonly Story story = new() { Today = Day(10) };

    public CorrectedToolTests()
    {
        story.Enter(new ToolAdded(Drift("R1", madeOn: Day(3))));
        story.Enter(Measured("R1", Day(5)));
    }

    [Fact]
    public void What_was_wrong_of_a_tool_is_mended_and_what_happened_to_it_stays()
    {
        Tool right = Drift("R1", madeOn: Day(2)) with { Steel = "4140" };
        long entry = story.Enter(new ToolCorrected(right));
        Assert.Equal("4140", story.Tool("R1").Tool.Steel);
        Assert.Equal(1, story.Tool("R1").Id);
        Assert.Single(story.Tool("R1").Events);
        // the earlier value stays readable, and counts again
        Assert.Null(Assert.IsType<ToolAdded>(story.Shop.Ledger[0].What).Tool.Steel);
        story.Enter(new EntryCrossedOut(entry, "it was right"));
        Assert.Null(story.Tool("R1").Tool.Steel);
    }

    [Fact]
    public void What_would_become_impossible_is_refused_and_named()
    {
        Assert.StartsWith("No tool \"R9\". ", story.Refused(new ToolCorrected(Drift("R9"))), StringComparison.Ordinal);
        Assert.Equal(
            "R1 was read at width: it keeps that gauge mark",
            story.Refused(new ToolCorrected(Drift("R1") with { GaugeMarks = [] }))
        );
        Assert.Equal(
            "R1 has entries of 2026-05-05: it was made by then, not on 2026-05-06",
            story.Refused(new ToolCorrected(Drift("R1", madeOn: Day(6))))
        );
        story.Enter(Scrapped("R1", Day(7)));
        Assert.StartsWith("No tool \"R1\". ", story.Refused(new ToolCorrected(Drift("R1"))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_tool_started_anew_stays_one_whose_heats_before_nobody_knows()
    {
        story.Enter(new ToolStartedHere(Mark("R1"), "the scale is off"));
        story.Enter(new ToolCorrected(Drift("R1") with { Steel = "H13" }));
        Assert.Equal(ToolStart.Unknown, story.Tool("R1").Tool.Start);
    }
}
