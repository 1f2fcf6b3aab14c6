using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace ToolWear.Core.Wear.Sisters;

// b2 = b1 e^d;  uk = .5^(1/b2), so that the curve bends where half of the limit is gone
//   H(u) = u^b2 for u >= uk, else .5 (u/uk)^b1
//   G(u) = a + (1-a) H(u) for u > 0, else 0
//   Ginv(x) = 0 for x <= a; else with y = (x-a)/(1-a):  y^(1/b2) for y >= .5, else uk (y/.5)^(1/b1)
//   p(shape): .3 on the straight line; .7 over all, in proportion to
//     [.87 if a = 0, .13 if a = .35] [.8 bell(ln b1,0,.2)/.2 + .2 bell(ln b1,0,.6)/.6] bell(d,.3,.35)
/// <summary>
/// The course of wear over a tool's life: G(u), the share of the limit that is gone after the share u of the life. It
/// has a first cut a, a steady part with the power b1 up to half, and a last part with the power b1 e^d.
/// </summary>
/// <param name="b1">The power of the steady part, above zero.</param>
/// <param name="d">Above zero where the last part runs faster, below where slower.</param>
/// <param name="a">The share of the limit that goes in the first heats, 0 to below 1.</param>
internal sealed record Shape(double b1, double d, double a)
{
    private readonly double b2 = b1 * Math.Exp(d);
    private readonly double uk = Math.Pow(0.5, 1 / (b1 * Math.Exp(d)));

    // ln of .5/uk^b1
    private readonly double bend = Math.Log(0.5) * (1 - Math.Exp(-d));

    /// <summary>The shapes among which the readings of a kind decide.</summary>
    internal static ImmutableArray<Shape> All { get; } =
    [
        .. from a in (double[])[0, 0.35]
        from b1 in (double[])[0.25, 0.4, 0.6, 0.8, 1, 1.25, 1.6]
        from d in (double[])[-0.4, 0, 0.4, 0.8]
        select new Shape(b1, d, a),
    ];

    /// <summary>p(shape) of each, before any reading.</summary>
    internal static ImmutableArray<double> Priors { get; } =
    [.. Grid.Normalised(All.Select(Spread)).Zip(All, (p, s) => (0.7 * p) + (s is { b1: 1, d: 0, a: 0 } ? 0.3 : 0))];

    /// <summary>c, the variance that the first cut brings: first cuts differ.</summary>
    internal double c => 0.3 * a * 0.3 * a;

    /// <summary>G at each u above zero.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Vector<double> G(Vector<double> u)
    {
        Vector<double> ln = Vector.Log(u);
        Vector<double> lnH = Vector.ConditionalSelect(
            Vector.GreaterThanOrEqual(u, new Vector<double>(uk)),
            ln * b2,
            (ln * b1) + new Vector<double>(bend)
        );
        return new Vector<double>(a) + (Vector.Exp(lnH) * (1 - a));
    }

    /// <summary>The same in the precision of the likelihoods.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Vector<float> G(Vector<float> u)
    {
        Vector<float> ln = Vector.Log(u);
        Vector<float> lnH = Vector.ConditionalSelect(
            Vector.GreaterThanOrEqual(u, new Vector<float>((float)uk)),
            ln * (float)b2,
            (ln * (float)b1) + new Vector<float>((float)bend)
        );
        return new Vector<float>((float)a) + (Vector.Exp(lnH) * (float)(1 - a));
    }

    /// <summary>Ginv(x), the share of the life after which the share x of the limit is gone.</summary>
    internal double Inverse(double x)
    {
        double y = (x - a) / (1 - a);
        return y <= 0 ? 0
            : y >= 0.5 ? Math.Pow(y, 1 / b2)
            : uk * Math.Pow(y / 0.5, 1 / b1);
    }

    private static double Spread(Shape s) =>
        (s.a == 0 ? 0.87 : 0.13)
        * ((0.8 * Grid.Bell(Math.Log(s.b1), 0, 0.2) / 0.2) + (0.2 * Grid.Bell(Math.Log(s.b1), 0, 0.6) / 0.6))
        * Grid.Bell(s.d, 0.3, 0.35);
}
