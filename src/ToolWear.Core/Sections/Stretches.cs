using MathNet.Numerics.Integration;

namespace ToolWear.Core.Sections;

/// <summary>The volume between two stations of a body.</summary>
internal static class Stretches
{
    // exact for the square law of rounds, rectangles and ovals; teardrops come to 1e-12 of their volume
    private const int Order = 20;

    /// <summary>The volume between two stations.</summary>
    /// <param name="from">One station.</param>
    /// <param name="to">The next.</param>
    /// <returns>The volume in mm3, zero where both lie at one place.</returns>
    public static double VolumeMm3(Station from, Station to)
    {
        double l = (to.FromMark - from.FromMark).Mm;
        if (l == 0)
        {
            return 0;
        }

        return from.Section.Kind == to.Section.Kind
            ? l * GaussLegendreRule.Integrate(share => from.Section.AreaTowardsMm2(to.Section, share), 0, 1, Order)
            : HullVolumeMm3(from.Section, to.Section, l);
    }

    // The section part way along the hull of two faces is (1 - s) A + s B in Minkowski's sense, its area
    // (1 - s)^2 A + 2 s (1 - s) V(A, B) + s^2 B; over the length l that makes l (A + V + B) / 3. The mixed area V is the
    // integral of h_A h_B - h_A' h_B' over half a turn (R. Schneider, Convex Bodies, 5.1).
    private static double HullVolumeMm3(Section from, Section to, double l)
    {
        double[] ends = Room.Kinks(from.UpperArcs(), to.UpperArcs());
        double v = 0;
        for (int i = 1; i < ends.Length; i++)
        {
            double middle = (ends[i - 1] + ends[i]) / 2;
            v += GaussLegendreRule.Integrate(
                t => (from.SupportMm(t) * to.SupportMm(t)) - (SlopeMm(from, t, middle) * SlopeMm(to, t, middle)),
                ends[i - 1],
                ends[i],
                64
            );
        }

        return l * (from.AreaMm2() + v + to.AreaMm2()) / 3;
    }

    // h'(t) on the arc that holds the middle of the stretch
    private static double SlopeMm(Section section, double t, double middle)
    {
        foreach (OutlineArc arc in section.UpperArcs())
        {
            if (middle <= arc.ToRad)
            {
                return (arc.CentreYMm * Math.Cos(t)) - (arc.CentreXMm * Math.Sin(t));
            }
        }

        // an oval: h' = ((b/2)^2 - (a/2)^2) sin t cos t / h
        double a = section.EyeLength.Mm / 2;
        double b = section.EyeWidth.Mm / 2;
        return ((b * b) - (a * a)) * Math.Sin(t) * Math.Cos(t) / section.SupportMm(t);
    }
}
