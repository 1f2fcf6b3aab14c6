using System.Globalization;
using CsCheck;
using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Tests.Sections;
using Xunit;

namespace ToolWear.Core.Tests.Eyes;

public sealed class ToleranceTests
{
    // ISO 286-1: reference-data/iso286_it_grades_um.csv
    [Fact]
    public void Grades_are_those_of_ISO_286()
    {
        foreach (string[] row in ReferenceRows.Of("iso286_it_grades_um.csv"))
        {
            for (int grade = 11; grade <= 16; grade++)
            {
                double expectedMm = double.Parse(row[grade - 9], CultureInfo.InvariantCulture) / 1000;
                double over = double.Parse(row[0], CultureInfo.InvariantCulture) + 0.001;
                double to = double.Parse(row[1], CultureInfo.InvariantCulture);

                Assert.True(IsoGrade.TryTolerance(grade, over, out double small, out _));
                Assert.True(IsoGrade.TryTolerance(grade, to, out double large, out _));
                Assert.Equal(expectedMm, small, 1e-12);
                Assert.Equal(expectedMm, large, 1e-12);
            }
        }
    }

    // ISO 286-1: i = 0.45 D^(1/3) + 0.001 D in micrometres, times 100 160 250 400 640 1000. The standard rounds the
    // finer grades to whole micrometres, upwards where it likes (6 to 10 mm, IT7: 14.37 is 15), and repeats them times
    // ten: up to 4.4 %. Two grades lie 60 % apart.
    [Theory]
    [InlineData(3, 6)]
    [InlineData(6, 10)]
    [InlineData(10, 18)]
    [InlineData(18, 30)]
    [InlineData(30, 50)]
    [InlineData(50, 80)]
    [InlineData(80, 120)]
    public void Grades_follow_the_formula_of_the_standard_to_its_rounding(double over, double to)
    {
        double d = Math.Sqrt(over * to);
        double i = (0.45 * Math.Cbrt(d)) + (0.001 * d);
        double[] times = [100, 160, 250, 400, 640, 1000];
        for (int grade = 11; grade <= 16; grade++)
        {
            Assert.True(IsoGrade.TryTolerance(grade, to, out double toleranceMm, out _));
            Assert.Equal(times[grade - 11] * i, toleranceMm * 1000, 0.045 * times[grade - 11] * i);
        }
    }

    [Fact]
    public void A_grade_gives_half_to_each_side()
    {
        Assert.True(
            EyeTolerance.TryFromGrade(
                Length.FromMm(36.5m),
                Length.FromMm(17.5m),
                14,
                out EyeTolerance? tolerance,
                out string? refusal
            ),
            refusal
        );

        Assert.Equal(Length.FromMm(36.19m), tolerance.LeastLength);
        Assert.Equal(Length.FromMm(36.81m), tolerance.GreatestLength);
        Assert.Equal(Length.FromMm(17.285m), tolerance.LeastWidth);
        Assert.Equal(Length.FromMm(17.715m), tolerance.GreatestWidth);
    }

    [Fact]
    public void What_cannot_be_is_refused_with_the_range()
    {
        Assert.False(IsoGrade.TryTolerance(10, 30, out _, out string? grade));
        Assert.Equal("The ISO 286 grade must be 11 to 16; 10 is not.", grade);
        Assert.False(IsoGrade.TryTolerance(12, 130, out _, out string? size));
        Assert.Equal("A size with an ISO 286 grade must be 3 to 120 mm; 130 is not.", size);
        Assert.False(
            EyeTolerance.TryMake(
                Length.FromMm(37m),
                Length.FromMm(36m),
                Length.FromMm(17m),
                Length.FromMm(18m),
                out _,
                out string? figures
            )
        );
        Assert.Equal("The least length must be above 0 and below the greatest; 37 mm and 36 mm are not.", figures);
    }

    // a drift at a limit makes the eye at that limit, and one a little beyond is out
    [Fact]
    public void A_drift_inside_its_limits_makes_an_eye_inside_its_tolerance() =>
        Gen.Select(Gen.Double[20, 1200], Gen.Double[20, 1200], Gen.Double[0, 1], Gen.Double[0, 1])
            .Sample(
                (drift, eye, l, w) =>
                {
                    EyeTolerance tolerance = Tolerance(35.7m, 36.9m, 16.7m, 17.9m);
                    KnockOut knockOut = new(SteelTemperature.Of(drift), SteelTemperature.Of(eye));
                    DriftLimits limits = DriftLimits.Predicted(tolerance, knockOut);

                    EyeSize inside = new(
                        double.Lerp(limits.Least.LengthMm, limits.Greatest.LengthMm, (0.98 * l) + 0.01),
                        double.Lerp(limits.Least.WidthMm, limits.Greatest.WidthMm, (0.98 * w) + 0.01)
                    );
                    Assert.True(tolerance.Holds(knockOut.Eyes(inside)));
                    Assert.False(tolerance.Holds(knockOut.Eyes(limits.Least.Less(0.001, 0))));
                    Assert.False(tolerance.Holds(knockOut.Eyes(limits.Greatest.Less(0, -0.001))));
                }
            );

    // US Dept of Commerce, Simplified Practice Recommendation, Forged Tools, as quoted with reference-data/eye_sizes.csv:
    // eye length is 125 % of its width. Hammer eyes in print run from 1.27 to 1.45.
    [Fact]
    public void Printed_hammer_eyes_are_a_quarter_to_a_half_longer_than_wide_and_have_their_grade()
    {
        foreach (string[] row in ReferenceRows.Of("eye_sizes.csv"))
        {
            double major = double.Parse(row[1], CultureInfo.InvariantCulture);
            double minor = double.Parse(row[2], CultureInfo.InvariantCulture);

            Assert.InRange(major / minor, 1.25, 1.5);
            Assert.True(
                EyeTolerance.TryFromGrade(
                    Length.FromMm(major * 25.4),
                    Length.FromMm(minor * 25.4),
                    16,
                    out EyeTolerance? tolerance,
                    out _
                )
            );
            // the recommendation's own span, 3/32 in, is coarser than the coarsest grade
            Assert.True((tolerance.GreatestLength - tolerance.LeastLength).Inches < 3.0 / 32);
        }
    }

    internal static EyeTolerance Tolerance(decimal leastL, decimal greatestL, decimal leastW, decimal greatestW)
    {
        Assert.True(
            EyeTolerance.TryMake(
                Length.FromMm(leastL),
                Length.FromMm(greatestL),
                Length.FromMm(leastW),
                Length.FromMm(greatestW),
                out EyeTolerance? tolerance,
                out string? refusal
            ),
            refusal
        );
        return tolerance;
    }
}
