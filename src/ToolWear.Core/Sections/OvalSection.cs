using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Sections;

/// <summary>An ellipse a long and b wide.</summary>
public sealed record OvalSection : Section
{
    private OvalSection(Length a, Length b)
    {
        A = a;
        B = b;
    }

    /// <summary>The length a along the eye, 0.1 to 1000 mm.</summary>
    public Length A { get; }

    /// <summary>The width b across the eye, 0.1 to 1000 mm.</summary>
    public Length B { get; }

    /// <inheritdoc />
    public override SectionKind Kind => SectionKind.Oval;

    /// <inheritdoc />
    public override Length EyeLength => A;

    /// <inheritdoc />
    public override Length EyeWidth => B;

    /// <inheritdoc />
    public override Length Radius => Length.Zero;

    /// <inheritdoc />
    /// <remarks>A = pi a b / 4.</remarks>
    public override double AreaMm2() => Area(A.Mm, B.Mm);

    /// <inheritdoc />
    /// <remarks>By the arithmetic-geometric mean, to the last digits: <see cref="EllipsePerimeter"/>.</remarks>
    public override double PerimeterMm() => EllipsePerimeter.Of(A.Mm / 2, B.Mm / 2);

    /// <inheritdoc />
    /// <remarks>h = sqrt((a/2)^2 cos^2 t + (b/2)^2 sin^2 t).</remarks>
    public override double SupportMm(double t) => double.Hypot(A.Mm / 2 * Math.Cos(t), B.Mm / 2 * Math.Sin(t));

    /// <inheritdoc />
    public override IReadOnlyList<OutlineArc> UpperArcs() => [];

    /// <inheritdoc />
    internal override double AreaTowardsMm2(Section other, double share)
    {
        OvalSection end = (OvalSection)other;
        return Area(double.Lerp(A.Mm, end.A.Mm, share), double.Lerp(B.Mm, end.B.Mm, share));
    }

    private static double Area(double a, double b) => Math.PI * a * b / 4;

    /// <summary>Makes an oval.</summary>
    /// <param name="a">The length, 0.1 to 1000 mm.</param>
    /// <param name="b">The width, 0.1 to 1000 mm.</param>
    /// <param name="section">The section, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where a section was made.</returns>
    public static bool TryMake(
        Length a,
        Length b,
        [NotNullWhen(true)] out OvalSection? section,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal = SectionRange.Refuse("The length", a) ?? SectionRange.Refuse("The width", b);
        section = refusal is null ? new OvalSection(a, b) : null;
        return refusal is null;
    }
}
