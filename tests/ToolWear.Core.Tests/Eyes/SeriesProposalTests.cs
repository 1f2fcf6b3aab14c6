using CsCheck;
using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tests.Sections;
using Xunit;

namespace ToolWear.Core.Tests.Eyes;

public sealed class SeriesProposalTests
{
    // by hand: eye x 1.0080 to 0.05 mm, less the usual steps; radii as the widths, to 0.1 mm
    [Fact]
    public void A_hatchets_eye_gets_the_hatchets_series()
    {
        SeriesProposal series = Propose(Make.Teardrop(36.5, 17.5, 3.2), SeriesSteps.Usual);

        Assert.Equal(Make.Teardrop(36.8, 17.65, 3.2), series.Finish);
        Assert.Equal(Make.Teardrop(36.0, 16.45, 3.0), series.Second);
        Assert.Equal(Make.Teardrop(34.5, 14.05, 2.5), series.Rough);
        Assert.Equal(0.030, series.TaperLength);
        Assert.Equal(36.5, series.Slits.Longest.LengthMm);
        Assert.All(series.Nesting, step => Assert.False(step.Spoils, step.Sentence()));
    }

    // common practice: eyes of hand-forged heads, 18 to 50 mm long and two fifths to four fifths as wide
    [Fact]
    public void The_series_of_any_common_eye_nests_and_its_finish_makes_the_eye() =>
        Gen.Select(Gen.Enum<SectionKind>(), Gen.Double[18, 50], Gen.Double[0.4, 0.8], Gen.Double[0.1, 0.4])
            .Where(eye => eye.Item1 is not SectionKind.Other)
            .Sample(
                (kind, length, ratio, r) =>
                {
                    double width = length * ratio;
                    Section eye = Make.Of(kind, length, width, width * r);
                    SeriesProposal series = Propose(eye, SeriesSteps.Usual);

                    Assert.Equal(eye.EyeLength.Mm, KnockOut.Finish.EyeMm(series.Finish.EyeLength.Mm), 0.026);
                    Assert.True(series.Rough.AreaMm2() < series.Second.AreaMm2());
                    Assert.True(series.Second.AreaMm2() < series.Finish.AreaMm2());
                    Assert.All(series.Nesting, step => Assert.False(step.Spoils, step.Sentence()));
                },
                iter: 300
            );

    [Fact]
    public void The_shops_own_steps_are_used()
    {
        Assert.True(
            SeriesSteps.TryMake(
                Length.FromMm(1m),
                Length.FromMm(1m),
                Length.FromMm(3.6m),
                Length.FromMm(4.0m),
                out SeriesSteps? steps,
                out string? refusal
            ),
            refusal
        );

        SeriesProposal series = Propose(Make.Oval(25.4, 17.5), steps);

        Assert.Equal(Make.Oval(25.6, 17.65), series.Finish);
        Assert.Equal(Make.Oval(24.6, 16.65), series.Second);
        Assert.Equal(Make.Oval(22.0, 13.65), series.Rough);
    }

    [Fact]
    public void Steps_the_wrong_way_round_are_refused()
    {
        Assert.False(
            SeriesSteps.TryMake(
                Length.FromMm(2m),
                Length.FromMm(1m),
                Length.FromMm(1m),
                Length.FromMm(4m),
                out SeriesSteps? steps,
                out string? why
            )
        );
        Assert.Null(steps);
        Assert.Equal("The rough drift's step in length must be 2 to 20 mm; 1 is not.", why);
    }

    [Fact]
    public void An_impossible_taper_is_refused()
    {
        Assert.False(
            SeriesProposal.TryFor(
                Make.Oval(25.4, 17.5),
                KnockOut.Finish,
                0.03,
                double.PositiveInfinity,
                SeriesSteps.Usual,
                out SeriesProposal? series,
                out string? why
            )
        );
        Assert.Null(series);
        Assert.Equal("The taper of the width must be 0 to 0.5 mm per mm, and a number.", why);
    }

    private static SeriesProposal Propose(Section eye, SeriesSteps steps)
    {
        Assert.True(
            SeriesProposal.TryFor(
                eye,
                KnockOut.Finish,
                0.030,
                0.030,
                steps,
                out SeriesProposal? series,
                out string? refusal
            ),
            refusal
        );
        return series;
    }
}
