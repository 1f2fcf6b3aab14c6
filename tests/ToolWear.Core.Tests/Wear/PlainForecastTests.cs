using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;
using ToolWear.Testing.Wear;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

public sealed class PlainForecastTests
{
    private const double Tolerance = 1e-4;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 20)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_fast_sums_agree_with_plain_loops(int seed)
    {
        List<WearHistory> kind = SimulatedKind.Of(seed, 1 + (seed % 4), 1 + (seed % 2));
        SisterForecast forecast = Assert.IsType<SisterForecast>(SisterForecasts.Of(kind).Tools[0]);
        PlainForecast plain = new(kind, 0);
        double F0 = plain.F(0);
        Assert.Equal(F0, forecast.ChancePastLimitNow, 1e-5);
        Near.Either(plain.WearNowMm, forecast.WearNowMm, Tolerance, 1e-6, "wear now");
        (double firstCut, double faster, double slower) = plain.Chances;
        Assert.Equal(firstCut, forecast.Traits.ChanceOfFirstCut, 1e-5);
        Assert.Equal(faster, forecast.Traits.ChanceOfFaster, 1e-5);
        Assert.Equal(slower, forecast.Traits.ChanceOfSlower, 1e-5);
        double tolerance = F0 < 0.5 ? Tolerance : 3e-3;
        HeatsLeft left = forecast.HeatsLeftIfNotPast;
        Check(0.05, left.Q05);
        Check(0.10, left.Q10);
        Check(0.50, left.Q50);
        Check(0.90, left.Q90);
        Check(0.95, left.Q95);

        // within the tolerance of the heats the plain chance passes p
        void Check(double p, double? k)
        {
            double wanted = F0 + (p * (1 - F0));
            Assert.True(plain.F(k!.Value * (1 - tolerance)) < wanted, $"{p}: {k} is too long");
            Assert.True(plain.F(k.Value * (1 + tolerance)) > wanted, $"{p}: {k} is too short");
        }
    }
}
