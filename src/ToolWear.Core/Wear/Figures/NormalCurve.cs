using System.Numerics;
using System.Runtime.CompilerServices;
using MathNet.Numerics.Distributions;

namespace ToolWear.Core.Wear.Figures;

// J. F. Hart et al. (1968), Computer Approximations, algorithm 5666, and Laplace's continued fraction for the tail:
//   z = |x| < 5:     Phi(-z) = exp(-z^2/2) (p6 z^6 + ... + p0) / (q7 z^7 + ... + q0)
//   else             Phi(-z) = exp(-z^2/2) / sqrt(2 pi) / (z + 1/(z + 2/(z + 3/(z + ...))))
/// <summary>Phi, the chance that a standard normal number lies below x; to 1e-15, and to ten digits however far
/// out.</summary>
internal static class NormalCurve
{
    private const double TailBegins = 5;
    private const int TailTerms = 12;

    // from here on Phi is 1 to the last digit, and from there on exp(-z^2/2) is 0
    private const double AllBelow = 8.3;
    private const double AllAbove = 40;
    private const double Farthest = 1e-12;
    private const double RootOfTwoPi = 2.5066282746310002;

    internal static double Phi(double x) => Phi(new Vector<double>(x))[0];

    /// <summary>Where Phi is p, 0 to 1.</summary>
    internal static double Inverse(double p) => Normal.InvCDF(0, 1, p);

    // in parts of the normal number that p stands for: a range f times as wide ends where f times as much is asked
    /// <summary>The chance that has to be asked for, so that a range that ends at p becomes f times as wide.</summary>
    internal static double Widened(double p, double f) =>
        f == 1 || p is <= 0 or >= 1 ? p : Math.Clamp(Phi(f * Inverse(p)), Farthest, 1 - Farthest);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector<double> Phi(Vector<double> x)
    {
        if (Vector.GreaterThanAll(x, new Vector<double>(AllBelow)))
        {
            return Vector<double>.One;
        }

        Vector<double> z = Vector.Abs(x);
        Vector<double> exp = Vector.Exp(z * z * -0.5);
        // above the middle the tail is only taken away from one, where the middle's form is right to 1e-15 too
        Vector<double> below = Vector.GreaterThanAll(x, new Vector<double>(-TailBegins))
            ? exp * Middle(z)
            : Vector.ConditionalSelect(
                Vector.LessThan(z, new Vector<double>(TailBegins)),
                exp * Middle(z),
                exp * Tail(z)
            );
        return Vector.ConditionalSelect(Vector.GreaterThan(x, Vector<double>.Zero), Vector<double>.One - below, below);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Middle(Vector<double> z)
    {
        Vector<double> p = (z * 3.52624965998911e-2) + new Vector<double>(0.700383064443688);
        p = (p * z) + new Vector<double>(6.37396220353165);
        p = (p * z) + new Vector<double>(33.912866078383);
        p = (p * z) + new Vector<double>(112.079291497871);
        p = (p * z) + new Vector<double>(221.213596169931);
        p = (p * z) + new Vector<double>(220.206867912376);
        Vector<double> q = (z * 8.83883476483184e-2) + new Vector<double>(1.75566716318264);
        q = (q * z) + new Vector<double>(16.064177579207);
        q = (q * z) + new Vector<double>(86.7807322029461);
        q = (q * z) + new Vector<double>(296.564248779674);
        q = (q * z) + new Vector<double>(637.333633378831);
        q = (q * z) + new Vector<double>(793.826512519948);
        q = (q * z) + new Vector<double>(440.413735824752);
        return p / q;
    }

    // The fraction as numerator over denominator, N1/N2 with Nk = z N(k+1) + k N(k+2), which divides only once.
    private static Vector<double> Tail(Vector<double> z)
    {
        Vector<double> near = Vector.Min(z, new Vector<double>(AllAbove));
        Vector<double> under = Vector<double>.One;
        Vector<double> over = near;
        for (int k = TailTerms; k >= 1; k--)
        {
            (over, under) = ((near * over) + (new Vector<double>(k) * under), over);
        }

        return under / (over * RootOfTwoPi);
    }
}
