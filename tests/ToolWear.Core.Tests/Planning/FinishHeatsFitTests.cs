using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tests.Wear;
using ToolWear.Core.Tools;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

public sealed class FinishHeatsFitTests
{
    [Theory]
    [InlineData(2, 10, 2.5)]
    [InlineData(1, 6, 0.9)]
    [InlineData(0, 4, 3)]
    public void The_curve_that_sessions_follow_is_found_again(double least, double more, double helps)
    {
        FinishHeatsFit fit = Assert.IsType<FinishHeatsFit>(
            FinishHeatsFit.Of([
                .. Enumerable.Range(0, 9).Select(i => (i * 0.75, least + (more * Math.Exp(-i * 0.75 / helps)))),
            ])
        );
        Near.Relative(more, fit.More, 0.01, "A");
        Near.Relative(helps, fit.Helps, 0.02, "s");
        Assert.Equal(least, fit.Least, 1);
        Assert.InRange(fit.SdOfRest, 0, 0.02);
        Assert.Equal(9, fit.Sessions);
    }

    [Fact]
    public void Too_few_sessions_or_sessions_that_do_not_differ_are_not_enough()
    {
        Assert.IsType<NotEnoughData>(FinishHeatsFit.Of([(1, 5), (2, 4), (3, 3), (4, 3)]));
        Assert.IsType<NotEnoughData>(FinishHeatsFit.Of([(3, 2), (3, 2.1), (3, 1.9), (3, 2), (3, 2), (4, 2)]));
    }

    [Fact]
    public void Where_rough_heats_save_nothing_it_is_said() =>
        Assert.IsType<NotEnoughData>(FinishHeatsFit.Of([(1, 2), (2, 2.2), (3, 2.4), (4, 2.6), (5, 2.8)]));

    [Fact]
    public void Sessions_of_the_shop_tell_heats_a_head_on_both_drifts()
    {
        Story story = new();
        story.Enter(
            new PatternDescribed(
                "hatchet",
                [
                    new PatternStage("open", "hatchet", Story.Form("drift"), Place.Rough, Work.Opening, 1, null),
                    new PatternStage("cheeks", "hatchet", Story.Form("drift"), Place.Rough, Work.Cheeks, 3, null),
                    new PatternStage("finish", "hatchet", Story.Form("drift"), Place.Finish, Work.Sizing, 2, null),
                ]
            )
        );
        story.Add("R1");
        story.Add("F1", Place.Finish);
        foreach ((string session, int rough, int finish) in ((string, int, int)[])[("s1", 8, 12), ("s2", 16, 8)])
        {
            story.Open(session, pattern: "hatchet");
            story.Enter(Story.Worked(session, "R1", 4, Work.Opening));
            story.Enter(Story.Worked(session, "R1", rough));
            story.Enter(Story.Worked(session, "F1", finish, Work.Sizing));
            story.Enter(new SessionClosed(session, 4));
        }

        // four heads each: opening does not count, cheeks and sizing do
        ImmutableArray<(double Rough, double Finish)> sessions = FinishHeatsFit.InSessions(
            story.Shop,
            story.Shop.Patterns["hatchet"]
        );
        Assert.Equal([(2.0, 3.0), (4.0, 2.0)], sessions);
    }
}
