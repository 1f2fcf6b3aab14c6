using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Sections;

/// <summary>The shape of a drift, an eye or a bar cut across: closed, convex and symmetric about its long axis.</summary>
/// <remarks>
/// A closed family: <see cref="RoundSection"/>, <see cref="RectangleSection"/>, <see cref="OvalSection"/> and
/// <see cref="TeardropSection"/>. A section that cannot be forged cannot be built: each kind has a TryMake that refuses
/// it in a sentence. Equality is by kind and exact figures. Eye length lies along x, eye width along y; x = 0 is the
/// middle of the length, and a teardrop's nose points to +x.
/// </remarks>
public abstract record Section
{
    private protected Section() { }

    /// <summary>Which shape it is; never <see cref="SectionKind.Other"/>.</summary>
    public abstract SectionKind Kind { get; }

    /// <summary>How far it reaches along x: the length of the eye that it fills.</summary>
    public abstract Length EyeLength { get; }

    /// <summary>How far it reaches along y: the width of the eye that it fills.</summary>
    public abstract Length EyeWidth { get; }

    /// <summary>Makes a section of the figures a smith gives: its kind, length, greatest width and radius.</summary>
    /// <param name="kind">The shape.</param>
    /// <param name="length">Along the eye; the diameter of a round.</param>
    /// <param name="width">Across the eye at its widest; not used for a round.</param>
    /// <param name="radius">Edge radius of a rectangle, nose radius of a teardrop; not used for the others.</param>
    /// <param name="section">The section, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where a section was made.</returns>
    public static bool TryMake(
        SectionKind kind,
        Length length,
        Length width,
        Length radius,
        [NotNullWhen(true)] out Section? section,
        [NotNullWhen(false)] out string? refusal
    )
    {
        section = null;
        switch (kind)
        {
            case SectionKind.Round:
                if (RoundSection.TryMake(length, out RoundSection? round, out refusal))
                {
                    section = round;
                }

                break;
            case SectionKind.Rectangle:
                if (RectangleSection.TryMake(length, width, radius, out RectangleSection? rectangle, out refusal))
                {
                    section = rectangle;
                }

                break;
            case SectionKind.Oval:
                if (OvalSection.TryMake(length, width, out OvalSection? oval, out refusal))
                {
                    section = oval;
                }

                break;
            case SectionKind.Teardrop:
                if (TeardropSection.TryMake(length, width, radius, out TeardropSection? teardrop, out refusal))
                {
                    section = teardrop;
                }

                break;
            default:
                refusal = "Only a round, rectangle, oval or teardrop can be reckoned with.";
                break;
        }

        return refusal is null;
    }
}
