using CsCheck;
using ToolWear.Core.Eyes;
using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tests.Sections;
using Xunit;

namespace ToolWear.Core.Tests.Eyes;

public sealed class SlitTests
{
    private static readonly Section HatchetEye = Make.Teardrop(36.5, 17.5, 3.2);

    // the opening as an outline: an obround, a rectangle, a line there and back
    [Fact]
    public void The_opening_is_as_long_round_as_its_shape()
    {
        Assert.Equal(68, Slit.OpeningMm(SlitTool.Slitter, 34, 6));
        Assert.Equal(Make.Rectangle(34, 6, 3).PerimeterMm(), Slit.OpeningMm(SlitTool.SlotPunch, 34, 6), 1e-9);
        Assert.Equal(Make.Rectangle(34, 6, 0).PerimeterMm(), Slit.OpeningMm(SlitTool.SquarePunch, 34, 6), 1e-9);
    }

    // worked apart from the program: hatchet 29 %, tomahawk 20 %, hammer 24 %, adze 53 %
    [Theory]
    [InlineData(SectionKind.Teardrop, 36.5, 17.5, 3.2, SlitTool.Slitter, 34, 0, 29)]
    [InlineData(SectionKind.Teardrop, 34.9, 22.2, 4, SlitTool.SlotPunch, 34, 6, 20)]
    [InlineData(SectionKind.Oval, 25.4, 17.5, 0, SlitTool.SlotPunch, 24, 6, 24)]
    [InlineData(SectionKind.Rectangle, 31.8, 25.4, 3, SlitTool.SlotPunch, 30, 10, 53)]
    public void Stretch_is_the_eye_round_over_the_opening(
        SectionKind kind,
        double a,
        double b,
        double r,
        SlitTool tool,
        double s,
        double t,
        double percent
    )
    {
        Assert.True(Slit.TryFor(tool, s, t, Make.Of(kind, a, b, r), out Slit? slit, out string? refusal), refusal);

        Assert.Equal(percent, slit.StretchShare * 100, 0.5);
        Assert.Equal(percent > 30, slit.Warning is not null);
    }

    [Fact]
    public void The_length_for_a_stretch_stretches_by_that() =>
        Gen.Select(Gen.Enum<SlitTool>(), Gen.Double[60, 200], Gen.Double[0.1, 8], Gen.Double[0, 0.6])
            .Sample(
                (tool, perimeter, t, stretch) =>
                {
                    Assert.True(
                        Slit.TryLength(tool, perimeter, t, stretch, out double slit, out string? refusal),
                        refusal
                    );
                    Assert.Equal(perimeter, Slit.OpeningMm(tool, slit, t) * (1 + stretch), 1e-9);
                }
            );

    [Fact]
    public void A_slit_longer_than_the_eye_is_refused()
    {
        Assert.False(Slit.TryFor(SlitTool.Slitter, 36.6, 0, HatchetEye, out Slit? slit, out string? why));
        Assert.Null(slit);
        Assert.Equal(
            "A slit of 36.6 mm is longer than the eye: split ends and cold shuts. It must be 1 to 36.5 mm.",
            why
        );
        Assert.True(Slit.TryFor(SlitTool.Slitter, 36.5, 0, HatchetEye, out _, out _));
    }

    [Theory]
    [InlineData(SlitTool.Slitter, -1, 0, "The slit must be 1 to 36.5 mm; -1 is not.")]
    [InlineData(SlitTool.Slitter, double.NaN, 0, "The slit must be 1 to 36.5 mm, and a number.")]
    [InlineData(SlitTool.SlotPunch, 30, 18, "The width of the punch must be 0 to 17.5 mm; 18 is not.")]
    [InlineData(
        SlitTool.SquarePunch,
        36,
        17,
        "The opening is larger round than the eye already: take a shorter slit or a narrower punch."
    )]
    public void An_impossible_slit_is_refused(SlitTool tool, double s, double t, string refusal)
    {
        Assert.False(Slit.TryFor(tool, s, t, HatchetEye, out Slit? slit, out string? why));
        Assert.Null(slit);
        Assert.Equal(refusal, why);
    }

    [Theory]
    [InlineData(SlitTool.Slitter, 0, 0, 0.2, "The perimeter of the eye must be 1 to 10000 mm; 0 is not.")]
    [InlineData(SlitTool.Slitter, 80, 0, -0.2, "The stretch must be 0 to 1 as a share of one; -0.2 is not.")]
    [InlineData(
        SlitTool.SquarePunch,
        80,
        30,
        0.3,
        "A punch 30 mm wide opens more than that without being longer than wide: take a narrower one."
    )]
    public void An_impossible_length_is_refused(
        SlitTool tool,
        double perimeter,
        double t,
        double stretch,
        string refusal
    )
    {
        Assert.False(Slit.TryLength(tool, perimeter, t, stretch, out _, out string? why));
        Assert.Equal(refusal, why);
    }

    [Fact]
    public void The_slits_proposed_are_the_eye_less_0_to_3_mm()
    {
        Assert.True(SlitProposal.TryFor(SlitTool.Slitter, 0, HatchetEye, out SlitProposal? slits, out _));

        Assert.Equal(36.5, slits.Longest.LengthMm);
        Assert.Equal(33.5, slits.Shortest.LengthMm);
        Assert.Equal((HatchetEye.PerimeterMm() / 67) - 1, slits.Shortest.StretchShare, 1e-12);
        Assert.Equal("The opening stretches by 31 %, more than 30: its ends may tear.", slits.Shortest.Warning);
        Assert.Null(slits.Longest.Warning);
        Assert.True(slits.Shortest.EdgeServes(33.5));
        Assert.False(slits.Shortest.EdgeServes(33.4));
    }

    // by hand: 190 to 130 at 1.5 a dressing is 40
    [Theory]
    [InlineData(190, 1.5, 130, 40, 130)]
    [InlineData(191.4, 1.5, 130, 40, 131.4)]
    [InlineData(191.5, 1.5, 130, 41, 130)]
    [InlineData(129, 1.5, 130, 0, 129)]
    [InlineData(120, 1.5, 130, 0, 120)]
    public void Dressings_left_are_whole_ones(double now, double loss, double least, int dressings, double after)
    {
        Assert.True(
            DressingsLeft.TryCount(
                Length.FromMm(now),
                Length.FromMm(loss),
                Length.FromMm(least),
                out DressingsLeft? left,
                out string? refusal
            ),
            refusal
        );

        Assert.Equal(dressings, left.Dressings);
        Assert.Equal(Length.FromMm(after), left.LengthAfter);
    }

    [Fact]
    public void A_dressing_that_takes_nothing_off_cannot_be_counted()
    {
        Assert.False(
            DressingsLeft.TryCount(
                Length.FromMm(190m),
                Length.Zero,
                Length.FromMm(130m),
                out DressingsLeft? left,
                out string? why
            )
        );
        Assert.Null(left);
        Assert.Equal("The loss a dressing must be 0.01 to 100 mm; 0 is not.", why);
    }
}
