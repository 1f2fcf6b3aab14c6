using System.Collections.Immutable;
using System.Numerics;
using MathNet.Numerics;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Sisters;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

public sealed class WearCurveTests
{
    public static TheoryData<int> Curves => [.. Enumerable.Range(0, WearCurves.All.Length)];

    [Theory]
    [MemberData(nameof(Curves))]
    public void Every_curve_keeps_the_contract(int number)
    {
        WearCurve curve = WearCurves.All[number];
        double[] u = [0, 1e-6, 0.01, 0.2, 0.5, 0.9, 1, 1.1, 2, 5];
        double[] G = new double[u.Length];
        curve.Mean(u, G);
        Assert.Equal(0, G[0]);
        Assert.Equal(1, G[6], 1e-14);
        Assert.All(G.Zip(G.Skip(1)), pair => Assert.True(pair.First < pair.Second));
        for (int i = 0; i < u.Length; i++)
        {
            Near.Either(u[i], curve.Inverse(G[i]), 1e-12, 1e-300, $"inverse at {u[i]}");
        }

        Assert.Equal(0, curve.Inverse(-0.1));
        Assert.True(double.IsFinite(curve.LogPrior));
    }

    [Fact]
    public void A_power_is_a_power()
    {
        double[] G = new double[5];
        new PowerCurve(1.56).Mean([0.25, 0.5, 1, 2, 3], G);
        Assert.Equal(Math.Pow(0.25, 1.56), G[0], 1e-14);
        Assert.Equal(Math.Pow(3, 1.56), G[4], 1e-13);
    }

    [Theory]
    [InlineData(0.46)]
    [InlineData(1.0)]
    [InlineData(1.95)]
    public void A_curve_is_found_again_in_what_it_made(double power)
    {
        List<WearHistory> kind =
        [
            .. Enumerable
                .Range(0, 4)
                .Select(i =>
                    Histories.One(
                        $"T{i}",
                        60,
                        Enumerable.Range(1, 8).Select(j => (7.5 * j, 0.8 * Math.Pow(7.5 * j / (58 + (4 * i)), power))),
                        resolutionMm: 0.01
                    )
                ),
        ];
        KindTraits traits = Assert.IsType<SisterForecast>(SisterForecasts.Of(kind).Tools[0]).Traits;
        Assert.InRange(traits.Power, power * 0.85, power * 1.15);
        Assert.True(
            power < 1 ? traits.ChanceRunsIn > 0.99
            : power > 1 ? traits.ChanceSpeedsUp > 0.99
            : traits.ChanceRunsIn < 0.2
        );
    }

    [Fact]
    public void The_normal_curve_agrees_with_the_error_function_far_into_the_tail()
    {
        for (double x = -37; x < 9; x += 0.0625)
        {
            double expected = 0.5 * SpecialFunctions.Erfc(-x / Math.Sqrt(2));
            Near.Relative(expected, NormalCurve.Phi(x), 1e-10, $"Phi({x})");
            Assert.Equal(expected, NormalCurve.Phi(x), 1e-15);
        }
    }

    [Fact]
    public void The_normal_curve_of_several_numbers_at_once_is_that_of_each()
    {
        // beside each other: far below, in the tail, in the middle, far above
        double[] beside = [-45, -37, -6.5, -5, -4.99, -0.3, 0, 2, 4.99, 5, 8.29, 8.31, 38, 1e9, -1e9, 1e30, -1e30];
        double[] lanes = new double[Vector<double>.Count];
        for (int first = 0; first < beside.Length; first++)
        {
            for (int lane = 0; lane < lanes.Length; lane++)
            {
                lanes[lane] = beside[(first + (5 * lane)) % beside.Length];
            }

            Vector<double> all = NormalCurve.Phi(new Vector<double>(lanes));
            for (int lane = 0; lane < lanes.Length; lane++)
            {
                double expected = 0.5 * SpecialFunctions.Erfc(-lanes[lane] / Math.Sqrt(2));
                Assert.Equal(expected, all[lane], 1e-15);
            }
        }
    }

    [Fact]
    public void A_rising_root_is_found_or_there_is_none()
    {
        Near.Relative(Math.Sqrt(2), RisingRoot.Of(x => x * x, 2, 0, 100, 0.01), 1e-10, "root of 2");
        Near.Relative(7, RisingRoot.Of(x => x < 7 ? 0 : 1, 0.5, 0, 100, 1), 1e-9, "step");
        Assert.Null(RisingRoot.Of(x => 1 - Math.Exp(-x), 1.5, 0, 100, 1));
        Assert.Equal(3, RisingRoot.Of(x => x, 2, 3, 100, 1));
        Near.Relative(100, RisingRoot.Of(x => x, 100, 0, 100, 1), 1e-12, "the very end");
    }

    [Fact]
    public void A_distribution_on_a_grid_is_flat_inside_a_cell()
    {
        ImmutableArray<double> weight = [0, 0.25, 0.5, 0.25, 0];
        Assert.Equal(2, GridQuantiles.Of(weight.AsSpan(), 0, 1, 0.5), 1e-15);
        Assert.Equal(1.1, GridQuantiles.Of(weight.AsSpan(), 0, 1, 0.15), 1e-15);
        Assert.Equal(0.85, GridQuantiles.Above(weight.AsSpan(), 0, 1, 1.1), 1e-15);
    }
}
