using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Sections;

/// <summary>A rectangle a long and b wide with edges rounded to r; r = 0 is sharp, r = b/2 an obround.</summary>
/// <remarks>
/// a is usually the longer, but need not be: a square drift that wore along its length still has a section.
/// </remarks>
public sealed record RectangleSection : Section
{
    private RectangleSection(Length a, Length b, Length edgeRadius)
    {
        A = a;
        B = b;
        EdgeRadius = edgeRadius;
    }

    /// <summary>The length a along the eye, 0.1 to 1000 mm.</summary>
    public Length A { get; }

    /// <summary>The width b across the eye, 0.1 to 1000 mm.</summary>
    public Length B { get; }

    /// <summary>The edge radius r, 0 to half the shorter side.</summary>
    public Length EdgeRadius { get; }

    /// <inheritdoc />
    public override SectionKind Kind => SectionKind.Rectangle;

    /// <inheritdoc />
    public override Length EyeLength => A;

    /// <inheritdoc />
    public override Length EyeWidth => B;

    /// <summary>Makes a rectangle.</summary>
    /// <param name="a">The length, 0.1 to 1000 mm.</param>
    /// <param name="b">The width, 0.1 to 1000 mm.</param>
    /// <param name="edgeRadius">The edge radius, 0 to half the shorter side.</param>
    /// <param name="section">The section, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where a section was made.</returns>
    public static bool TryMake(
        Length a,
        Length b,
        Length edgeRadius,
        [NotNullWhen(true)] out RectangleSection? section,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal =
            SectionRange.Refuse("The length", a)
            ?? SectionRange.Refuse("The width", b)
            ?? SectionRange.RefuseRadius("The edge radius", edgeRadius, a < b ? a : b);
        section = refusal is null ? new RectangleSection(a, b, edgeRadius) : null;
        return refusal is null;
    }
}
