using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes;

/// <summary>Standard tolerances by ISO 286-1, IT11 to IT16, for sizes over 3 to 120 mm.</summary>
/// <remarks>
/// The table of the standard in micrometres. It follows i = 0.45 D^(1/3) + 0.001 D, D the geometric mean of the ends of
/// a range, times 100, 160, 250, 400, 640 and 1000, rounded.
/// </remarks>
public static class IsoGrade
{
    /// <summary>The finest grade held here.</summary>
    public const int Finest = 11;

    /// <summary>The coarsest grade held here.</summary>
    public const int Coarsest = 16;

    // over 3, not 3 itself
    private static readonly double SmallestMm = Math.BitIncrement(3.0);

    private static readonly (double ToMm, int[] Micrometres)[] Ranges =
    [
        (6, [75, 120, 180, 300, 480, 750]),
        (10, [90, 150, 220, 360, 580, 900]),
        (18, [110, 180, 270, 430, 700, 1100]),
        (30, [130, 210, 330, 520, 840, 1300]),
        (50, [160, 250, 390, 620, 1000, 1600]),
        (80, [190, 300, 460, 740, 1200, 1900]),
        (120, [220, 350, 540, 870, 1400, 2200]),
    ];

    /// <summary>The width of the tolerance of a grade.</summary>
    /// <param name="grade">The IT number, 11 to 16.</param>
    /// <param name="sizeMm">The size, over 3 to 120 mm.</param>
    /// <param name="toleranceMm">The whole width of the tolerance in mm, where it is held here.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where the tolerance is held here.</returns>
    public static bool TryTolerance(
        int grade,
        double sizeMm,
        out double toleranceMm,
        [NotNullWhen(false)] out string? refusal
    )
    {
        toleranceMm = 0;
        refusal =
            FigureRange.Refuse("The ISO 286 grade", grade, Finest, Coarsest, "")
            ?? FigureRange.Refuse("A size with an ISO 286 grade", sizeMm, SmallestMm, Ranges[^1].ToMm, " mm");
        if (refusal is null)
        {
            toleranceMm = Array.Find(Ranges, range => sizeMm <= range.ToMm).Micrometres[grade - Finest] / 1000.0;
        }

        return refusal is null;
    }
}
