using CsCheck;
using ToolWear.Core.Sections;
using ToolWear.Testing.Generators;
using Xunit;

namespace ToolWear.Core.Tests.Sections;

public sealed class InsideTests
{
    // by hand: at u = -3.345 the corner at the nose stands out as far as the one at the back,
    // 5.8 - sqrt((4.4 + 3.345)^2 + 4.5^2) = -3.157
    [Fact]
    public void A_rectangle_before_a_teardrop_bursts_its_nose_by_3_mm()
    {
        Clearance clearance = Inside.Of(Make.Teardrop(36.8, 17.6, 3.2), Make.Rectangle(34, 15, 3));

        Assert.Equal(-3.157, clearance.ClearanceMm, 1e-3);
        Assert.Equal(-3.345, clearance.ShiftMm, 1e-3);
        Assert.Equal(NearestAt.Nose, clearance.LeastAt);
        Assert.False(clearance.Holds);
        Assert.Equal("bursts the nose by 3.2", clearance.ToWords());
    }

    [Theory]
    [InlineData(5, 4, 0.5)]
    [InlineData(4, 5, -0.5)]
    public void A_round_holds_a_smaller_round_by_half_the_difference(double outer, double inner, double expected) =>
        Assert.Equal(expected, Inside.Of(Make.Round(outer), Make.Round(inner)).ClearanceMm, 1e-9);

    [Fact]
    public void A_thin_rectangle_is_held_least_at_the_cheek()
    {
        Clearance clearance = Inside.Of(Make.Rectangle(50, 17, 0), Make.Rectangle(40, 16, 0));

        Assert.Equal(0.5, clearance.ClearanceMm, 1e-9);
        Assert.Equal(NearestAt.Cheek, clearance.LeastAt);
        Assert.Equal("inside by 0.5, least at the cheek", clearance.ToWords());
    }

    [Fact]
    public void A_round_opener_lies_at_the_back_of_a_teardrop()
    {
        Clearance clearance = Inside.Of(Make.Teardrop(40, 20, 2), Make.Round(18));

        Assert.Equal(1, clearance.ClearanceMm, 1e-9);
        Assert.Equal(-10, clearance.ShiftMm, 1e-6);
        Assert.Equal(NearestAt.Back, clearance.LeastAt);
    }

    [Fact]
    public void A_section_just_holds_itself() =>
        Make.Any.Sample(section =>
        {
            Clearance clearance = Inside.Of(section, section);

            Assert.Equal(0, clearance.ClearanceMm, 1e-9);
            Assert.True(clearance.Holds);
        });

    // The outer's depth at points of the inner's outline, from circles and straight lines: at the shift reported the
    // least depth is the clearance, and at no other shift is it more.
    [Fact]
    public void The_clearance_is_the_least_depth_of_the_outline_at_the_best_shift() =>
        Gen.Select(Make.AnyOfArcs, Make.Any)
            .Sample(
                (outer, inner) =>
                {
                    Clearance clearance = Inside.Of(outer, inner);

                    Assert.Equal(clearance.ClearanceMm, LeastDepthMm(outer, inner, clearance.ShiftMm, 700), 4e-4);
                    foreach (double aside in new[] { -3, -0.3, -0.01, 0.01, 0.3, 3 })
                    {
                        double there = LeastDepthMm(outer, inner, clearance.ShiftMm + aside, 700);
                        Assert.True(there <= clearance.ClearanceMm + 4e-4, $"{aside}: {there} > {clearance}");
                    }
                },
                iter: 60
            );

    // 10 000 pairs, the same each time: what is said to lie inside has no point outside the circles and straight lines of
    // the outer one, and what is said to burst it has one, unless both touch to within the step from point to point.
    [Fact]
    public void Containment_agrees_with_points_for_10_000_pairs()
    {
        int inside = 0;
        int outside = 0;
        foreach (
            (Section outer, Section inner) in Fixed.Samples(
                Gen.Select(Make.AnyOfArcs, Make.Any, (outer, inner) => (outer, inner)),
                10_000
            )
        )
        {
            Clearance clearance = Inside.Of(outer, inner);
            double least = LeastDepthMm(outer, inner, clearance.ShiftMm, 48);
            Assert.True(least >= clearance.ClearanceMm - 1e-9, $"{outer} {inner}: {least} < {clearance}");
            // a chord of 1/48 of half a turn lies at most r (pi / 96)^2 / 2 inside its arc
            double sagMm = inner.EyeLength.Mm + inner.EyeWidth.Mm;
            sagMm *= Math.PI * Math.PI / 96 / 96 / 2;
            Assert.True(least <= clearance.ClearanceMm + sagMm, $"{outer} {inner}: {least} > {clearance}");
            Assert.True(clearance.Holds ? least >= -1e-7 : least < sagMm);
            inside += clearance.Holds ? 1 : 0;
            outside += clearance.Holds ? 0 : 1;
        }

        Assert.True(inside > 1000 && outside > 1000, $"{inside} inside, {outside} outside");
    }

    [Fact]
    public void An_oval_holds_what_its_outline_holds() =>
        Gen.Select(Make.AnyOval, Make.Any)
            .Sample(
                (outer, inner) =>
                {
                    Clearance clearance = Inside.Of(outer, inner);

                    Assert.Equal(clearance.ClearanceMm, LeastDepthMm(outer, inner, clearance.ShiftMm, 180), 1e-2);
                    foreach (double aside in new[] { -0.5, 0.5 })
                    {
                        double there = LeastDepthMm(outer, inner, clearance.ShiftMm + aside, 90);
                        Assert.True(there <= clearance.ClearanceMm + 4e-2, $"{aside}: {there} > {clearance}");
                    }
                },
                iter: 6
            );

    // No direction has less room than the clearance, and no other shift has more. 2000 even directions come within
    // 0.0008 mm of the least room where the reach bends most, at the end of an oval 100 x 2: a^2 / 2b x step^2 / 8.
    [Fact]
    public void The_clearance_is_right_to_a_billionth_in_every_direction() =>
        Gen.Select(AnyAtAll, AnyAtAll)
            .Sample(
                (outer, inner) =>
                {
                    Clearance clearance = Inside.Of(outer, inner);
                    double u = clearance.ShiftMm;

                    Assert.InRange(LeastRoomMm(outer, inner, u) - clearance.ClearanceMm, -1e-9, 1e-3);
                    foreach (double aside in new[] { -1e-2, 1e-2 })
                    {
                        double there = LeastRoomMm(outer, inner, u + aside);
                        Assert.True(there <= clearance.ClearanceMm + 1e-3, $"{aside}: {there} > {clearance}");
                    }
                },
                iter: 60
            );

    // of one centre: least at an end or a cheek where the inner one is the more sharply curved there, else a little less
    [Theory]
    [InlineData(25.6, 17.6, 24.6, 16.6, 0.49, 5e-3)]
    [InlineData(40, 20, 30, 18, 1.0, 1e-9)]
    [InlineData(40, 20, 39, 10, 0.5, 1e-9)]
    public void An_oval_in_an_oval_is_least_at_an_axis(
        double a,
        double b,
        double c,
        double d,
        double expected,
        double within
    ) => Assert.Equal(expected, Inside.Of(Make.Oval(a, b), Make.Oval(c, d)).ClearanceMm, within);

    [Fact]
    public void Room_grows_with_the_outer_and_shrinks_with_the_inner_section() =>
        Gen.Select(Make.Any, Make.Any, Gen.Int[1, 200])
            .Sample(
                (outer, inner, more) =>
                {
                    double grownMm = more / 100.0;
                    if (Grow(outer, grownMm) is not { } larger)
                    {
                        return;
                    }

                    double before = Inside.Of(outer, inner).ClearanceMm;
                    double after = Inside.Of(larger, inner).ClearanceMm;
                    Assert.True(after >= before - 1e-9);
                    Assert.True(after <= before + (grownMm / 2) + 1e-9);
                },
                iter: 100
            );

    // flat ovals too, up to 50 times as long as wide
    private static Gen<Section> AnyAtAll { get; } =
        Gen.OneOf(
            Make.Any,
            Gen.Select(Gen.Double[10, 100], Gen.Double[1, 50], (a, ratio) => Make.Oval(a, a / ratio)),
            Gen.Select(Gen.Double[10, 100], Gen.Double[1, 50], (b, ratio) => Make.Oval(b / ratio, b))
        );

    private static double LeastRoomMm(Section outer, Section inner, double u)
    {
        const int directions = 2000;
        IEnumerable<double> even = Enumerable.Range(0, directions + 1).Select(i => Math.PI * i / directions);
        return even.Concat(SquareToTheCheek(outer))
            .Concat(SquareToTheCheek(inner))
            .Min(t => outer.SupportMm(t) - inner.SupportMm(t) - (u * Math.Cos(t)));
    }

    // a teardrop's reach has a kink there, which even steps would miss
    private static IEnumerable<double> SquareToTheCheek(Section section)
    {
        if (section is TeardropSection teardrop)
        {
            double R = teardrop.EyeWidth.Mm / 2;
            double rho = teardrop.NoseRadius.Mm;
            yield return Math.Acos((R - rho) / (teardrop.A.Mm - R - rho));
        }
    }

    private static Section? Grow(Section section, double moreMm) =>
        section is OvalSection or RoundSection
            ? Make.Of(section.Kind, section.EyeLength.Mm + moreMm, section.EyeWidth.Mm + moreMm, 0)
            : null;

    private static double LeastDepthMm(Section outer, Section inner, double shiftMm, int points) =>
        OutlineDistance.Points(inner, points).Min(point => OutlineDistance.DepthMm(outer, point.X + shiftMm, point.Y));
}
