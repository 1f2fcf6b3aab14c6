using System.Globalization;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Eyes;

/// <summary>Choosing how deep to drive a worn drift.</summary>
public static class DriveDepths
{
    private const long NanometresIn64th = 396_875;

    // a drift of no wear wants s = 0, and a thousandth of a mm of doubt about it is no end
    private const double DoubtMm = 1e-9;

    /// <summary>Chooses the depth that keeps both ways inside tolerance and nearest to the middle of each.</summary>
    /// <remarks>
    /// Deeper by s the eye grows by q_l s in length and q_w s in width. With m the distance of a way from the middle of
    /// its tolerance, as a share of half of it, and k how m grows with s, the larger of |m_l + k_l s| and |m_w + k_w s|
    /// is least where they are equal and opposite: s = -(m_l + m_w) / (k_l + k_w). That s is then brought to the
    /// nearest one at which both ways are inside and the drift has room. With one taper q and wear w in both ways from
    /// the middle it is s = w / q.
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
        double markRoom = Math.Min(drift.TaperLeft.Mm, drift.Mark.Mm);
        double room = Math.Min(markRoom, drift.NoseRoom.Mm);
        double from = Math.Max(length.FromMm, width.FromMm);
        double to = Math.Min(length.ToMm, width.ToMm);
        if (length.IsEmpty || width.IsEmpty)
        {
            string way = length.IsEmpty ? "length" : "width";
            return new NoDepth(DriveEnd.NoTaper, $"The {way} is out of tolerance and has no taper to make it up.");
        }

        if (from > to + DoubtMm)
        {
            return new NoDepth(DriveEnd.LengthAgainstWidth, Against(length, width));
        }

        if (from > room + DoubtMm)
        {
            return markRoom <= drift.NoseRoom.Mm
                ? new NoDepth(
                    DriveEnd.MarkRunsOff,
                    $"It would have to go {Mm(from)} mm deeper, and the mark runs off the taper after {Mm(room)}."
                )
                : new NoDepth(
                    DriveEnd.NoseMeetsBolster,
                    $"It would have to go {Mm(from)} mm deeper, and the nose meets the bolster after {Mm(room)}."
                );
        }

        double k = length.MissPerMm + width.MissPerMm;
        double s = k > 0 ? -(length.Miss + width.Miss) / k : 0;
        return To(drift, eye, Math.Min(Math.Max(s, from), Math.Min(to, room)));
    }

    /// <summary>The nearest whole 1/64 in.</summary>
    /// <param name="length">A length.</param>
    /// <returns>A multiple of 396 875 nm; half way goes to the even one.</returns>
    public static Length Nearest64th(Length length) =>
        new((long)Math.Round(length.Nanometres / (double)NanometresIn64th) * NanometresIn64th);

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

    private static string Against(DepthRange length, DepthRange width) =>
        length.FromMm > width.ToMm
            ? $"The length wants {Mm(length.FromMm)} mm deeper at least, the width {Mm(width.ToMm)} at most."
            : $"The width wants {Mm(width.FromMm)} mm deeper at least, the length {Mm(length.ToMm)} at most.";

    private static string Mm(double mm) => mm.ToString("0.0", CultureInfo.InvariantCulture);
}
