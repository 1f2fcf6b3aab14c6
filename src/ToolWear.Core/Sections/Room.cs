namespace ToolWear.Core.Sections;

/// <summary>The room g(t) = h_outer(t) - h_inner(t) - u cos t between two sections, over the upper half turn.</summary>
/// <remarks>
/// Between the ends of arcs g is smooth: a sinusoid where both sections are made of arcs, whose least value is known
/// in closed form; where an oval takes part it is searched, finely enough for any oval up to 50 times as long as wide.
/// </remarks>
internal sealed class Room
{
    private const int SearchSteps = 64;
    private readonly Section outer;
    private readonly Section inner;
    private readonly List<Stretch> stretches = [];

    /// <summary>Prepares the stretches between the ends of arcs.</summary>
    /// <param name="outer">The section that should hold the other.</param>
    /// <param name="inner">The section that should lie inside.</param>
    public Room(Section outer, Section inner)
    {
        this.outer = outer;
        this.inner = inner;
        IReadOnlyList<OutlineArc> outerArcs = outer.UpperArcs();
        IReadOnlyList<OutlineArc> innerArcs = inner.UpperArcs();
        double[] ends = Kinks(outerArcs, innerArcs);
        for (int i = 1; i < ends.Length; i++)
        {
            double middle = (ends[i - 1] + ends[i]) / 2;
            stretches.Add(new Stretch(ends[i - 1], ends[i], ArcAt(outerArcs, middle), ArcAt(innerArcs, middle)));
        }
    }

    /// <summary>The directions where the room is least within its stretch, each stretch giving at least one.</summary>
    /// <param name="u">The shift of the inner section along x.</param>
    /// <returns>The valleys, from the nose round to the back.</returns>
    public IReadOnlyList<Valley> Valleys(double u)
    {
        List<Valley> valleys = [];
        foreach (Stretch stretch in stretches)
        {
            if (stretch.Outer is { } outerArc && stretch.Inner is { } innerArc)
            {
                AddOfArcs(valleys, stretch, outerArc, innerArc, u);
            }
            else
            {
                AddBySearch(valleys, stretch, u);
            }
        }

        return valleys;
    }

    /// <summary>The directions in which a half turn has to be cut so that both supports are smooth between them.</summary>
    /// <param name="one">The arcs of one section; none for an oval.</param>
    /// <param name="other">The arcs of another.</param>
    /// <returns>Directions in order from 0 to pi, both of these and pi/2 among them.</returns>
    internal static double[] Kinks(IReadOnlyList<OutlineArc> one, IReadOnlyList<OutlineArc> other) =>
        [
            .. one.Concat(other)
                .Select(arc => arc.FromRad)
                .Append(0)
                .Append(Math.PI / 2)
                .Append(Math.PI)
                .Distinct()
                .Order(),
        ];

    private static OutlineArc? ArcAt(IReadOnlyList<OutlineArc> arcs, double t)
    {
        foreach (OutlineArc arc in arcs)
        {
            if (t <= arc.ToRad)
            {
                return arc;
            }
        }

        return null;
    }

    // g = p + q cos t + w sin t is least where (cos t, sin t) looks against (q, w), or at an end
    private static void AddOfArcs(List<Valley> valleys, Stretch stretch, OutlineArc outer, OutlineArc inner, double u)
    {
        double p = outer.RadiusMm - inner.RadiusMm;
        double q = outer.CentreXMm - inner.CentreXMm - u;
        double w = outer.CentreYMm - inner.CentreYMm;
        double against = Math.Atan2(-w, -q);
        valleys.Add(new Valley(stretch.From, p + (q * Math.Cos(stretch.From)) + (w * Math.Sin(stretch.From))));
        valleys.Add(new Valley(stretch.To, p + (q * Math.Cos(stretch.To)) + (w * Math.Sin(stretch.To))));
        if (against > stretch.From && against < stretch.To)
        {
            valleys.Add(new Valley(against, p - double.Hypot(q, w)));
        }
    }

    private void AddBySearch(List<Valley> valleys, Stretch stretch, double u)
    {
        double step = (stretch.To - stretch.From) / SearchSteps;
        double[] room = new double[SearchSteps + 1];
        for (int i = 0; i <= SearchSteps; i++)
        {
            room[i] = RoomMm(stretch.From + (i * step), u);
        }

        for (int i = 0; i <= SearchSteps; i++)
        {
            int before = Math.Max(0, i - 1);
            int after = Math.Min(SearchSteps, i + 1);
            if (room[i] <= room[before] && room[i] <= room[after])
            {
                valleys.Add(Bottom(stretch.From + (before * step), stretch.From + (after * step), u));
            }
        }
    }

    /// <summary>The room g in one direction.</summary>
    /// <param name="t">The direction in radians from +x.</param>
    /// <param name="u">The shift of the inner section along x.</param>
    /// <returns>The room in mm, below zero where the inner section stands out.</returns>
    public double RoomMm(double t, double u) => outer.SupportMm(t) - inner.SupportMm(t) - (u * Math.Cos(t));

    // golden section: within 1e-8 rad of its least g is flat to far below 1e-9 mm
    private Valley Bottom(double from, double to, double u)
    {
        double golden = (Math.Sqrt(5) - 1) / 2;
        double left = to - (golden * (to - from));
        double right = from + (golden * (to - from));
        double atLeft = RoomMm(left, u);
        double atRight = RoomMm(right, u);
        while (to - from > 1e-8)
        {
            if (atLeft <= atRight)
            {
                (to, right, atRight) = (right, left, atLeft);
                left = to - (golden * (to - from));
                atLeft = RoomMm(left, u);
            }
            else
            {
                (from, left, atLeft) = (left, right, atRight);
                right = from + (golden * (to - from));
                atRight = RoomMm(right, u);
            }
        }

        // the least is often at an end, where the golden section only comes near
        return new[] { from, (from + to) / 2, to }
            .Select(t => new Valley(t, RoomMm(t, u)))
            .MinBy(valley => valley.RoomMm);
    }

    private sealed record Stretch(double From, double To, OutlineArc? Outer, OutlineArc? Inner);
}
