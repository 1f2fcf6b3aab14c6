using System.Numerics;
using System.Runtime.CompilerServices;

namespace ToolWear.Core.Wear.Sisters;

// G(u) = u^b,   Ginv(x) = x^(1/b),   prior in proportion to exp(-((ln b)/.2)^2/2)
/// <summary>Wear as a power of the heats.</summary>
/// <param name="b">The power, above zero.</param>
internal sealed class PowerCurve(double b) : WearCurve
{
    private const double SpreadOfLogPower = 0.2;

    internal override double Power => b;

    internal override double LogPrior => -Math.Pow(Math.Log(b) / SpreadOfLogPower, 2) / 2;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal override void Mean(ReadOnlySpan<double> u, Span<double> G)
    {
        int l = 0;
        for (; l <= u.Length - Vector<double>.Count; l += Vector<double>.Count)
        {
            Vector<double> U = new(u[l..]);
            Vector<double> power = Vector.Exp(b * Vector.Log(U));
            // ln 0 is minus infinity; 0^b is said outright
            Vector
                .ConditionalSelect(Vector.GreaterThan(U, Vector<double>.Zero), power, Vector<double>.Zero)
                .CopyTo(G[l..]);
        }

        for (; l < u.Length; l++)
        {
            G[l] = Math.Pow(u[l], b);
        }
    }

    internal override double Inverse(double x) => x > 0 ? Math.Pow(x, 1 / b) : 0;
}
