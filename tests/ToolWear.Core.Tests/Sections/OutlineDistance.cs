using ToolWear.Core.Sections;

namespace ToolWear.Core.Tests.Sections;

/// <summary>
/// How deep a point lies inside a section (below zero: how far outside), from circles and straight lines alone: an
/// independent way to containment, which shares nothing with the support function.
/// </summary>
internal static class OutlineDistance
{
    public static double DepthMm(Section section, double x, double y) =>
        section switch
        {
            RoundSection round => (round.Diameter.Mm / 2) - double.Hypot(x, y),
            RectangleSection rectangle => OfRectangle(rectangle, Math.Abs(x), Math.Abs(y)),
            TeardropSection teardrop => OfTeardrop(teardrop, x, Math.Abs(y)),
            OvalSection oval => OfOval(oval, Math.Abs(x), Math.Abs(y)),
            _ => throw new InvalidOperationException("no such section"),
        };

    /// <summary>Points on the outline: arcs of circles by angle, an oval by its own parameter.</summary>
    public static IEnumerable<(double X, double Y)> Points(Section section, int n)
    {
        for (int i = 0; i <= n; i++)
        {
            double t = Math.PI * i / n;
            double c = Math.Cos(t);
            double s = Math.Sin(t);
            switch (section)
            {
                case RoundSection round:
                    yield return (round.Diameter.Mm / 2 * c, round.Diameter.Mm / 2 * s);
                    break;
                case OvalSection oval:
                    yield return (oval.A.Mm / 2 * c, oval.B.Mm / 2 * s);
                    break;
                case RectangleSection rectangle:
                    double r = rectangle.EdgeRadius.Mm;
                    yield return (((rectangle.A.Mm / 2) - r) + (r * Math.Abs(c)), ((rectangle.B.Mm / 2) - r) + (r * s));
                    yield return (
                        -((rectangle.A.Mm / 2) - r) - (r * Math.Abs(c)),
                        ((rectangle.B.Mm / 2) - r) + (r * s)
                    );
                    break;
                case TeardropSection teardrop:
                    // whole circles: what of them is not on the outline lies inside it, and can bind nowhere
                    double rho = teardrop.NoseRadius.Mm;
                    double R = teardrop.EyeWidth.Mm / 2;
                    yield return ((teardrop.A.Mm / 2) - rho + (rho * c), rho * s);
                    yield return (R - (teardrop.A.Mm / 2) + (R * c), R * s);
                    break;
                default:
                    throw new InvalidOperationException("no such section");
            }
        }
    }

    private static double OfRectangle(RectangleSection rectangle, double x, double y)
    {
        double r = rectangle.EdgeRadius.Mm;
        double dx = x - ((rectangle.A.Mm / 2) - r);
        double dy = y - ((rectangle.B.Mm / 2) - r);
        double outside = double.Hypot(Math.Max(dx, 0), Math.Max(dy, 0));
        return r - outside - Math.Min(Math.Max(dx, dy), 0);
    }

    // back circle, nose circle and the straight line that touches both
    private static double OfTeardrop(TeardropSection teardrop, double x, double y)
    {
        double R = teardrop.EyeWidth.Mm / 2;
        double rho = teardrop.NoseRadius.Mm;
        double back = R - (teardrop.A.Mm / 2);
        double nose = (teardrop.A.Mm / 2) - rho;
        double sin = (R - rho) / (nose - back);
        double cos = Math.Sqrt(1 - (sin * sin));

        // along the line from where it leaves the back circle to where it meets the nose circle
        double along = ((x - back) * cos) - (y * sin);
        if (along < 0)
        {
            return R - double.Hypot(x - back, y);
        }

        return along > (nose - back) * cos ? rho - double.Hypot(x - nose, y) : R - (((x - back) * sin) + (y * cos));
    }

    // by the nearest of many chords; the sign by the equation of the ellipse
    private static double OfOval(OvalSection oval, double x, double y)
    {
        const int chords = 2000;
        double a = oval.A.Mm / 2;
        double b = oval.B.Mm / 2;
        double nearest = double.MaxValue;
        for (int i = 0; i < chords; i++)
        {
            double t = Math.PI / 2 * i / chords;
            double u = Math.PI / 2 * (i + 1) / chords;
            (double px, double py) = (a * Math.Cos(t), b * Math.Sin(t));
            (double qx, double qy) = (a * Math.Cos(u) - px, b * Math.Sin(u) - py);
            double share = Math.Clamp((((x - px) * qx) + ((y - py) * qy)) / ((qx * qx) + (qy * qy)), 0, 1);
            nearest = Math.Min(nearest, double.Hypot(x - px - (share * qx), y - py - (share * qy)));
        }

        return ((x * x) / (a * a)) + ((y * y) / (b * b)) <= 1 ? nearest : -nearest;
    }
}
