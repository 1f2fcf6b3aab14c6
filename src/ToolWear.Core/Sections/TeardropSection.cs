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

    /// <inheritdoc />
    public override Length Radius => NoseRadius;

    // The half turn is shared between back and nose at the direction square to the straight cheek:
    // d = a - R - rho, sin f = (R - rho) / d, cos t0 = sin f.
    private double SinF => ((EyeWidth.Mm / 2) - NoseRadius.Mm) / (A.Mm - (EyeWidth.Mm / 2) - NoseRadius.Mm);

    /// <inheritdoc />
    /// <remarks>A = d cos f (R + rho) + R^2 (pi/2 + f) + rho^2 (pi/2 - f), with d = a - R - rho, sin f = (R - rho)/d.</remarks>
    public override double AreaMm2() => Area(A.Mm, EyeWidth.Mm / 2, NoseRadius.Mm);

    /// <inheritdoc />
    /// <remarks>P = 2 d cos f + R (pi + 2f) + rho (pi - 2f).</remarks>
    public override double PerimeterMm()
    {
        double R = EyeWidth.Mm / 2;
        double rho = NoseRadius.Mm;
        double d = A.Mm - R - rho;
        double f = Math.Asin(SinF);
        return (2 * d * Math.Cos(f)) + (R * (Math.PI + (2 * f))) + (rho * (Math.PI - (2 * f)));
    }

    /// <inheritdoc />
    /// <remarks>h = max(R - (a/2 - R) cos t, rho + (a/2 - rho) cos t).</remarks>
    public override double SupportMm(double t)
    {
        double R = EyeWidth.Mm / 2;
        double rho = NoseRadius.Mm;
        double c = Math.Cos(t);
        return Math.Max(R - (((A.Mm / 2) - R) * c), rho + (((A.Mm / 2) - rho) * c));
    }

    /// <inheritdoc />
    public override IReadOnlyList<OutlineArc> UpperArcs()
    {
        double R = EyeWidth.Mm / 2;
        double rho = NoseRadius.Mm;
        double t0 = Math.Acos(SinF);
        return [new OutlineArc(0, t0, rho, (A.Mm / 2) - rho, 0), new OutlineArc(t0, Math.PI, R, R - (A.Mm / 2), 0)];
    }

    /// <inheritdoc />
    internal override double AreaTowardsMm2(Section other, double share)
    {
        TeardropSection end = (TeardropSection)other;
        return Area(
            double.Lerp(A.Mm, end.A.Mm, share),
            double.Lerp(EyeWidth.Mm, end.EyeWidth.Mm, share) / 2,
            double.Lerp(NoseRadius.Mm, end.NoseRadius.Mm, share)
        );
    }

    private static double Area(double a, double R, double rho)
    {
        double d = a - R - rho;
        double f = Math.Asin((R - rho) / d);
        return (d * Math.Cos(f) * (R + rho)) + (R * R * ((Math.PI / 2) + f)) + (rho * rho * ((Math.PI / 2) - f));
    }

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
