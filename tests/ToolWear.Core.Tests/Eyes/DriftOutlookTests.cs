using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tests.Sections;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using Xunit;

namespace ToolWear.Core.Tests.Eyes;

/// <summary>What a worn drift still makes of its eye. Sizes are those of a hatchet's and a tomahawk's eye.</summary>
public sealed class DriftOutlookTests
{
    private static readonly EyeTolerance Hatchet = ToleranceTests.Tolerance(35.7m, 36.9m, 16.7m, 17.9m);

    private static readonly EyeWanted Wedged = new(
        new EyeSize(36.5, 17.5),
        40,
        Driving.BothFaces,
        0.03,
        0.03,
        Hatchet,
        null
    );

    private static readonly EyeWanted SlipOn = Wedged with
    {
        Driving = Driving.OneFace,
        Seat = new SeatWanted(0.04, 10),
    };

    // by hand: 0.03 x 40 / 2 = 0.6 less at the waist
    [Fact]
    public void A_wedged_eye_inside_its_tolerance_has_a_waist_and_is_left_alone_at_its_mark()
    {
        DriftOutlook outlook = Of(Wedged, 36.3, 17.3, taperLeft: 0);

        Assert.True(outlook.IsInside);
        Assert.Equal(35.7, outlook.Along!.Waist.LengthMm, 1e-9);
        Assert.Equal(16.7, outlook.Along.Waist.WidthMm, 1e-9);
        Assert.Null(outlook.Seat);
        Assert.Null(outlook.Drive);
    }

    // the middle of the tolerance lies below: 36.8 - 36.3 = 0.5 over 0.03 would be 16.7 mm less deep
    [Fact]
    public void Driving_less_deep_is_never_spoken_of_while_the_eye_is_inside()
    {
        Assert.Null(Of(Wedged, 36.8, 17.8, taperLeft: 20).Drive);
        DriveTo back = Assert.IsType<DriveTo>(Of(Wedged, 37.0, 17.8, taperLeft: 20).Drive);
        Assert.True(back.DeeperMm < 0);
    }

    [Fact]
    public void Inside_it_is_driven_deeper_to_the_middle_where_it_has_taper_left()
    {
        DriftOutlook outlook = Of(Wedged, 36.0, 17.0, taperLeft: 20);

        Assert.True(outlook.IsInside);
        DriveTo deeper = Assert.IsType<DriveTo>(outlook.Drive);
        Assert.Equal(10, deeper.DeeperMm, 1e-9);
        Assert.Equal(60, deeper.Mark.Mm, 1e-6);
        Assert.Equal(36.3, deeper.Eye.LengthMm, 1e-9);
        // no mark is moved by less than can be scribed: 0.3 mm deeper is 0.009 mm of eye
        Assert.Null(Of(Wedged, 36.291, 17.291, taperLeft: 20).Drive);
    }

    [Theory]
    [InlineData(35.0, 17.0, 20, DriveEnd.MarkRunsOff)]
    [InlineData(36.8, 16.0, 90, DriveEnd.LengthAgainstWidth)]
    public void Outside_with_no_depth_that_serves_it_is_at_its_end(
        double length,
        double width,
        double taperLeft,
        DriveEnd end
    )
    {
        DriftOutlook outlook = Of(Wedged, length, width, taperLeft);

        Assert.False(outlook.IsInside);
        Assert.Equal(end, Assert.IsType<NoDepth>(outlook.Drive).End);
    }

    [Fact]
    public void A_nose_that_meets_the_bolster_ends_it()
    {
        DriftOutlook outlook = Of(Wedged, 35.4, 17.3, taperLeft: 30, noseRoom: 5);

        NoDepth no = Assert.IsType<NoDepth>(outlook.Drive);
        Assert.Equal(DriveEnd.NoseMeetsBolster, no.End);
        Assert.Equal("It would have to go 10.0 mm deeper, and the nose meets the bolster after 5.0.", no.Why());
        Assert.Equal(
            "It would have to go 25/64 in deeper, and the nose meets the bolster after 13/64.",
            no.Why(LengthUnit.Inch)
        );
    }

    [Fact]
    public void Driven_through_nothing_makes_up_for_wear()
    {
        EyeWanted through = Wedged with { Driving = Driving.Through };
        Assert.Null(Of(through, 36.0, 17.0, taperLeft: 20).Drive);
        Assert.Equal(DriveEnd.DrivenThrough, Assert.IsType<NoDepth>(Of(through, 35.0, 17.0, taperLeft: 20).Drive).End);
    }

    // by hand: 10 mm of seat on a taper of 0.04 is 0.4 mm of eye; 0.3 short is 7.5 mm short of its seat
    [Fact]
    public void A_slip_on_eye_is_judged_by_its_seat_and_not_by_its_size()
    {
        DriftOutlook outlook = Of(SlipOn, 36.2, 17.4, taperLeft: 0);

        Assert.True(outlook.IsInside);
        Assert.Equal(-7.5, outlook.Seat!.MovementMm, 1e-9);
        Assert.Equal(36.2 - 1.2, outlook.Along!.Far.LengthMm, 1e-9);
        // inside the sizes 35.7 to 36.9, and yet 12.5 mm short of the seat
        DriftOutlook shortOf = Of(SlipOn, 36.0, 17.4, taperLeft: 0);
        Assert.False(shortOf.IsInside);
        Assert.True(Hatchet.Holds(shortOf.Eye.Eye));
    }

    [Fact]
    public void A_drift_that_does_not_make_the_finished_eye_is_not_judged()
    {
        DriftOutlook outlook = Of(Wedged, 34.0, 13.5, taperLeft: 20, isJudged: false);

        Assert.Null(outlook.IsInside);
        Assert.Null(outlook.Drive);
        Assert.Null(outlook.Limits);
        Assert.Equal(33.4, outlook.Along!.Waist.LengthMm, 1e-9);
    }

    [Fact]
    public void Without_a_tolerance_or_an_eye_nothing_is_judged()
    {
        Assert.Null(Of(Wedged with { Tolerance = null }, 36.0, 17.0, taperLeft: 20).IsInside);
        Assert.Null(Of(null, 36.0, 17.0, taperLeft: 20).Along);
    }

    // D_min = E_min (1 + e(750)) / (1 + e(250)), EN 1993-1-2, 3.4.1.1: 35.7 x 1.011 / 1.0030084
    [Fact]
    public void The_scrap_size_follows_from_the_tolerance()
    {
        DriftOutlook outlook = Of(Wedged, 36.3, 17.3, taperLeft: 0);

        Assert.Equal(35.7 * 1.011 / 1.0030084, outlook.Limits!.Least.LengthMm, 1e-9);
        Assert.Equal(16.7 * 1.011 / 1.0030084, outlook.Limits.Least.WidthMm, 1e-9);
    }

    // by hand: 150 less 70 to the mark less 40 of head is 40 below the head; of 60 that are free, 20 are left
    [Theory]
    [InlineData(40, 60, 20)]
    [InlineData(0, 90, 10)]
    [InlineData(40, 30, 0)]
    public void Room_under_the_nose_is_what_is_free_less_what_stands_out_below_the_head(int depth, int free, int room)
    {
        Tool drift = Story.Drift("F1", Place.Finish) with
        {
            Stations =
            [
                new(BodyPart.FullSize, Story.Mm(60), Make.Rectangle(36, 17, 3)),
                new(BodyPart.Nose, Story.Mm(150), Make.Rectangle(20, 10, 3)),
            ],
        };
        drift = drift with { GaugeMarks = [drift.GaugeMarks[0] with { FromMark = Story.Mm(70) }] };
        Length? deep = depth > 0 ? Story.Mm(depth) : null;
        EyeDescribed eye = new(
            "hatchet",
            SectionKind.Rectangle,
            Story.Mm(36.5),
            Story.Mm(17.5),
            null,
            deep,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null
        );
        TaperedDrift? tapered = DriftOutlooks.TaperedOf(Shop.Empty, drift, eye, Story.Mm(free));
        Assert.Equal((Story.Mm(room), Story.Mm(10)), (tapered!.NoseRoom, tapered.TaperLeft));
    }

    private static DriftOutlook Of(
        EyeWanted? wanted,
        double length,
        double width,
        double taperLeft,
        double noseRoom = 1000,
        bool isJudged = true
    )
    {
        Assert.True(
            TaperedDrift.TryMake(
                0.03,
                0.03,
                Length.FromMm(70m),
                Length.FromMm(taperLeft),
                Length.FromMm(noseRoom),
                out TaperedDrift? drift,
                out string? refusal
            ),
            refusal
        );
        NotEnoughData none = new(0, 3, "none");
        return DriftOutlook.Of(
            new EyeForecast(new EyeSize(length, width), none, none, 0),
            wanted,
            isJudged,
            drift,
            tolerance => DriftLimits.Predicted(tolerance, KnockOut.Finish)
        );
    }
}
