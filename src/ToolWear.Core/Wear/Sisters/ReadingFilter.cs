using System.Numerics;
using System.Runtime.CompilerServices;

namespace ToolWear.Core.Wear.Sisters;

// Scalar Kalman filter of the wear, in shares of the limit, with a two-component moment-matched update, at neighbouring
// lambdas. A reading is N(m, P + R1) with chance .95, and with chance .05 a gross error, N(m, P + R1 + .5^2).
//   start:    m = x0,  P = (.5 sigma)^2 + v_r
//   advance:  m += d;  P += phi d + c
//   read x:   e = x - m;  V1 = P + R1;  V2 = V1 + .25
//             a1 = .95 exp(-e^2/2V1)/sqrt V1;  a2 = .05 exp(-e^2/2V2)/sqrt V2;  s = max(a1+a2, 1e-300);  w = a1/s
//             K1 = P/V1;  K2 = P/V2;  m1 = m + K1 e;  m2 = m + K2 e;  mb = w m1 + (1-w) m2
//             P = w[P(1-K1)+(m1-mb)^2] + (1-w)[P(1-K2)+(m2-mb)^2];  m = mb
// With 1/V1 - 1/V2 = .25/(V1 V2) the exponent of a2 comes out of the sum, so that no exp can vanish:
//   ln(a1+a2) = ln(.95 exp(-e^2 .125/(V1 V2))/sqrt V1 + .05/sqrt V2) - e^2/2V2
// and with m1 - mb = (1-w)(K1-K2)e, m2 - mb = -w(K1-K2)e:
//   P = P(1 - w K1 - (1-w) K2) + w (1-w) ((K1-K2) e)^2
/// <summary>The wear as the readings so far tell it.</summary>
/// <param name="m">Mean of the wear at each lambda.</param>
/// <param name="P">Variance of the wear at each lambda.</param>
internal readonly ref struct ReadingFilter(Span<float> m, Span<float> P)
{
    private const float Sound = 0.95f;
    private const float Gross = 0.05f;
    private const float GrossVariance = 0.25f;
    private const float LogFloor = -690.7755f;

    private readonly Span<float> m = m;
    private readonly Span<float> P = P;

    /// <summary>Begins a stretch at the wear x0.</summary>
    internal void Start(double x0, double sigma, double v_r)
    {
        m.Fill((float)x0);
        P.Fill((float)((0.25 * sigma * sigma) + v_r));
    }

    /// <summary>Lets the wear grow by d, and its variance by c beside.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Advance(ReadOnlySpan<float> d, double phi, double c)
    {
        for (int l = 0; l < m.Length; l += Vectors.Width)
        {
            Vector<float> rise = new(d[l..]);
            (new Vector<float>(m[l..]) + rise).CopyTo(m[l..]);
            (new Vector<float>(P[l..]) + (rise * (float)phi) + new Vector<float>((float)c)).CopyTo(P[l..]);
        }
    }

    /// <summary>Takes a reading in.</summary>
    /// <param name="x">The reading.</param>
    /// <param name="R1">Variance of a sound reading about the wear.</param>
    /// <param name="loglik">Its ln s is added here.</param>
    /// <param name="w">Where the chance goes that it is sound.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Read(double x, double R1, Span<float> loglik, Span<float> w)
    {
        for (int l = 0; l < m.Length; l += Vectors.Width)
        {
            Vector<float> mean = new(m[l..]);
            Vector<float> variance = new(P[l..]);
            Vector<float> e = new Vector<float>((float)x) - mean;
            Vector<float> V1 = variance + new Vector<float>((float)R1);
            Vector<float> i1 = Vector<float>.One / V1;
            Vector<float> i2 = Vector<float>.One / (V1 + new Vector<float>(GrossVariance));
            Vector<float> e2 = e * e * i2;
            Vector<float> a1 = Vector.Exp(e2 * i1 * (GrossVariance / -2)) * Vector.SquareRoot(i1) * Sound;
            Vector<float> s = a1 + (Vector.SquareRoot(i2) * Gross);
            Vector<float> one = a1 / s;
            Vector<float> other = Vector<float>.One - one;
            Vector<float> lns = Vector.Max(Vector.Log(s) - (e2 * 0.5f), new Vector<float>(LogFloor));
            Vector<float> K1 = variance * i1;
            Vector<float> K2 = variance * i2;
            Vector<float> K = (one * K1) + (other * K2);
            Vector<float> apart = (K1 - K2) * e;
            (new Vector<float>(loglik[l..]) + lns).CopyTo(loglik[l..]);
            one.CopyTo(w[l..]);
            (mean + (K * e)).CopyTo(m[l..]);
            (variance - (variance * K) + (one * other * apart * apart)).CopyTo(P[l..]);
        }
    }
}
