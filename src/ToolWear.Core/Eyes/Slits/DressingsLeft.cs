using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes.Slits;

/// <summary>How often a slitter or punch can still be dressed before it is too short to hold.</summary>
/// <param name="Dressings">Whole dressings, 0 or more.</param>
/// <param name="LengthAfter">Its length after the last of them, or now where there is none.</param>
public sealed record DressingsLeft(int Dressings, Length LengthAfter)
{
    /// <summary>Counts the dressings: (length now - least safe length) / loss a dressing, rounded down.</summary>
    /// <param name="now">The length now, to 2000 mm; shorter than the least is none left.</param>
    /// <param name="lossADressing">What a dressing takes off, 0.01 to 100 mm.</param>
    /// <param name="least">The least safe length, 0 to 2000 mm.</param>
    /// <param name="left">What is left, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where it was counted.</returns>
    public static bool TryCount(
        Length now,
        Length lossADressing,
        Length least,
        [NotNullWhen(true)] out DressingsLeft? left,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal =
            FigureRange.Refuse("The length now", now.Mm, 0.1, 2000, " mm")
            ?? FigureRange.Refuse("The loss a dressing", lossADressing.Mm, 0.01, 100, " mm")
            ?? FigureRange.Refuse("The least safe length", least.Mm, 0, 2000, " mm");
        left = null;
        if (refusal is null)
        {
            long spare = Math.Max(0, (now - least).Nanometres);
            int dressings = (int)(spare / lossADressing.Nanometres);
            left = new DressingsLeft(dressings, new Length(now.Nanometres - (dressings * lossADressing.Nanometres)));
        }

        return left is not null;
    }
}
