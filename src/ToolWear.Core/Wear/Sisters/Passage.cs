using System.Runtime.InteropServices;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Sisters;

// In one cell the wear after a rise d of the curve is past the limit with chance
//   Phi((m' + d - 1)/sqrt(P' + c + phi d + .01 d^2)),  set equal to a chance p with z = Phi^-1(p), r = 1 - m':
//   (1 - .01 z^2) d^2 - (2r + z^2 phi) d + r^2 - z^2 (P' + c) = 0,  the larger root for z >= 0, else the smaller
// then k from  G(u0 + n/N) = g(now) + d
/// <summary>After how many more heats a tool of one cell has passed its limit with a given chance.</summary>
/// <param name="m">Mean of the wear now, in shares of the limit.</param>
/// <param name="P">Its variance.</param>
/// <param name="phi">The cell's phi.</param>
/// <param name="g">Where the curve stands now.</param>
/// <param name="Shape">The curve.</param>
/// <param name="Lambda">ln(N/N0).</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Passage(double m, double P, double phi, double g, Shape Shape, double Lambda)
{
    /// <summary>k of the chance p, 0 where it is past already, at most <see cref="HeatsLeft.Most"/>.</summary>
    internal double Heats(double p, ToolRecord tool)
    {
        double z = NormalCurve.Inverse(p);
        double r = 1 - m;
        if (-r >= z * Math.Sqrt(P))
        {
            return 0;
        }

        double z2 = z * z;
        double V = P + tool.Last.c(Shape, double.MaxValue) - tool.Last.c(Shape, tool.Now);
        double A = 1 - (Mixture.OffTheCurve * z2);
        double B = r + (z2 * phi / 2);
        double root = Math.Sqrt(Math.Max(0, (B * B) - (A * ((r * r) - (z2 * V)))));
        double d = Math.Max(0, (z >= 0 ? B + root : B - root) / A);
        double u = Shape.Inverse(g + d) - Shape.Inverse(tool.Last.x0);
        double k = (u * tool.N0 * Math.Exp(Lambda)) - tool.Now;
        return Math.Clamp(k, 0, HeatsLeft.Most);
    }
}
