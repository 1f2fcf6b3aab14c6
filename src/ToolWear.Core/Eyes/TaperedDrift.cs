using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes;

/// <summary>What of a drift matters for how deep it is driven.</summary>
public sealed record TaperedDrift
{
    /// <summary>The furthest that a mark lies from the shank mark: 1000 mm.</summary>
    public const double FurthestMarkMm = 1000;

    private TaperedDrift(double taperLength, double taperWidth, Length mark, Length taperLeft, Length noseRoom)
    {
        TaperLength = taperLength;
        TaperWidth = taperWidth;
        Mark = mark;
        TaperLeft = taperLeft;
        NoseRoom = noseRoom;
    }

    /// <summary>Taper q_l of the length, mm per mm over the whole length, 0 to 0.5.</summary>
    public double TaperLength { get; }

    /// <summary>Taper q_w of the width, mm per mm over the whole width, 0 to 0.5.</summary>
    public double TaperWidth { get; }

    /// <summary>The mark it is driven to now, from the shank mark towards the nose.</summary>
    public Length Mark { get; }

    /// <summary>How far the taper goes on above the mark, before the full-size part begins; 0 or more.</summary>
    public Length TaperLeft { get; }

    /// <summary>How much deeper it can go before its nose meets the bolster or the anvil; 0 or more.</summary>
    public Length NoseRoom { get; }

    /// <summary>The same drift with other room under its nose.</summary>
    /// <param name="noseRoom">How much deeper it can go; below zero counts as none.</param>
    /// <returns>The drift.</returns>
    public TaperedDrift WithNoseRoom(Length noseRoom) =>
        new(TaperLength, TaperWidth, Mark, TaperLeft, noseRoom > Length.Zero ? noseRoom : Length.Zero);

    /// <summary>Describes a drift.</summary>
    /// <param name="taperLength">0 to 0.5 mm per mm.</param>
    /// <param name="taperWidth">0 to 0.5 mm per mm.</param>
    /// <param name="mark">From the shank mark, 0 to 1000 mm.</param>
    /// <param name="taperLeft">0 to 1000 mm.</param>
    /// <param name="noseRoom">0 to 1000 mm.</param>
    /// <param name="drift">The drift, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where the figures can be.</returns>
    public static bool TryMake(
        double taperLength,
        double taperWidth,
        Length mark,
        Length taperLeft,
        Length noseRoom,
        [NotNullWhen(true)] out TaperedDrift? drift,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal =
            Taper.Refuse("The taper of the length", taperLength)
            ?? Taper.Refuse("The taper of the width", taperWidth)
            ?? FigureRange.Refuse("The mark", mark.Mm, 0, FurthestMarkMm, " mm from the shank mark")
            ?? FigureRange.Refuse("The taper left above the mark", taperLeft.Mm, 0, 1000, " mm")
            ?? FigureRange.Refuse("The room under the nose", noseRoom.Mm, 0, 1000, " mm");
        drift = refusal is null ? new TaperedDrift(taperLength, taperWidth, mark, taperLeft, noseRoom) : null;
        return refusal is null;
    }
}
