using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ToolWear.Core.Wear.Sisters;

// Scalar Kalman filter of the wear, in shares of the limit, with a two-component moment-matched update; the lanes of a
// vector are neighbouring lambdas. A reading is N(m, P + R1) with chance .95, and with chance .05 a gross error,
// N(m, P + R1 + .5^2).
//   start:    m = x0,  P = P0 = (.5 sigma)^2 + v_r,  R1 = sigma^2 + v_r
//   advance:  m += d;  P += phi d
//   read x:   e = x - m;  V1 = P + R1;  V2 = V1 + .25
//             a1 = .95 exp(-e^2/2V1)/sqrt V1;  a2 = .05 exp(-e^2/2V2)/sqrt V2;  loglik += ln(a1+a2);  w = a1/(a1+a2)
//             K1 = P/V1;  K2 = P/V2;  m1 = m + K1 e;  m2 = m + K2 e;  mb = w m1 + (1-w) m2
//             P = w[P(1-K1)+(m1-mb)^2] + (1-w)[P(1-K2)+(m2-mb)^2];  m = mb
/// <summary>What the readings so far say of the wear, at neighbouring lambdas.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct ReadingFilter
{
    private const double Sound = 0.95;
    private const double Gross = 0.05;
    private const double GrossVariance = 0.25;
    private const double Floor = 1e-300;

    /// <summary>Mean of the wear.</summary>
    internal Vector<double> m;

    /// <summary>Variance of the wear.</summary>
    internal Vector<double> P;

    /// <summary>Variance of a sound reading about the wear.</summary>
    internal static double R1(double sigma, double v_r) => (sigma * sigma) + v_r;

    /// <summary>Begins a segment at the wear x0.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Start(double x0, double sigma, double v_r)
    {
        m = new Vector<double>(x0);
        P = new Vector<double>((0.25 * sigma * sigma) + v_r);
    }

    /// <summary>Lets the wear grow by d.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Advance(Vector<double> d, double phi)
    {
        m += d;
        P += phi * d;
    }

    /// <summary>Takes a reading in and gives a1+a2, its density up to a constant, and w, the chance that it is sound.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Vector<double> Read(double x, double R1, out Vector<double> w)
    {
        Vector<double> e = new Vector<double>(x) - m;
        Vector<double> V1 = P + new Vector<double>(R1);
        Vector<double> V2 = V1 + new Vector<double>(GrossVariance);
        Vector<double> halfSquare = e * e * -0.5;
        Vector<double> a1 = Sound * Vector.Exp(halfSquare / V1) / Vector.SquareRoot(V1);
        Vector<double> a2 = Gross * Vector.Exp(halfSquare / V2) / Vector.SquareRoot(V2);
        Vector<double> density = Vector.Max(a1 + a2, new Vector<double>(Floor));
        w = a1 / density;
        Vector<double> v = Vector<double>.One - w;
        Vector<double> K1 = P / V1;
        Vector<double> K2 = P / V2;
        Vector<double> m1 = m + (K1 * e);
        Vector<double> m2 = m + (K2 * e);
        Vector<double> mb = (w * m1) + (v * m2);
        P =
            (w * ((P * (Vector<double>.One - K1)) + ((m1 - mb) * (m1 - mb))))
            + (v * ((P * (Vector<double>.One - K2)) + ((m2 - mb) * (m2 - mb))));
        m = mb;
        return density;
    }
}
