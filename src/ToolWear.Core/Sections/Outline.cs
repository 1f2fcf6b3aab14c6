namespace ToolWear.Core.Sections;

/// <summary>The outline of a section as points, for drawing.</summary>
public static class Outline
{
    /// <summary>Points round the whole outline, from the nose over +y to the back and under -y back to the nose.</summary>
    /// <remarks>
    /// Every point lies on the outline; the polygon through them lies inside it, less than radius / pointsAQuarter^2
    /// away. Straight lines and sharp corners are exact.
    /// </remarks>
    /// <param name="section">The section.</param>
    /// <param name="pointsAQuarter">How many steps a quarter turn of an arc takes, 1 or more.</param>
    /// <returns>The points, the last joined to the first by the reader.</returns>
    public static IReadOnlyList<OutlinePoint> Points(Section section, int pointsAQuarter)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pointsAQuarter, 1);
        List<OutlinePoint> upper = section is OvalSection oval
            ? UpperOval(oval, pointsAQuarter)
            : UpperArcs(section, pointsAQuarter);
        IEnumerable<OutlinePoint> lower = upper
            .AsEnumerable()
            .Reverse()
            .Select(point => point with { YMm = -point.YMm });

        List<OutlinePoint> all = [];
        foreach (OutlinePoint point in upper.Concat(lower))
        {
            if (all.Count == 0 || !Same(all[^1], point))
            {
                all.Add(point);
            }
        }

        if (all.Count > 1 && Same(all[0], all[^1]))
        {
            all.RemoveAt(all.Count - 1);
        }

        return all;
    }

    private static List<OutlinePoint> UpperOval(OvalSection oval, int pointsAQuarter)
    {
        List<OutlinePoint> points = [];
        for (int i = 0; i <= 2 * pointsAQuarter; i++)
        {
            double t = Math.PI * i / (2 * pointsAQuarter);
            points.Add(new OutlinePoint(oval.A.Mm / 2 * Math.Cos(t), oval.B.Mm / 2 * Math.Sin(t)));
        }

        return points;
    }

    private static List<OutlinePoint> UpperArcs(Section section, int pointsAQuarter)
    {
        List<OutlinePoint> points = [];
        foreach (OutlineArc arc in section.UpperArcs())
        {
            double turn = arc.ToRad - arc.FromRad;
            int steps = arc.RadiusMm > 0 ? (int)Math.Ceiling(turn / (Math.PI / 2) * pointsAQuarter) : 0;
            points.Add(arc.At(arc.FromRad));
            for (int i = 1; i <= steps; i++)
            {
                points.Add(arc.At(arc.FromRad + (turn * i / steps)));
            }
        }

        return points;
    }

    // nearer than a nanometre: one point
    private static bool Same(OutlinePoint one, OutlinePoint other) =>
        Math.Abs(one.XMm - other.XMm) < 1e-6 && Math.Abs(one.YMm - other.YMm) < 1e-6;
}
