namespace ToolWear.Core.Eyes;

/// <summary>What a worn drift still makes of its eye.</summary>
/// <param name="Eye">The eye at the face, predicted and found.</param>
/// <param name="Wanted">What the eye has to be; null where no eye is entered.</param>
/// <param name="IsInside">Whether the eye lies inside what it is judged by, both ways; null where it is not judged.</param>
/// <param name="Along">The eye along its depth: waist and far face; null where depth or driving is not known.</param>
/// <param name="Seat">Where a slip-on head comes to sit; null for others.</param>
/// <param name="Drive">
/// How deep to drive it, or why no depth serves; null where there is nothing to say: it is not judged, or it is inside
/// and stays at its mark. While the eye is inside, driving less deep is never spoken of.
/// </param>
/// <param name="Limits">The drift at its mark that still makes an eye inside; null where it is not judged.</param>
public sealed record DriftOutlook(
    EyeForecast Eye,
    EyeWanted? Wanted,
    bool? IsInside,
    EyeAlongDepth? Along,
    SlipOnSeat? Seat,
    DriveDepth? Drive,
    DriftLimits? Limits
)
{
    // a mark is not moved for less than a smith can scribe: 1/64 in
    private const double NotWorthAMarkMm = 0.396875;

    /// <summary>Looks at a drift.</summary>
    /// <param name="eye">The eye it makes now.</param>
    /// <param name="wanted">What the eye has to be; null where no eye is entered.</param>
    /// <param name="isJudged">Whether this drift makes the finished eye: a rough drift's eye is meant to be smaller.</param>
    /// <param name="drift">Its tapers, mark and room; null where they are not known.</param>
    /// <param name="limits">The drift that still makes an eye inside a tolerance.</param>
    /// <returns>The outlook.</returns>
    public static DriftOutlook Of(
        EyeForecast eye,
        EyeWanted? wanted,
        bool isJudged,
        TaperedDrift? drift,
        Func<EyeTolerance, DriftLimits> limits
    )
    {
        EyeTolerance? tolerance = isJudged ? wanted?.Judged : null;
        bool? isInside = tolerance?.Holds(eye.Eye);
        return new DriftOutlook(
            eye,
            wanted,
            isInside,
            AlongOf(eye.Eye, wanted),
            SeatOf(eye.Eye, isJudged ? wanted : null),
            tolerance is null ? null : DriveOf(eye.Eye, tolerance, wanted!.Driving, drift, isInside == true),
            tolerance is null ? null : limits(tolerance)
        );
    }

    private static EyeAlongDepth? AlongOf(EyeSize eye, EyeWanted? wanted) =>
        wanted is { DepthMm: { } depth, Driving: { } driving }
        && EyeAlongDepth.TryFor(
            driving,
            eye,
            depth,
            wanted.TaperLength,
            wanted.TaperWidth,
            out EyeAlongDepth? along,
            out string? _
        )
            ? along
            : null;

    private static SlipOnSeat? SeatOf(EyeSize eye, EyeWanted? wanted) =>
        wanted?.Seat is { } seat
        && SlipOnSeat.TryFor(wanted.Size, eye, seat.HandleTaper, out SlipOnSeat? found, out string? _)
            ? found
            : null;

    private static DriveDepth? DriveOf(
        EyeSize eye,
        EyeTolerance tolerance,
        Driving? driving,
        TaperedDrift? drift,
        bool isInside
    )
    {
        if (driving == Driving.Through)
        {
            return isInside ? null : new NoDepth(DriveEnd.DrivenThrough, true, 0, 0);
        }

        if (drift is null)
        {
            return null;
        }

        DriveDepth depth = DriveDepths.ChooseNotLess(drift, eye, tolerance);
        return isInside && depth is DriveTo { DeeperMm: < NotWorthAMarkMm } ? null : depth;
    }
}
