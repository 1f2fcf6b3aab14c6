using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Sections;

/// <summary>
/// The tangent hull of two circles: a back of radius R and a nose of radius rho, a long over all. rho = 0 is a sharp
/// nose, rho = R an obround.
/// </summary>
/// <remarks>
/// The greatest width 2R is what is kept, to the nanometre: half of an odd 1/64 in is no whole number of them.
/// </remarks>
public sealed record TeardropSection : Section
{
    private TeardropSection(Length a, Length width, Length noseRadius)
    {
        A = a;
        EyeWidth = width;
        NoseRadius = noseRadius;
    }

    /// <summary>The length a over all, longer than it is wide, to 1000 mm.</summary>
    public Length A { get; }

    /// <summary>The large radius R of the back: half the greatest width, rounded down to the nanometre.</summary>
    public Length LargeRadius => new(EyeWidth.Nanometres / 2);

    /// <summary>The nose radius rho, 0 to R.</summary>
    public Length NoseRadius { get; }

    /// <inheritdoc />
    public override SectionKind Kind => SectionKind.Teardrop;

    /// <inheritdoc />
    public override Length EyeLength => A;

    /// <inheritdoc />
    public override Length EyeWidth { get; }

    /// <summary>Makes a teardrop as a smith measures it.</summary>
    /// <param name="a">The length over all, longer than the width, to 1000 mm.</param>
    /// <param name="width">The greatest width 2R, from 0.1 mm.</param>
    /// <param name="noseRadius">The nose radius rho, 0 to half the width.</param>
    /// <param name="section">The section, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where a section was made.</returns>
    public static bool TryMake(
        Length a,
        Length width,
        Length noseRadius,
        [NotNullWhen(true)] out TeardropSection? section,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal =
            SectionRange.Refuse("The length", a)
            ?? SectionRange.Refuse("The width", width)
            ?? (a > width ? null : $"A teardrop is longer than it is wide; {a} by {width} is not.")
            ?? SectionRange.RefuseRadius("The nose radius", noseRadius, width);
        section = refusal is null ? new TeardropSection(a, width, noseRadius) : null;
        return refusal is null;
    }

    /// <summary>Makes a teardrop of its length and its two radii.</summary>
    /// <param name="a">The length over all, longer than 2R, to 1000 mm.</param>
    /// <param name="largeRadius">The large radius R, from 0.1 mm.</param>
    /// <param name="noseRadius">The nose radius rho, 0 to R.</param>
    /// <param name="section">The section, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where a section was made.</returns>
    public static bool TryMakeFromRadii(
        Length a,
        Length largeRadius,
        Length noseRadius,
        [NotNullWhen(true)] out TeardropSection? section,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal = SectionRange.Refuse("The large radius", largeRadius);
        section = null;
        return refusal is null && TryMake(a, largeRadius + largeRadius, noseRadius, out section, out refusal);
    }
}
