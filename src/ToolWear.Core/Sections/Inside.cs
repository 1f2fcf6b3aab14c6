namespace ToolWear.Core.Sections;

/// <summary>One section inside another, both lying along x and free to shift along it.</summary>
public static class Inside
{
    // two directions whose room differs by less than this share the least of it
    private const double TieMm = 1e-6;

    private const double CutMm = 1e-11;

    // a dozen are usual; where rounding keeps two lines from meeting, the last crossing is good to far below 1e-9 mm
    private const int MostCuts = 100;

    // the cosine of a right angle, as far as a double knows one
    private const double SquareOn = 1e-12;

    /// <summary>How much room an outer section leaves all round an inner one.</summary>
    /// <remarks>
    /// The greatest over u of f(u), f(u) = the least over t of h_outer(t) - h_inner(t) - u cos t: f is concave, for it
    /// is the least of straight lines in u. Good to 1e-9 mm.
    /// </remarks>
    /// <param name="outer">The section that should hold the other.</param>
    /// <param name="inner">The section that should lie inside.</param>
    /// <returns>The clearance, below zero where the inner one stands out.</returns>
    public static Clearance Of(Section outer, Section inner)
    {
        Room room = new(outer, inner);
        double u = BestShift(room);
        IReadOnlyList<Valley> valleys = room.Valleys(u);
        double clearance = Least(valleys).RoomMm;
        NearestAt place = valleys
            .Where(valley => valley.RoomMm <= clearance + TieMm)
            .Select(valley => PlaceOf(outer, inner, u, valley.T))
            .OrderBy(Rank)
            .First();
        return new Clearance(clearance, u, place, HasLikeEnds(outer) && HasLikeEnds(inner));
    }

    // Cutting planes (J. E. Kelley, 1960): each direction t is a line g(t) = D(t) - u cos t above f. Of the lines that
    // rise and those that fall the nearest pair crosses at u; the least direction there is the next line, until it
    // comes no lower than the crossing. The ends, t = pi and t = 0, are the first pair.
    private static double BestShift(Room room)
    {
        double rising = Math.PI;
        double falling = 0;
        double u = 0;
        for (int cut = 0; cut < MostCuts; cut++)
        {
            u = (room.RoomMm(falling, 0) - room.RoomMm(rising, 0)) / (Math.Cos(falling) - Math.Cos(rising));
            Valley least = Least(room.Valleys(u));
            double slope = -Math.Cos(least.T);
            if (least.RoomMm >= room.RoomMm(rising, u) - CutMm || Math.Abs(slope) < SquareOn)
            {
                // nothing cuts lower, or the cheek decides and no shift along x changes that
                break;
            }

            (rising, falling) = slope > 0 ? (least.T, falling) : (rising, least.T);
        }

        return u;
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
