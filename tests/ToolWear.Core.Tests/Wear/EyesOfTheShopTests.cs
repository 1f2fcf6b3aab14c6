using System.Collections.Immutable;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using Xunit;
using static ToolWear.Core.Tests.Shops.Story;

namespace ToolWear.Core.Tests.Wear;

/// <summary>Measured eyes, and what worn tools can become, out of a ledger.</summary>
public sealed class EyesOfTheShopTests
{
    private readonly Story story = new();

    // drift 36.8 x 17.6 new and not worn: eyes 0.4 and 0.3 smaller on the mean
    [Fact]
    public void From_the_third_finished_eye_on_the_shops_own_allowance_counts()
    {
        story.Enter(new ToolAdded(Finish("F1")));
        Measure("F1", 36.35, 17.3);
        Measure("F1", 36.45, 17.3);
        Assert.Equal(0, Eye("F1").Heads);
        Measure("F1", 36.4, 17.3);

        EyeForecast eye = Eye("F1");

        Assert.Equal(3, eye.Heads);
        Assert.Equal(36.4, eye.Eye.LengthMm, 1e-9);
        Assert.Equal(17.3, eye.Eye.WidthMm, 1e-9);
        Assert.Equal("predicted 36.5, found 36.4 on 3 heads", eye.LengthInWords());
    }

    [Fact]
    public void A_sister_of_the_same_place_and_eye_has_the_allowance_and_others_have_not()
    {
        story.Enter(new ToolAdded(Finish("F1")));
        story.Enter(new ToolAdded(Finish("F2")));
        story.Enter(new ToolAdded(Finish("R1", place: Place.Rough)));
        story.Enter(new ToolAdded(Finish("T1", eye: "other")));
        MeasureThree("F1");

        Assert.Equal((3, 3), (Eye("F1").Heads, Eye("F2").Heads));
        Assert.Equal((0, 0), (Eye("R1").Heads, Eye("T1").Heads));
    }

    [Fact]
    public void A_head_counts_once_and_only_where_both_ways_were_read_at_the_top()
    {
        story.Enter(new ToolAdded(Finish("F1")));
        Measure("F1", 36.4, 17.3);
        Measure("F1", 36.4, 17.3, EyeWhere.Bottom);
        Measure("F1", 36.4, null);
        Measure(null, 36.4, 17.3);
        Measure("F1", 36.4, 17.3);

        Assert.Equal(0, Eye("F1").Heads);
    }

    [Fact]
    public void An_eye_stays_with_its_drift_when_that_is_marked_anew()
    {
        story.Enter(new ToolAdded(Finish("F1")));
        MeasureThree("F1");
        story.Enter(new ToolRemarked(Mark("F1"), Mark("F9")));
        // the mark is another tool's now, of another place
        story.Enter(new ToolAdded(Finish("F1", place: Place.Rough)));

        Assert.Equal(3, Eye("F9").Heads);
        Assert.Equal(0, Eye("F1").Heads);
    }

    // 0.2 mm are gone when the eyes are measured: they are set beside the drift as it was then, not as it was made
    [Fact]
    public void An_eye_is_set_beside_the_drift_as_it_was_then()
    {
        story.Enter(new ToolAdded(Finish("F1") with { GaugeMarks = Gauges(36.8, 17.6, 0.5) }));
        story.Open("s1");
        story.Enter(Worked("s1", "F1", 40, Work.Sizing));
        story.Enter(new ToolMeasured(Mark("F1"), "width", story.Today, "s1", Mm(17.4), null, null, null));
        story.Enter(new ToolMeasured(Mark("F1"), "length", story.Today, "s1", Mm(36.6), null, null, null));
        story.Close("s1");
        MeasureThree("F1");

        MeasuredEye eye = All().Eyes.At("hatchet", Place.Finish)[0];

        Assert.InRange(eye.DriftAtMark.WidthMm, 17.35, 17.45);
        Assert.InRange(eye.DriftAtMark.LengthMm, 36.55, 36.65);
    }

    // 31.0 x 24.4 less 0.8 both ways: rough 29 x 21.5 lies inside by 0.6, worked out apart from any program code
    [Fact]
    public void A_worn_second_can_become_a_rough_with_the_heats_its_like_gave()
    {
        story.Enter(new ToolAdded(Adze("A1", 30.2, 23.6)));
        Described("adze", Place.Rough, 29, 21.5);
        Described("adze", Place.Finish, 32, 25.6);

        MadeInto into = Assert.IsType<MadeInto>(Into("A1"));

        MadeIntoOffer offer = Assert.Single(into.Offers);
        Assert.Equal(Place.Rough, offer.Series.Place);
        Assert.Equal(0.6, offer.Making.Clearance.ClearanceMm, 1e-9);
        Assert.Equal((60.0, 0), (offer.Heats, offer.Sisters));
        Assert.Equal(2, into.All.Length);
    }

    [Theory]
    [InlineData(Finding.Cracked)]
    [InlineData(Finding.Broken)]
    [InlineData(Finding.Soft)]
    [InlineData(Finding.GlassHard)]
    public void After_a_crack_or_an_over_heat_it_becomes_nothing(Finding finding)
    {
        story.Enter(new ToolAdded(Adze("A1", 30.2, 23.6)));
        Described("adze", Place.Rough, 29, 21.5);
        story.Enter(LookedOver("A1", story.Today, finding));

        MadeInto into = Assert.IsType<MadeInto>(Into("A1"));

        Assert.Equal(finding, into.Never?.Found.Finding);
        Assert.Empty(into.Offers);
    }

    [Fact]
    public void Stuck_and_unknown_steel_are_cautions_and_scrap_is_the_end()
    {
        story.Enter(new ToolAdded(Adze("A1", 30.2, 23.6) with { Steel = null }));
        story.Enter(LookedOver("A1", story.Today, Finding.Stuck));
        MadeInto into = Assert.IsType<MadeInto>(Into("A1"));
        Assert.Equal((Finding.Stuck, true), (into.Doubt!.Found.Finding, into.SteelIsUnknown));
        story.Enter(new ToolReworked(Mark("A1"), story.Today, Rework.Rehardened, null, null, null, null, null, null));
        Assert.Null(Into("A1")!.Doubt);
        story.Enter(Scrapped("A1", story.Today));
        Assert.Null(Into("A1"));
    }

    // a slitter 34 wide and 3 thick: its edge, which wears, lies along the slit
    [Fact]
    public void A_slitter_of_unknown_making_size_was_made_as_long_as_its_series_says()
    {
        Series slitter = new(
            "hatchet",
            Place.None,
            Form("slitter"),
            SectionKind.Rectangle,
            Mm(34),
            Mm(3),
            null,
            null,
            null,
            200,
            "H13",
            true,
            4,
            null
        );
        Assert.Equal(Mm(34), slitter.MadeSize(Measures.Width));
        Assert.Equal(Mm(34), slitter.MadeSize(Measures.Edge));
        Assert.Equal(Mm(3), (slitter with { Form = Form("drift") }).MadeSize(Measures.Width));
        Assert.Equal(
            Mm(20),
            (
                slitter with
                {
                    Form = Form("drift"),
                    Section = SectionKind.Round,
                    Length = Mm(20),
                    Width = null,
                }
            ).MadeSize(Measures.Width)
        );
    }

    private ShopForecasts All() => ShopForecasts.Of(story.Shop);

    private EyeForecast Eye(string mark)
    {
        ShopForecasts all = All();
        return Assert.IsType<EyeForecast>(EyeNow.Of(all, all.Of(story.Tool(mark).Id)));
    }

    private MadeInto? Into(string mark)
    {
        ShopForecasts all = All();
        return MadeInto.Of(all, all.Of(story.Tool(mark).Id));
    }

    private void MeasureThree(string mark)
    {
        Measure(mark, 36.4, 17.3);
        Measure(mark, 36.4, 17.3);
        Measure(mark, 36.4, 17.3);
    }

    private void Measure(string? mark, double length, double? width, EyeWhere where = EyeWhere.Top) =>
        story.Enter(
            new EyeMeasured(
                "hatchet",
                story.Today,
                null,
                mark is null ? null : Mark(mark),
                where,
                Mm(length),
                width is { } known ? Mm(known) : null,
                null
            )
        );

    private void Described(string eye, Place place, double length, double width) =>
        story.Enter(
            new SeriesDescribed(
                new Series(
                    eye,
                    place,
                    Form("drift"),
                    SectionKind.Rectangle,
                    Mm(length),
                    Mm(width),
                    Mm(3),
                    0.05,
                    0.05,
                    60,
                    "4140",
                    false,
                    0,
                    null
                )
            )
        );

    private static Tool Finish(string mark, Place place = Place.Finish, string eye = "hatchet") =>
        Drift(mark, place) with
        {
            Eye = eye,
            GaugeMarks = Gauges(36.8, 17.6),
        };

    private static Tool Adze(string mark, double length, double width) =>
        Drift(mark, Place.Second) with
        {
            Eye = "adze",
            Steel = "4140",
            Section = SectionKind.Rectangle,
            GaugeMarks = Gauges(length, width),
            Stations = [new(BodyPart.FullSize, Mm(70), Sections.Make.Rectangle(31, 24.4, 3))],
        };

    // without a scrap size nothing is forecast and sizes are as last known, which is quick
    private static ImmutableArray<GaugeMark> Gauges(double length, double width, double? limit = null) =>
        [Gauge("width", Measures.Width, width, limit), Gauge("length", Measures.Length, length, limit)];

    private static GaugeMark Gauge(string name, Measures measures, double start, double? limit) =>
        new(name, Wears.Smaller, measures, Mm(70), Mm(start), limit is { } mm ? Mm(start - mm) : null, null, null);
}
