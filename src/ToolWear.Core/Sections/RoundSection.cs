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
