using System.Runtime.InteropServices;
using MathNet.Numerics.Distributions;

namespace ToolWear.Core.Wear.Sisters;

// In one cell the wear after a rise d of the curve is past the limit with chance
//   Phi((m' + d - 1)/sqrt(P' + phi d)),  set equal to a chance p with z = Phi^-1(p), c = 1 - m':
//   d^2 - (2c + z^2 phi) d + c^2 - z^2 P' = 0,  the larger root for z >= 0, else the smaller
// then k from  G((n_eq + n)/N) = G(now) + d
/// <summary>After how many more heats a tool of one cell has passed its limit with a given chance.</summary>
/// <param name="m">Mean of the wear now, in shares of the limit.</param>
/// <param name="P">Its variance.</param>
/// <param name="GNow">Where the curve stands now.</param>
/// <param name="Phi">The node's phi.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Passage(double m, double P, double GNow, double Phi)
{
    private const double LeastVariance = 1e-12;

    /// <summary>k of the chance p, 0 where it is past already, at most <see cref="HeatsLeft.Most"/>.</summary>
    internal double Heats(double p, WearCurve curve, ToolRecord tool, double lambda)
    {
        double z = Normal.InvCDF(0, 1, p);
        double V = P + LeastVariance;
        double c = 1 - m;
        if (-c >= z * Math.Sqrt(V))
        {
            return 0;
        }

        double half = c + (z * z * Phi / 2);
        double root = Math.Abs(z) * Math.Sqrt(Math.Max(0, V + (c * Phi) + (z * z * Phi * Phi / 4)));
        double d = Math.Max(0, z >= 0 ? half + root : half - root);
        double u = curve.Inverse(GNow + d) - curve.Inverse(tool.Segments[^1].x0);
        double k = (u * tool.N0 * Math.Exp(lambda)) - tool.Now;
        return Math.Clamp(k, 0, HeatsLeft.Most);
    }
}
