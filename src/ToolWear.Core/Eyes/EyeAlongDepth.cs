using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes;

/// <summary>The size of an eye along its depth, cold.</summary>
/// <param name="Near">At the face the drift goes in last.</param>
/// <param name="Waist">Half way through.</param>
/// <param name="Far">At the other face.</param>
public sealed record EyeAlongDepth(EyeSize Near, EyeSize Waist, EyeSize Far)
{
    /// <summary>Works out the eye along its depth from its size at the mark.</summary>
    /// <remarks>
    /// From both faces each face has the size at the mark and the waist that less taper x depth / 2; one way the far
    /// face is smaller by taper x depth; driven through it is of one size.
    /// </remarks>
    /// <param name="driving">How the drift is driven.</param>
    /// <param name="atMark">The cold eye at the mark.</param>
    /// <param name="depthMm">How deep the eye is, 1 to 1000 mm.</param>
    /// <param name="taperLength">Taper of the length, mm per mm over the whole length, 0 to 0.5.</param>
    /// <param name="taperWidth">Taper of the width, mm per mm over the whole width, 0 to 0.5.</param>
    /// <param name="eye">The eye, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with what is allowed.</param>
    /// <returns>True where it was worked out.</returns>
    public static bool TryFor(
        Driving driving,
        EyeSize atMark,
        double depthMm,
        double taperLength,
        double taperWidth,
        [NotNullWhen(true)] out EyeAlongDepth? eye,
        [NotNullWhen(false)] out string? refusal
    )
    {
        eye = null;
        refusal =
            FigureRange.Refuse("The depth of the eye", depthMm, 1, 1000, " mm")
            ?? Taper.Refuse("The taper of the length", taperLength)
            ?? Taper.Refuse("The taper of the width", taperWidth);
        if (refusal is not null)
        {
            return false;
        }

        EyeSize half = atMark.Less(taperLength * depthMm / 2, taperWidth * depthMm / 2);
        EyeSize whole = atMark.Less(taperLength * depthMm, taperWidth * depthMm);
        eye = driving switch
        {
            Driving.BothFaces => new EyeAlongDepth(atMark, half, atMark),
            Driving.OneFace => new EyeAlongDepth(atMark, half, whole),
            _ => new EyeAlongDepth(atMark, atMark, atMark),
        };
        if (!(Math.Min(eye.Waist.LengthMm, eye.Far.LengthMm) > 0 && Math.Min(eye.Waist.WidthMm, eye.Far.WidthMm) > 0))
        {
            eye = null;
            refusal = "With that taper the eye closes before it is through: the taper or the depth must be less.";
        }

        return eye is not null;
    }
}
