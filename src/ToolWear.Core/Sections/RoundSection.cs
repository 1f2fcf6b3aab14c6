using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Sections;

/// <summary>A circle of diameter d, 0.1 to 1000 mm.</summary>
public sealed record RoundSection : Section
{
    private RoundSection(Length diameter) => Diameter = diameter;

    /// <summary>The diameter d.</summary>
    public Length Diameter { get; }

    /// <inheritdoc />
    public override SectionKind Kind => SectionKind.Round;

    /// <inheritdoc />
    public override Length EyeLength => Diameter;

    /// <inheritdoc />
    public override Length EyeWidth => Diameter;

    /// <inheritdoc />
    public override Length Radius => Length.Zero;

    /// <inheritdoc />
    /// <remarks>A = pi d^2 / 4.</remarks>
    public override double AreaMm2() => Area(Diameter.Mm);

    /// <inheritdoc />
    /// <remarks>P = pi d.</remarks>
    public override double PerimeterMm() => Math.PI * Diameter.Mm;

    /// <inheritdoc />
    /// <remarks>h = d / 2.</remarks>
    public override double SupportMm(double t) => Diameter.Mm / 2;

    /// <inheritdoc />
    public override IReadOnlyList<OutlineArc> UpperArcs() => [new OutlineArc(0, Math.PI, Diameter.Mm / 2, 0, 0)];

    /// <inheritdoc />
    internal override double AreaTowardsMm2(Section other, double share) =>
        Area(double.Lerp(Diameter.Mm, ((RoundSection)other).Diameter.Mm, share));

    private static double Area(double d) => Math.PI * d * d / 4;

    /// <summary>Makes a round section.</summary>
    /// <param name="diameter">The diameter, 0.1 to 1000 mm.</param>
    /// <param name="section">The section, where the figure can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where a section was made.</returns>
    public static bool TryMake(
        Length diameter,
        [NotNullWhen(true)] out RoundSection? section,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal = SectionRange.Refuse("The diameter", diameter);
        section = refusal is null ? new RoundSection(diameter) : null;
        return refusal is null;
    }
}
