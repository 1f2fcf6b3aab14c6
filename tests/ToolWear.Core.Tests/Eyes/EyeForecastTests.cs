using CsCheck;
using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using Xunit;

namespace ToolWear.Core.Tests.Eyes;

public sealed class EyeForecastTests
{
    private static readonly EyeSize Drift = new(36.6, 17.5);

    [Fact]
    public void Below_three_measured_eyes_the_prediction_stands()
    {
        EyeForecast forecast = EyeForecast.For(Drift, KnockOut.Finish, [Eye(0.4, 0.3), Eye(0.5, 0.3)]);

        NotEnoughData missing = Assert.IsType<NotEnoughData>(forecast.FoundLengthMm);
        Assert.Equal(2, missing.Has);
        Assert.Equal(3, missing.Needs);
        Assert.Equal(KnockOut.Finish.Eyes(Drift), forecast.Eye);
        Assert.Equal("predicted 36.3", forecast.LengthInWords());
    }

    // by hand: drift less eye 0.3 0.4 0.5, mean 0.4, standard deviation 0.1; Student's t with 2 degrees, 0.95: 2.919986
    // (NIST/SEMATECH e-Handbook, 1.3.6.7.2: 2.920)
    [Fact]
    public void From_three_measured_eyes_on_the_shops_own_allowance_replaces_it()
    {
        EyeForecast forecast = EyeForecast.For(Drift, KnockOut.Finish, [Eye(0.3, 0.2), Eye(0.4, 0.2), Eye(0.5, 0.2)]);

        Estimate length = Assert.IsType<Estimate>(forecast.FoundLengthMm);
        Assert.Equal(36.2, length.Value, 1e-9);
        double half = 2.919986 * 0.1 * Math.Sqrt(1 + (1 / 3.0));
        Assert.Equal(36.2 - half, length.Low90, 1e-6);
        Assert.Equal(36.2 + half, Assert.NotNull(length.High90), 1e-6);
        Assert.Equal(36.2, forecast.Eye.LengthMm, 1e-9);
        Assert.Equal(17.3, forecast.Eye.WidthMm, 1e-9);
        Assert.Equal("predicted 36.3, found 36.2 on 3 heads", forecast.LengthInWords());
        Assert.Equal("predicted 17.4, found 17.3 on 3 heads", forecast.WidthInWords());
    }

    [Fact]
    public void Limits_found_by_the_shop_are_the_eyes_limits_and_its_allowance()
    {
        Assert.True(
            ShopAllowance.TryFrom([Eye(0.3, 0.2), Eye(0.4, 0.2), Eye(0.5, 0.2)], out ShopAllowance? own, out _)
        );

        DriftLimits limits = DriftLimits.Found(ToleranceTests.Tolerance(35.7m, 36.9m, 16.7m, 17.9m), own);

        Assert.Equal(36.1, limits.Least.LengthMm, 1e-9);
        Assert.Equal(37.3, limits.Greatest.LengthMm, 1e-9);
        Assert.Equal(16.9, limits.Least.WidthMm, 1e-9);
        Assert.Equal(18.1, limits.Greatest.WidthMm, 1e-9);
    }

    // small samples of a known truth: the interval must hold the next eye nine times in ten
    [Fact]
    public void The_interval_holds_the_next_eye_nine_times_in_ten()
    {
        Random chance = new(20);
        const int shops = 4000;
        int held = 0;
        for (int shop = 0; shop < shops; shop++)
        {
            MeasuredEye[] eyes = [.. Enumerable.Range(0, 4).Select(_ => Eye(0.4 + (0.08 * Normal(chance)), 0.2))];
            Assert.True(ShopAllowance.TryFrom(eyes, out ShopAllowance? own, out _));
            Estimate next = own.NextLengthMm(Drift.LengthMm);
            double truth = Drift.LengthMm - 0.4 - (0.08 * Normal(chance));
            held += truth >= next.Low90 && truth <= next.High90 ? 1 : 0;
        }

        // four standard deviations of a count of 4000 at 0.9
        Assert.Equal(0.9, held / (double)shops, 4 * Math.Sqrt(0.09 / shops));
    }

    private static MeasuredEye Eye(double shorter, double narrower) => new(Drift, Drift.Less(shorter, narrower));

    private static double Normal(Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
