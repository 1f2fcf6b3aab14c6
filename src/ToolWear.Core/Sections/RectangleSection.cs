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

    /// <inheritdoc />
    public override Length Radius => EdgeRadius;

    /// <inheritdoc />
    /// <remarks>A = ab - (4 - pi) r^2.</remarks>
    public override double AreaMm2() => Area(A.Mm, B.Mm, EdgeRadius.Mm);

    /// <inheritdoc />
    /// <remarks>P = 2(a + b) - (8 - 2 pi) r.</remarks>
    public override double PerimeterMm() => (2 * (A.Mm + B.Mm)) - ((8 - (2 * Math.PI)) * EdgeRadius.Mm);

    /// <inheritdoc />
    /// <remarks>h = (a/2 - r) |cos t| + (b/2 - r) |sin t| + r.</remarks>
    public override double SupportMm(double t)
    {
        double r = EdgeRadius.Mm;
        return (((A.Mm / 2) - r) * Math.Abs(Math.Cos(t))) + (((B.Mm / 2) - r) * Math.Abs(Math.Sin(t))) + r;
    }

    /// <inheritdoc />
    public override IReadOnlyList<OutlineArc> UpperArcs()
    {
        double r = EdgeRadius.Mm;
        double x = (A.Mm / 2) - r;
        double y = (B.Mm / 2) - r;
        return [new OutlineArc(0, Math.PI / 2, r, x, y), new OutlineArc(Math.PI / 2, Math.PI, r, -x, y)];
    }

    /// <inheritdoc />
    internal override double AreaTowardsMm2(Section other, double share)
    {
        RectangleSection end = (RectangleSection)other;
        return Area(
            double.Lerp(A.Mm, end.A.Mm, share),
            double.Lerp(B.Mm, end.B.Mm, share),
            double.Lerp(EdgeRadius.Mm, end.EdgeRadius.Mm, share)
        );
    }

    private static double Area(double a, double b, double r) => (a * b) - ((4 - Math.PI) * r * r);

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
