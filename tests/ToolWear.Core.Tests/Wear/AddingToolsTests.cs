using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using Xunit;
using static ToolWear.Core.Tests.Shops.Story;

namespace ToolWear.Core.Tests.Wear;

/// <summary>What the shop says to a tool that is being added: a scrap size, and how it nests.</summary>
public sealed class AddingToolsTests
{
    private readonly Story story = new();

    // 16.7 x 1.011 / 1.0030084 = 16.8331 (EN 1993-1-2, 3.4.1.1), never under it: 16.84
    [Fact]
    public void A_finish_drifts_scrap_size_follows_from_the_eye()
    {
        story.Enter(Hatchet);

        ScrapProposal scrap = Assert.IsType<ScrapProposal>(Propose(Place.Finish));

        Assert.Equal(16.84, scrap.Size.Mm, 1e-9);
        Assert.Null(scrap.Like);
        Assert.Equal(35.99, Propose(Place.Finish, Measures.Length)!.Size.Mm, 1e-9);
    }

    [Fact]
    public void A_rough_drifts_is_that_of_the_last_one_made_there()
    {
        story.Enter(Hatchet);
        Assert.Null(Propose(Place.Rough));
        story.Add("R1");
        story.Enter(
            new ToolAdded(
                Drift("R2") with
                {
                    GaugeMarks = [new("width", Wears.Smaller, Measures.Width, null, Mm(16), Mm(15.0), null, null)],
                }
            )
        );

        ScrapProposal scrap = Assert.IsType<ScrapProposal>(Propose(Place.Rough));

        Assert.Equal((15.0, "R2"), (scrap.Size.Mm, scrap.Like!.Mark.Text));
        Assert.Null(Propose(Place.Second));
    }

    [Fact]
    public void A_drift_is_held_against_those_before_and_after_it()
    {
        Described(Place.Rough, 34.5, 14.0, 2.6);
        Described(Place.Second, 36.0, 16.4, 3.0);
        Described(Place.Finish, 36.8, 17.6, 3.2);

        Assert.Equal(2, NestingAround.Of(story.Shop, "hatchet", Place.Second, Mm(16.4)).Length);
        Assert.All(NestingAround.Of(story.Shop, "hatchet", Place.Second, Mm(16.4)), step => Assert.False(step.Spoils));
        NestingStep wide = Assert.Single(NestingAround.Of(story.Shop, "hatchet", Place.Rough, Mm(18)));
        Assert.True(wide.Spoils);
        Assert.Empty(NestingAround.Of(story.Shop, "other", Place.Rough, Mm(18)));
    }

    // a drift entered on screen has one gauge mark: its length is taken as its series says
    [Fact]
    public void Without_a_gauge_mark_for_its_length_a_drift_is_as_long_as_its_series_says()
    {
        Described(Place.Rough, 34.5, 16.0, 2.6);
        story.Add("R1");
        ShopForecasts all = ShopForecasts.Of(story.Shop);

        EyeSize size = Assert.IsType<EyeSize>(ToolNow.Size(story.Shop, all.Of(story.Tool("R1").Id)));

        Assert.Equal((34.5, 16.0), (size.LengthMm, size.WidthMm));
    }

    private ScrapProposal? Propose(Place place, Measures measures = Measures.Width) =>
        ScrapProposal.Of(story.Shop, null, "hatchet", place, Form("drift"), measures);

    private void Described(Place place, double length, double width, double radius) =>
        story.Enter(
            new SeriesDescribed(
                new Series(
                    "hatchet",
                    place,
                    Form("drift"),
                    SectionKind.Teardrop,
                    Mm(length),
                    Mm(width),
                    Mm(radius),
                    0.03,
                    0.03,
                    60,
                    "4140",
                    false,
                    0,
                    null
                )
            )
        );

    private static EyeDescribed Hatchet { get; } =
        new(
            "hatchet",
            SectionKind.Teardrop,
            Mm(36.5),
            Mm(17.5),
            Mm(3.2),
            Mm(40),
            0.03,
            0.03,
            Fit.Wedged,
            Driving.BothFaces,
            Mm(35.7),
            Mm(36.9),
            Mm(16.7),
            Mm(17.9),
            null
        );
}
