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

    /// <summary>The radius a smith gives: edge radius of a rectangle, nose radius of a teardrop, zero for the others.</summary>
    /// <remarks>Kind, length, width and this radius together make the same section again.</remarks>
    public abstract Length Radius { get; }

    /// <summary>The area A in mm2.</summary>
    /// <returns>The area, above zero.</returns>
    public abstract double AreaMm2();

    /// <summary>The perimeter P in mm.</summary>
    /// <returns>The way round, above zero.</returns>
    public abstract double PerimeterMm();

    /// <summary>The support function h about the mid-length: how far the section reaches in a direction.</summary>
    /// <param name="t">The direction in radians from +x, the nose; any angle.</param>
    /// <returns>The reach in mm, never negative.</returns>
    public abstract double SupportMm(double t);

    /// <summary>The arcs of the half above the long axis, from the nose round to the back; straight lines join them.</summary>
    /// <returns>The arcs, their directions running from 0 to pi without a gap; none for an oval, which has no arcs.</returns>
    public abstract IReadOnlyList<OutlineArc> UpperArcs();

    /// <summary>The area part of the way to another section of the same kind, its figures running linearly.</summary>
    /// <param name="other">A section of the same kind.</param>
    /// <param name="share">How far, from 0 (this one) to 1 (the other).</param>
    /// <returns>The area in mm2.</returns>
    internal abstract double AreaTowardsMm2(Section other, double share);

    /// <summary>The section once it was worn to a measured length and width; its radius keeps its made value.</summary>
    /// <remarks>Where the width no longer has room for the radius, the radius is half of the width.</remarks>
    /// <param name="length">The length now; the diameter of a round.</param>
    /// <param name="width">The greatest width now; not used for a round.</param>
    /// <param name="section">The section, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where a section was made.</returns>
    public bool TryWornTo(
        Length length,
        Length width,
        [NotNullWhen(true)] out Section? section,
        [NotNullWhen(false)] out string? refusal
    )
    {
        Length half = new(Math.Min(length.Nanometres, width.Nanometres) / 2);
        return TryMake(Kind, length, width, Radius < half ? Radius : half, out section, out refusal);
    }

    /// <summary>Why there is no section of the figures a smith gives.</summary>
    /// <param name="kind">The shape.</param>
    /// <param name="length">Along the eye; the diameter of a round.</param>
    /// <param name="width">Across the eye at its widest; not used for a round.</param>
    /// <param name="radius">Edge radius of a rectangle, nose radius of a teardrop; not used for the others.</param>
    /// <returns>The reason, with the allowed range; null where there is one, or its shape is another that nobody reckons with.</returns>
    public static string? FaultOf(SectionKind kind, Length length, Length width, Length radius) =>
        kind == SectionKind.Other || TryMake(kind, length, width, radius, out _, out string? fault) ? null : fault;

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
                refusal = "Only a round, rectangle, oval or teardrop can be worked out.";
                break;
        }

        return refusal is null;
    }
}
