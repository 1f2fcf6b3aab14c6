using CsCheck;
using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using Xunit;

namespace ToolWear.Core.Tests.Eyes;

public sealed class DriveDepthTests
{
    private static readonly EyeTolerance Hatchet = ToleranceTests.Tolerance(35.9m, 37.1m, 16.9m, 18.1m);

    private static Gen<double> AnyTaper { get; } = Gen.OneOf(Gen.Const(0.0), Gen.Double[0.001, 0.08]);

    [Fact]
    public void With_one_taper_and_even_wear_it_is_wear_over_taper() =>
        Gen.Select(Gen.Double[0, 0.5], Gen.Double[0.01, 0.1])
            .Sample(
                (w, q) =>
                {
                    DriveTo drive = Assert.IsType<DriveTo>(
                        DriveDepths.Choose(Drift(q, q, 80, 60, 70), new EyeSize(36.5 - w, 17.5 - w), Hatchet)
                    );
                    Assert.True(Taper.TryShift(w, q, out double shift, out _));

                    Assert.Equal(shift, drive.DeeperMm, 1e-9);
                    Assert.Equal(36.5, drive.Eye.LengthMm, 1e-9);
                    Assert.Equal(17.5, drive.Eye.WidthMm, 1e-9);
                    Assert.Equal(80 - shift, drive.Mark.Mm, 1e-6);
                }
            );

    [Fact]
    public void A_drift_is_driven_no_deeper_than_its_mark_lies_however_long_its_taper()
    {
        // it would have to go 20 mm deeper; the mark lies 15 from the shank mark, the taper goes on for 60
        DriveDepth depth = DriveDepths.Choose(Drift(0.05, 0.05, 15, 60, 70), new EyeSize(35.5, 16.5), Hatchet);
        DriveTo drive = Assert.IsType<DriveTo>(depth);
        Assert.Equal(15, drive.DeeperMm, 1e-9);
        Assert.Equal(0, drive.Mark.Mm, 1e-6);
    }

    // against a search over every depth in steps of 0.02 mm
    [Fact]
    public void The_depth_chosen_is_the_one_a_search_over_all_depths_finds() =>
        Gen.Select(AnyTaper, AnyTaper, Gen.Double[34.5, 37.5], Gen.Double[15.5, 18.5], Gen.Int[0, 40])
            .Sample(
                (ql, qw, length, width, room) =>
                {
                    DriveDepth depth = DriveDepths.Choose(
                        Drift(ql, qw, 80, room, 100),
                        new EyeSize(length, width),
                        Hatchet
                    );
                    double best = double.MaxValue;
                    for (int i = -46_000; i <= room * 50; i++)
                    {
                        double s = i / 50.0;
                        EyeSize there = new(length + (ql * s), width + (qw * s));
                        best = Math.Min(best, Hatchet.Holds(there) ? Miss(there) : double.MaxValue);
                    }

                    if (depth is DriveTo drive)
                    {
                        Assert.InRange(drive.Eye.LengthMm, 35.9 - 1e-9, 37.1 + 1e-9);
                        Assert.InRange(drive.Eye.WidthMm, 16.9 - 1e-9, 18.1 + 1e-9);
                        Assert.InRange(drive.DeeperMm, -920, room + 1e-9);
                        Assert.True(Miss(drive.Eye) <= best + 1e-9, $"{drive}, the search misses by {best}");
                    }
                    else
                    {
                        Assert.Equal(double.MaxValue, best);
                    }
                },
                iter: 200
            );

    [Fact]
    public void A_way_without_taper_leaves_the_choice_to_the_other()
    {
        DriveTo drive = Assert.IsType<DriveTo>(
            DriveDepths.Choose(Drift(0.03, 0, 80, 60, 70), new EyeSize(36.2, 17.1), Hatchet)
        );

        Assert.Equal(10, drive.DeeperMm, 1e-9);
        Assert.Equal(17.1, drive.Eye.WidthMm, 1e-9);
    }

    [Fact]
    public void A_parallel_drift_inside_tolerance_stays_at_its_mark()
    {
        DriveTo drive = Assert.IsType<DriveTo>(
            DriveDepths.Choose(Drift(0, 0, 80, 60, 70), new EyeSize(36.2, 17.1), Hatchet)
        );

        Assert.Equal(0, drive.DeeperMm);
    }

    [Fact]
    public void The_new_mark_is_shown_in_64ths_of_an_inch()
    {
        DriveTo drive = Assert.IsType<DriveTo>(
            DriveDepths.Choose(Drift(0.03, 0.03, 80, 60, 70), new EyeSize(36.2, 17.2), Hatchet)
        );

        // 80 mm less 10 mm = 70 mm = 176.4 / 64 in; 176 / 64 = 2 3/4 in
        Assert.Equal(70, drive.Mark.Mm, 1e-6);
        Assert.Equal(2.75, drive.MarkIn64ths.Inches);
    }

    // the middle of the tolerance is 36.5 x 17.5
    [Fact]
    public void A_drift_whose_eye_is_inside_is_never_driven_less_deep()
    {
        TaperedDrift drift = Drift(0.03, 0.03, 80, 60, 70);
        EyeSize inside = new(36.8, 17.8);
        Assert.True(Assert.IsType<DriveTo>(DriveDepths.Choose(drift, inside, Hatchet)).DeeperMm < -5);

        DriveTo stays = Assert.IsType<DriveTo>(DriveDepths.ChooseNotLess(drift, inside, Hatchet));

        Assert.Equal((0, 80, inside), (stays.DeeperMm, stays.Mark.Mm, stays.Eye));
        Assert.True(
            Assert.IsType<DriveTo>(DriveDepths.ChooseNotLess(drift, new EyeSize(37.2, 17.8), Hatchet)).DeeperMm < 0
        );
        Assert.Equal(
            10,
            Assert.IsType<DriveTo>(DriveDepths.ChooseNotLess(drift, new EyeSize(36.2, 17.2), Hatchet)).DeeperMm,
            1e-9
        );
    }

    [Theory]
    [InlineData(0, 0.03, 35.0, 17.5, 60, 60, DriveEnd.NoTaper)]
    [InlineData(0.03, 0.03, 36.9, 16.2, 60, 60, DriveEnd.LengthAgainstWidth)]
    [InlineData(0.03, 0.03, 35.3, 16.5, 10, 60, DriveEnd.MarkRunsOff)]
    [InlineData(0.03, 0.03, 35.3, 16.5, 60, 10, DriveEnd.NoseMeetsBolster)]
    [InlineData(0.0001, 0.0001, 37.3, 18.3, 60, 60, DriveEnd.MarkRunsOff)]
    [InlineData(1e-300, 1e-300, 37.3, 18.3, 60, 60, DriveEnd.NoTaper)]
    public void A_drift_at_its_end_says_why(
        double ql,
        double qw,
        double length,
        double width,
        double taperLeft,
        double noseRoom,
        DriveEnd end
    )
    {
        NoDepth no = Assert.IsType<NoDepth>(
            DriveDepths.Choose(Drift(ql, qw, 80, taperLeft, noseRoom), new EyeSize(length, width), Hatchet)
        );

        Assert.Equal(end, no.End);
        Assert.EndsWith(".", no.Why(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_sentence_names_how_deep_it_would_have_to_go()
    {
        NoDepth no = Assert.IsType<NoDepth>(
            DriveDepths.Choose(Drift(0.03, 0.03, 80, 10, 60), new EyeSize(35.3, 17.0), Hatchet)
        );

        // by hand: 35.9 - 35.3 = 0.6 over 0.03 is 20 mm
        Assert.Equal("It would have to go 20.0 mm deeper, and the mark runs off the taper after 10.0.", no.Why());
    }

    [Theory]
    [InlineData(0.3, 0, "The taper must be 0.000001 to 0.5 mm per mm; 0 is not.")]
    [InlineData(-0.3, 0.03, "The wear must be 0 to 100 mm; -0.3 is not.")]
    public void A_shift_that_cannot_be_is_refused(double wear, double taper, string refusal)
    {
        Assert.False(Taper.TryShift(wear, taper, out _, out string? why));
        Assert.Equal(refusal, why);
    }

    [Fact]
    public void A_drift_that_cannot_be_is_refused()
    {
        Assert.False(
            TaperedDrift.TryMake(
                0.03,
                0.6,
                Length.FromMm(80m),
                Length.FromMm(60m),
                Length.FromMm(60m),
                out TaperedDrift? drift,
                out string? why
            )
        );
        Assert.Null(drift);
        Assert.Equal("The taper of the width must be 0 to 0.5 mm per mm; 0.6 is not.", why);
    }

    // the distances from the middle as shares of half the tolerance, squared
    private static double Miss(EyeSize eye) =>
        Math.Pow((eye.LengthMm - 36.5) / 0.6, 2) + Math.Pow((eye.WidthMm - 17.5) / 0.6, 2);

    private static TaperedDrift Drift(double ql, double qw, double mark, double taperLeft, double noseRoom)
    {
        Assert.True(
            TaperedDrift.TryMake(
                ql,
                qw,
                Length.FromMm(mark),
                Length.FromMm(taperLeft),
                Length.FromMm(noseRoom),
                out TaperedDrift? drift,
                out string? refusal
            ),
            refusal
        );
        return drift;
    }
}
