using System.Globalization;
using CsCheck;
using ToolWear.Core.Eyes;
using ToolWear.Core.Tests.Sections;
using Xunit;

namespace ToolWear.Core.Tests.Eyes;

public sealed class ShrinkageTests
{
    // EN 1993-1-2:2005, 3.4.1.1: reference-data/steel_thermal_elongation_en1993.csv
    [Fact]
    public void Steel_lengthens_as_the_table_of_the_standard_says()
    {
        foreach (string[] row in ReferenceRows.Of("steel_thermal_elongation_en1993.csv"))
        {
            SteelTemperature hot = SteelTemperature.Of(Number(row[0]));
            KnockOut coldDrift = new(SteelTemperature.Of(20), hot);

            Assert.Equal(Number(row[1]), hot.Elongation, 5.1e-8);
            Assert.Equal(Number(row[3]), coldDrift.EyeMm(50), 5.1e-5);
            Assert.Equal(Number(row[2]), 1 - coldDrift.EyeMm(1), 5.1e-8);
        }
    }

    // EN 1993-1-2:2005, 3.4.1.1, equation 3.1c by hand, between the rows of the table
    [Theory]
    [InlineData(861, 0.01102)]
    [InlineData(880, 0.01140)]
    public void Above_860_steel_lengthens_again(double celsius, double elongation) =>
        Assert.Equal(elongation, SteelTemperature.Of(celsius).Elongation, 1e-12);

    // but for the standard's own step back of 8.4e-6 at 750 C
    [Fact]
    public void Steel_only_lengthens_as_it_gets_hotter() =>
        Gen.Select(Gen.Double[20, 1199], Gen.Double[0, 1])
            .Sample(
                (t, more) =>
                    Assert.True(SteelTemperature.Of(t).Elongation <= SteelTemperature.Of(t + more).Elongation + 8.41e-6)
            );

    // EN 1993-1-2, 3.4.1.1, by hand: just below 750 C e is 0.009 + 0.00225 - 0.0002416 = 0.0110084, from there on 0.0110
    [Fact]
    public void The_standards_own_step_at_750_is_kept()
    {
        Assert.Equal(0.0110084, SteelTemperature.Of(750 - 1e-9).Elongation, 1e-12);
        Assert.Equal(0.0110000, SteelTemperature.Of(750).Elongation, 1e-15);
        Assert.Equal(0.0110000, SteelTemperature.Of(860).Elongation, 1e-15);
    }

    // by hand: 50 / (1 + 2e-5 x 1000 - 6.2e-3) = 50 / 1.0138 = 49.3194
    [Fact]
    public void A_cold_section_of_50_in_an_eye_at_1000_gives_49_319() =>
        Assert.Equal(49.319, new KnockOut(SteelTemperature.Of(20), SteelTemperature.Of(1000)).EyeMm(50), 5e-4);

    // worked by hand: 36.79 x 17.64 makes 36.50 x 17.50 at drift 250, eye 750 C; the ratio is 1.0080
    [Fact]
    public void A_finish_drift_at_250_makes_an_eye_at_750_that_is_0_8_percent_smaller()
    {
        EyeSize eye = KnockOut.Finish.Eyes(new EyeSize(36.79, 17.64));

        Assert.Equal(36.50, eye.LengthMm, 0.005);
        Assert.Equal(17.50, eye.WidthMm, 0.005);
        Assert.Equal(1.0080, KnockOut.Finish.DriftMm(1), 5e-5);
    }

    // EN 1993-1-2, 3.4.1.1, by hand: e(200) = 0.0023184, so a 36.5 mm drift reads 0.085 mm large
    [Fact]
    public void A_drift_measured_at_200_reads_0_085_mm_large() =>
        Assert.Equal(0.085, 36.5 * SteelTemperature.Of(200).Elongation, 5e-4);

    [Fact]
    public void The_drift_for_an_eye_makes_that_eye() =>
        Gen.Select(Gen.Double[20, 1200], Gen.Double[20, 1200], Gen.Double[1, 200])
            .Sample(
                (drift, eye, mm) =>
                {
                    KnockOut knockOut = new(SteelTemperature.Of(drift), SteelTemperature.Of(eye));
                    Assert.Equal(mm, knockOut.EyeMm(knockOut.DriftMm(mm)), 1e-12 * mm);
                }
            );

    [Fact]
    public void An_unset_temperature_is_cold()
    {
        Assert.Equal(20, default(SteelTemperature).Celsius);
        Assert.Equal(0, default(SteelTemperature).Elongation, 1e-12);
    }

    [Theory]
    [InlineData(19.9, "The eye must be 20 to 1200 C; 19.9 is not.")]
    [InlineData(1201, "The eye must be 20 to 1200 C; 1201 is not.")]
    [InlineData(double.NaN, "The eye must be 20 to 1200 C, and a number.")]
    public void A_temperature_outside_the_standard_is_refused(double celsius, string refusal)
    {
        Assert.False(SteelTemperature.TryMake("The eye", celsius, out _, out string? why));
        Assert.Equal(refusal, why);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
