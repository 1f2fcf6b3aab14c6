using System.Collections.Immutable;
using System.Numerics;
using MathNet.Numerics;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

public sealed class WearCurveTests
{
    public static TheoryData<int> Shapes => [.. Enumerable.Range(0, Shape.All.Length)];

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Every_shape_keeps_the_contract(int number)
    {
        Shape shape = Shape.All[number];
        double[] u = [1e-6, 0.01, 0.2, 0.5, 0.9, 1, 1.1, 2, 5];
        double[] G = [.. u.Select(each => shape.G(new Vector<double>(each))[0])];
        Assert.Equal(1, G[5], 1e-14);
        Assert.All(G.Zip(G.Skip(1)), pair => Assert.True(pair.First < pair.Second));
        Assert.All(G, x => Assert.True(x > shape.a));
        for (int i = 0; i < u.Length; i++)
        {
            Near.Either(u[i], shape.Inverse(G[i]), 1e-9, 1e-12, $"inverse at {u[i]}");
            Near.Relative(G[i], shape.G(new Vector<float>((float)u[i]))[0], 1e-5, $"single precision at {u[i]}");
        }

        Assert.Equal(0, shape.Inverse(-0.1));
        Assert.Equal(0, shape.Inverse(shape.a));
        Assert.True(Shape.Priors[number] > 0);
    }

    [Fact]
    public void A_shape_bends_where_half_is_gone()
    {
        Shape shape = new(0.8, 0.4, 0);
        double uk = shape.Inverse(0.5);
        double G(double u) => shape.G(new Vector<double>(u))[0];
        Near.Relative(0.5 * Math.Pow(0.5, 0.8), G(uk / 2), 1e-12, "before the bend");
        Near.Relative(Math.Pow(1.5, 0.8 * Math.Exp(0.4)), G(1.5), 1e-12, "after it");
        Assert.Equal(1, Shape.Priors.Sum(), 1e-14);
    }

    [Theory]
    [InlineData(0.6, 0, 0)]
    [InlineData(1, 0.4, 0)]
    [InlineData(1, -0.4, 0)]
    [InlineData(1, 0, 0.35)]
    public void A_shape_is_found_again_in_what_it_made(double b1, double d, double a)
    {
        Shape shape = new(b1, d, a);
        List<WearHistory> kind =
        [
            .. Enumerable
                .Range(0, 4)
                .Select(i =>
                    Histories.One(
                        $"T{i}",
                        60,
                        Enumerable
                            .Range(1, 12)
                            .Select(j => (5.0 * j, 0.8 * shape.G(new Vector<double>(5.0 * j / (58 + (4 * i))))[0])),
                        resolutionMm: 0.01
                    )
                ),
        ];
        KindTraits traits = Assert.IsType<SisterForecast>(SisterForecasts.Of(kind).Tools[0]).Traits;
        Assert.InRange(traits.Power, b1 * 0.85, b1 * 1.15);
        Assert.Equal(a > 0 ? 1 : 0, traits.ChanceOfFirstCut, 0.1);
        Assert.Equal(d > 0 ? 1 : 0, traits.ChanceOfFaster, 0.2);
        Assert.Equal(d < 0 ? 1 : 0, traits.ChanceOfSlower, 0.2);
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
    public void Quantiles_of_heats_are_found_or_there_are_none()
    {
        LogitRoots life = new(k => 1 - Math.Exp(-k / 40), 3, 20_000);
        Near.Relative(40 * Math.Log(2), life.At(0.5), 1e-8, "middle");
        Near.Relative(-40 * Math.Log(0.95), life.At(0.05), 1e-8, "low");
        Near.Relative(40 * Math.Log(20), life.At(0.95), 1e-8, "high");
        Near.Relative(7, new LogitRoots(k => k < 7 ? 0 : 1, 1, 20_000).At(0.5), 1e-7, "step");
        Assert.Null(new LogitRoots(k => 0.4 * (1 - Math.Exp(-k)), 1, 20_000).At(0.5));
        Assert.Equal(0, new LogitRoots(k => 0.4 + (0.6 * (1 - Math.Exp(-k))), 1, 20_000).At(0.3));
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
