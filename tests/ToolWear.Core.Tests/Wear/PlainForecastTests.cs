using ToolWear.Core.Wear;
using ToolWear.Testing.Wear;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

public sealed class PlainForecastTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 20)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_fast_sums_agree_with_plain_loops(int seed)
    {
        List<WearHistory> kind = SimulatedKind.Of(seed, 1 + (seed % 4), 1 + (seed % 2));
        SisterForecast forecast = Assert.IsType<SisterForecast>(SisterForecasts.Of(kind).Tools[0]);
        PlainForecast plain = new(kind, 0);
        double F0 = plain.F(0);
        Near.Either(F0, forecast.ChancePastLimitNow, 1e-6, 1e-9, "F0");
        Near.Either(plain.WearNowMm, forecast.WearNowMm, 1e-6, 1e-9, "wear now");
        HeatsLeft left = forecast.HeatsLeftIfNotPast;
        Check(0.05, left.Q05);
        Check(0.10, left.Q10);
        Check(0.50, left.Q50);
        Check(0.90, left.Q90);
        Check(0.95, left.Q95);

        // within 1e-6 of the heats the plain chance passes p
        void Check(double p, double? k)
        {
            double wanted = F0 + (p * (1 - F0));
            Assert.True(plain.F(k!.Value * (1 - 1e-6)) < wanted, $"{p}: {k} is too long");
            Assert.True(plain.F(k.Value * (1 + 1e-6)) > wanted, $"{p}: {k} is too short");
        }
    }
}
