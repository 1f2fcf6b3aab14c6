using ToolWear.Core.Measure;

namespace ToolWear.Core.Eyes;

/// <summary>How far a slip-on head may sit from its place on its handle.</summary>
/// <param name="HandleTaper">The handle's taper q_h, mm per mm over the whole width, 0.001 to 0.5.</param>
/// <param name="ToleranceMm">The tolerance along the handle either way, above zero.</param>
public sealed record SeatWanted(double HandleTaper, double ToleranceMm);

/// <summary>What an eye has to be, as far as a drift is judged by it.</summary>
/// <param name="Size">The wanted eye at its face, cold.</param>
/// <param name="DepthMm">Through the head; null where not known.</param>
/// <param name="Driving">How the drift is driven; null where not known.</param>
/// <param name="TaperLength">The taper of the length, 0 where not known.</param>
/// <param name="TaperWidth">The taper of the width, 0 where not known.</param>
/// <param name="Tolerance">The least and the greatest eye; null where nobody set them all.</param>
/// <param name="Seat">The seat on the handle, for a slip-on eye whose handle is known; it is judged, not the size.</param>
public sealed record EyeWanted(
    EyeSize Size,
    double? DepthMm,
    Driving? Driving,
    double TaperLength,
    double TaperWidth,
    EyeTolerance? Tolerance,
    SeatWanted? Seat
)
{
    /// <summary>
    /// The sizes between which the eye is judged right: its tolerance, or for a slip-on eye those that seat the head
    /// within its tolerance, the wanted size more or less taper x tolerance both ways. Null where nothing was set.
    /// </summary>
    public EyeTolerance? Judged
    {
        get
        {
            if (Seat is null)
            {
                return Tolerance;
            }

            double either = Seat.HandleTaper * Seat.ToleranceMm;
            return EyeTolerance.TryMake(
                Length.FromMm(Size.LengthMm - either),
                Length.FromMm(Size.LengthMm + either),
                Length.FromMm(Size.WidthMm - either),
                Length.FromMm(Size.WidthMm + either),
                out EyeTolerance? bySeat,
                out string? _
            )
                ? bySeat
                : Tolerance;
        }
    }
}
