using ToolWear.Core.Measure;

namespace ToolWear.Core.Eyes;

/// <summary>Choosing how deep to drive a worn drift.</summary>
public static class DriveDepths
{
    private const long NanometresIn64th = 396_875;

    // two bounds nearer to each other than this differ by rounding alone
    private const double DoubtMm = 1e-9;

    /// <summary>Chooses the depth that keeps both ways inside tolerance and nearest to the middle of each.</summary>
    /// <remarks>
    /// Deeper by s the eye grows by q_l s in length and q_w s in width. With m the distance of a way from the middle of
    /// its tolerance, as a share of half of it, and k how m grows with s, (m_l + k_l s)^2 + (m_w + k_w s)^2 is least at
    /// s = -(k_l m_l + k_w m_w) / (k_l^2 + k_w^2): a way that depth hardly changes has hardly a say. That s is then
    /// brought to the nearest one at which both ways are inside and the drift has room. With one taper q and wear w
    /// both ways from the middle it is s = w / q.
    /// </remarks>
    /// <param name="drift">The drift.</param>
    /// <param name="eye">The cold eye it makes at its present mark, worn as it is.</param>
    /// <param name="tolerance">The tolerance on the cold eye.</param>
    /// <returns>The new mark, or why the drift is at its end.</returns>
    public static DriveDepth Choose(TaperedDrift drift, EyeSize eye, EyeTolerance tolerance)
    {
        DepthRange length = DepthRange.Of(
            eye.LengthMm,
            tolerance.LeastLength.Mm,
            tolerance.GreatestLength.Mm,
            drift.TaperLength
        );
        DepthRange width = DepthRange.Of(
            eye.WidthMm,
            tolerance.LeastWidth.Mm,
            tolerance.GreatestWidth.Mm,
            drift.TaperWidth
        );
        if (EndOf(drift, length, width) is { } end)
        {
            return end;
        }

        double least = Math.Max(Math.Max(length.FromMm, width.FromMm), BackMm(drift));
        double most = Math.Min(Math.Min(length.ToMm, width.ToMm), RoomMm(drift));
        return To(drift, eye, Math.Min(Math.Max(Middle(length, width), least), most));
    }

    /// <summary>The same, but that a drift whose eye is inside is never driven less deep: it stays at its mark.</summary>
    /// <param name="drift">The drift.</param>
    /// <param name="eye">The cold eye it makes at its present mark, worn as it is.</param>
    /// <param name="tolerance">The tolerance on the cold eye.</param>
    /// <returns>The new mark, or why the drift is at its end.</returns>
    public static DriveDepth ChooseNotLess(TaperedDrift drift, EyeSize eye, EyeTolerance tolerance)
    {
        DriveDepth depth = Choose(drift, eye, tolerance);
        return depth is DriveTo { DeeperMm: < 0 } && tolerance.Holds(eye) ? To(drift, eye, 0) : depth;
    }

    /// <summary>The nearest whole 1/64 in.</summary>
    /// <param name="length">A length.</param>
    /// <returns>A multiple of 396 875 nm; half way goes to the even one.</returns>
    public static Length Nearest64th(Length length) =>
        new((long)Math.Round(length.Nanometres / (double)NanometresIn64th) * NanometresIn64th);

    private static double MarkRoomMm(TaperedDrift drift) => Math.Min(drift.TaperLeft.Mm, drift.Mark.Mm);

    private static double RoomMm(TaperedDrift drift) => Math.Min(MarkRoomMm(drift), drift.NoseRoom.Mm);

    private static double BackMm(TaperedDrift drift) => drift.Mark.Mm - TaperedDrift.FurthestMarkMm;

    private static NoDepth? EndOf(TaperedDrift drift, DepthRange length, DepthRange width)
    {
        if (length.IsEmpty || width.IsEmpty)
        {
            return new NoDepth(DriveEnd.NoTaper, length.IsEmpty, 0, 0);
        }

        double from = Math.Max(length.FromMm, width.FromMm);
        double to = Math.Min(length.ToMm, width.ToMm);
        bool isOfLength = length.FromMm >= width.FromMm;
        if (from > to + DoubtMm)
        {
            return new NoDepth(DriveEnd.LengthAgainstWidth, isOfLength, from, to);
        }

        if (to < BackMm(drift) - DoubtMm)
        {
            return new NoDepth(DriveEnd.MarkRunsOff, isOfLength, to, BackMm(drift));
        }

        double room = RoomMm(drift);
        if (from <= room + DoubtMm)
        {
            return null;
        }

        DriveEnd end = MarkRoomMm(drift) <= drift.NoseRoom.Mm ? DriveEnd.MarkRunsOff : DriveEnd.NoseMeetsBolster;
        return new NoDepth(end, isOfLength, from, room);
    }

    private static double Middle(DepthRange length, DepthRange width)
    {
        double kl = length.MissPerMm;
        double kw = width.MissPerMm;
        double squares = (kl * kl) + (kw * kw);
        return squares > 0 ? -((kl * length.Miss) + (kw * width.Miss)) / squares : 0;
    }

    private static DriveTo To(TaperedDrift drift, EyeSize eye, double s)
    {
        Length mark = drift.Mark - Length.FromMm(s);
        return new DriveTo(
            s,
            mark,
            Nearest64th(mark),
            new EyeSize(eye.LengthMm + (drift.TaperLength * s), eye.WidthMm + (drift.TaperWidth * s))
        );
    }
}
