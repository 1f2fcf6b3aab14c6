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
