using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes;

/// <summary>Where a slip-on head comes to sit on its tapered handle, against where it should.</summary>
/// <param name="ByLengthMm">How far further on, mm along the handle, the eye's length lets it go; below zero, short.</param>
/// <param name="ByWidthMm">The same by the eye's width.</param>
public sealed record SlipOnSeat(double ByLengthMm, double ByWidthMm)
{
    /// <summary>How far further on the head goes: until the tighter way binds.</summary>
    public double MovementMm => Math.Min(ByLengthMm, ByWidthMm);

    /// <summary>Works out the movement: a change E of the eye moves the head by E / q_h.</summary>
    /// <param name="wanted">The eye that seats right.</param>
    /// <param name="found">The eye as it is.</param>
    /// <param name="handleTaper">The handle's taper q_h, 0.001 to 0.5 mm per mm over the whole width.</param>
    /// <param name="seat">The seat, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where it was worked out.</returns>
    public static bool TryFor(
        EyeSize wanted,
        EyeSize found,
        double handleTaper,
        [NotNullWhen(true)] out SlipOnSeat? seat,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal = FigureRange.Refuse("The taper of the handle", handleTaper, 0.001, Taper.Steepest, " mm per mm");
        seat = refusal is null
            ? new SlipOnSeat(
                (found.LengthMm - wanted.LengthMm) / handleTaper,
                (found.WidthMm - wanted.WidthMm) / handleTaper
            )
            : null;
        return refusal is null;
    }

    /// <summary>Whether the head seats within so much of where it should, either way.</summary>
    /// <param name="toleranceMm">The tolerance along the handle in mm.</param>
    /// <returns>True where it does.</returns>
    public bool Within(double toleranceMm) => Math.Abs(MovementMm) <= toleranceMm;
}
