using ToolWear.Core.Eyes;
using Xunit;

namespace ToolWear.Core.Tests.Eyes;

public sealed class EyeAlongDepthTests
{
    // by hand: hatchet 36.5 x 17.5, 40 deep, taper 0.030 both ways: waist 0.6 less
    [Fact]
    public void A_wedged_eye_is_narrowest_at_its_waist()
    {
        EyeAlongDepth eye = Along(Driving.BothFaces, new EyeSize(36.5, 17.5), 40, 0.030, 0.030);

        Assert.Equal(new EyeSize(36.5, 17.5), eye.Near);
        Assert.Equal(new EyeSize(36.5, 17.5), eye.Far);
        Assert.Equal(35.9, eye.Waist.LengthMm, 1e-9);
        Assert.Equal(16.9, eye.Waist.WidthMm, 1e-9);
    }

    // by hand: tomahawk 34.9 x 22.2, 44 deep, taper 0.035: bottom 33.4 x 20.7; adze 31.8 x 25.4, 50, 0.05: 29.3 x 22.9
    [Theory]
    [InlineData(34.9, 22.2, 44, 0.035, 33.4, 20.7)]
    [InlineData(31.8, 25.4, 50, 0.05, 29.3, 22.9)]
    public void A_slip_on_eye_is_narrowest_at_its_far_face(
        double length,
        double width,
        double depth,
        double taper,
        double farLength,
        double farWidth
    )
    {
        EyeAlongDepth eye = Along(Driving.OneFace, new EyeSize(length, width), depth, taper, taper);

        Assert.Equal(farLength, eye.Far.LengthMm, 0.05);
        Assert.Equal(farWidth, eye.Far.WidthMm, 0.05);
        Assert.Equal((length + eye.Far.LengthMm) / 2, eye.Waist.LengthMm, 1e-9);
    }

    [Fact]
    public void An_eye_driven_through_is_of_one_size()
    {
        EyeAlongDepth eye = Along(Driving.Through, new EyeSize(25.4, 17.5), 32, 0.05, 0.04);

        Assert.Equal(eye.Near, eye.Waist);
        Assert.Equal(eye.Near, eye.Far);
    }

    [Theory]
    [InlineData(40, -0.01, "The taper of the length must be 0 to 0.5 mm per mm; -0.01 is not.")]
    [InlineData(0, 0.03, "The depth of the eye must be 1 to 1000 mm; 0 is not.")]
    [InlineData(400, 0.2, "With that taper the eye closes before it is through: the taper or the depth must be less.")]
    public void An_eye_that_cannot_be_is_refused(double depth, double taper, string refusal)
    {
        Assert.False(
            EyeAlongDepth.TryFor(
                Driving.OneFace,
                new EyeSize(36.5, 17.5),
                depth,
                taper,
                0.03,
                out EyeAlongDepth? eye,
                out string? why
            )
        );
        Assert.Null(eye);
        Assert.Equal(refusal, why);
    }

    // by hand: 0.4 mm on a taper of 0.035 is 11.4 mm along the handle; the way that binds first decides
    [Fact]
    public void A_slip_on_head_moves_by_the_change_of_its_eye_over_the_taper()
    {
        EyeSize wanted = new(34.9, 22.2);
        Assert.True(
            SlipOnSeat.TryFor(wanted, new EyeSize(35.3, 22.6), 0.035, out SlipOnSeat? on, out string? refusal),
            refusal
        );
        Assert.Equal(11.43, on.MovementMm, 0.005);
        Assert.True(on.Within(12));
        Assert.False(on.Within(11));

        Assert.True(SlipOnSeat.TryFor(wanted, new EyeSize(35.3, 22.0), 0.05, out SlipOnSeat? tight, out _));
        Assert.Equal(-4, tight.MovementMm, 1e-9);
        Assert.True(tight.Within(5));
        Assert.False(tight.Within(3));
    }

    [Fact]
    public void A_handle_without_taper_has_no_seat()
    {
        Assert.False(
            SlipOnSeat.TryFor(new EyeSize(34, 22), new EyeSize(35, 22), 0, out SlipOnSeat? seat, out string? why)
        );
        Assert.Null(seat);
        Assert.Equal("The taper of the handle must be 0.001 to 0.5 mm per mm; 0 is not.", why);
    }

    private static EyeAlongDepth Along(Driving driving, EyeSize atMark, double depth, double length, double width)
    {
        Assert.True(
            EyeAlongDepth.TryFor(driving, atMark, depth, length, width, out EyeAlongDepth? eye, out string? refusal),
            refusal
        );
        return eye;
    }
}
