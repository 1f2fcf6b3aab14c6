using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using Xunit;

namespace ToolWear.Core.Tests.Sections;

public sealed class SectionRefusalTests
{
    [Theory]
    [InlineData(SectionKind.Round, 0, 0, 0, "The diameter must be 0.1 mm to 1000 mm; 0 mm is not.")]
    [InlineData(SectionKind.Round, 1000.1, 0, 0, "The diameter must be 0.1 mm to 1000 mm; 1000.1 mm is not.")]
    [InlineData(SectionKind.Rectangle, 40, -16, 3, "The width must be 0.1 mm to 1000 mm; -16 mm is not.")]
    [InlineData(
        SectionKind.Rectangle,
        40,
        16,
        8.1,
        "The edge radius must be 0 to 8 mm, half the width; 8.1 mm is not."
    )]
    [InlineData(SectionKind.Rectangle, 40, 16, -1, "The edge radius must be 0 to 8 mm, half the width; -1 mm is not.")]
    [InlineData(SectionKind.Oval, 40, 0, 0, "The width must be 0.1 mm to 1000 mm; 0 mm is not.")]
    [InlineData(SectionKind.Teardrop, 18, 18, 2, "A teardrop is longer than it is wide; 18 mm by 18 mm is not.")]
    [InlineData(SectionKind.Teardrop, 40, 18, 9.5, "The nose radius must be 0 to 9 mm, half the width; 9.5 mm is not.")]
    [InlineData(SectionKind.Other, 40, 18, 0, "Only a round, rectangle, oval or teardrop can be worked out.")]
    public void An_impossible_figure_is_refused_with_what_is_allowed(
        SectionKind kind,
        double a,
        double b,
        double r,
        string refusal
    )
    {
        bool made = Section.TryMake(
            kind,
            Length.FromMm(a),
            Length.FromMm(b),
            Length.FromMm(r),
            out Section? section,
            out string? why
        );

        Assert.False(made);
        Assert.Null(section);
        Assert.Equal(refusal, why);
    }

    [Fact]
    public void A_teardrop_by_its_radii_is_the_teardrop_by_its_width()
    {
        Assert.True(
            TeardropSection.TryMakeFromRadii(
                Length.FromMm(44m),
                Length.FromMm(9m),
                Length.FromMm(2.5m),
                out TeardropSection? byRadii,
                out _
            )
        );

        Assert.Equal(Make.Teardrop(44, 18, 2.5), byRadii);
    }

    [Fact]
    public void A_width_of_an_odd_number_of_nanometres_is_kept_whole()
    {
        Length seventeen64ths = new(17 * 396_875L);
        Assert.True(
            TeardropSection.TryMake(
                new Length(40_000_000),
                seventeen64ths,
                Length.Zero,
                out TeardropSection? section,
                out _
            )
        );

        Assert.Equal(seventeen64ths, section.EyeWidth);
    }

    [Fact]
    public void Two_sections_of_the_same_figures_are_equal_and_of_others_are_not()
    {
        Assert.Equal(Make.Rectangle(40, 16, 3), Make.Rectangle(40, 16, 3));
        Assert.NotEqual(Make.Rectangle(40, 16, 3), Make.Rectangle(40, 16, 3.000001));
        Assert.NotEqual(Make.Oval(40, 16), Make.Rectangle(40, 16, 0));
    }
}
