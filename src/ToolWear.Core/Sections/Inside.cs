namespace ToolWear.Core.Sections;

/// <summary>One section inside another, both lying along x and free to shift along it.</summary>
public static class Inside
{
    // two directions whose room differs by less than this share the least of it
    private const double TieMm = 1e-6;

    // the cosine of a right angle, as far as a double knows one
    private const double SquareOn = 1e-12;

    /// <summary>How much room an outer section leaves all round an inner one.</summary>
    /// <remarks>
    /// The greatest over u of f(u), f(u) = the least over t of h_outer(t) - h_inner(t) - u cos t. f is concave, for it
    /// is the least of straight lines in u, and -cos t at the least is its slope: u is found by halving on that sign.
    /// At u = 0 the ends bound it: |u| is at most h_outer(0) - h_inner(0) - f(0). Good to 1e-9 mm.
    /// </remarks>
    /// <param name="outer">The section that should hold the other.</param>
    /// <param name="inner">The section that should lie inside.</param>
    /// <returns>The clearance, below zero where the inner one stands out.</returns>
    public static Clearance Of(Section outer, Section inner)
    {
        Room room = new(outer, inner);
        double least = Least(room.Valleys(0)).RoomMm;
        double high = Math.Max(0, outer.SupportMm(0) - inner.SupportMm(0) - least);
        double low = -high;
        double u = 0;
        while (high - low > 1e-11)
        {
            u = (low + high) / 2;
            double slope = -Math.Cos(Least(room.Valleys(u)).T);
            if (Math.Abs(slope) < SquareOn)
            {
                // the cheek decides, and no shift along x changes that
                break;
            }

            if (slope > 0)
            {
                low = u;
            }
            else
            {
                high = u;
            }
        }

        IReadOnlyList<Valley> valleys = room.Valleys(u);
        double clearance = Least(valleys).RoomMm;
        NearestAt place = valleys
            .Where(valley => valley.RoomMm <= clearance + TieMm)
            .Select(valley => PlaceOf(outer, inner, u, valley.T))
            .OrderBy(Rank)
            .First();
        return new Clearance(clearance, u, place, HasLikeEnds(outer) && HasLikeEnds(inner));
    }

    private static Valley Least(IReadOnlyList<Valley> valleys) => valleys.MinBy(valley => valley.RoomMm);

    private static bool HasLikeEnds(Section section) => section is not TeardropSection;

    private static int Rank(NearestAt place) =>
        place switch
        {
            NearestAt.Nose => 0,
            NearestAt.Back => 1,
            _ => 2,
        };

    // The inner section's point that looks towards t, seen along the outer one. A cheek that lies flat against the
    // other has no single point: its middle counts.
    private static NearestAt PlaceOf(Section outer, Section inner, double u, double t)
    {
        const double aside = 1e-7;
        double x =
            u + ((PointLooking(inner, Math.Min(Math.PI, t + aside)) + PointLooking(inner, Math.Max(0, t - aside))) / 2);
        double third = outer.EyeLength.Mm / 6;
        return x > third ? NearestAt.Nose
            : x < -third ? NearestAt.Back
            : NearestAt.Cheek;
    }

    private static double PointLooking(Section section, double t)
    {
        foreach (OutlineArc arc in section.UpperArcs())
        {
            if (t <= arc.ToRad)
            {
                return arc.At(t).XMm;
            }
        }

        // an oval: x = (a/2)^2 cos t / h
        double half = section.EyeLength.Mm / 2;
        return half * half * Math.Cos(t) / section.SupportMm(t);
    }
}
