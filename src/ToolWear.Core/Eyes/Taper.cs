using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes;

/// <summary>Taper: mm of size per mm of depth, over the whole width, not per side.</summary>
public static class Taper
{
    /// <summary>The steepest taper that is reckoned with: 0.5.</summary>
    public const double Steepest = 0.5;

    /// <summary>The flattest that is a taper at all: 1e-6, a hundredth of a mm on ten metres. Below it is parallel.</summary>
    public const double Flattest = 1e-6;

    /// <summary>How much deeper a drift of one taper is driven to make up for wear: s = w / q.</summary>
    /// <param name="wearMm">The wear w to be made up, 0 to 100 mm.</param>
    /// <param name="taper">The taper q, above 0 to 0.5.</param>
    /// <param name="shiftMm">How much deeper, in mm, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where it was worked out.</returns>
    public static bool TryShift(
        double wearMm,
        double taper,
        out double shiftMm,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal =
            FigureRange.Refuse("The wear", wearMm, 0, 100, " mm")
            ?? FigureRange.Refuse("The taper", taper, Flattest, Steepest, " mm per mm");
        shiftMm = refusal is null ? wearMm / taper : 0;
        return refusal is null;
    }

    /// <summary>The refusal of a taper outside 0 to 0.5, or null.</summary>
    /// <param name="what">Which taper, as a sentence begins.</param>
    /// <param name="taper">The taper.</param>
    /// <returns>A sentence with the range, or null.</returns>
    internal static string? Refuse(string what, double taper) =>
        FigureRange.Refuse(what, taper, 0, Steepest, " mm per mm");
}
