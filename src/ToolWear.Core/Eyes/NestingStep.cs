using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes;

/// <summary>One drift of a series before the next: it must lie inside, or it spoils what no later drift can close.</summary>
/// <param name="Before">The drift used first.</param>
/// <param name="After">The next.</param>
/// <param name="Clearance">The room that the next one's section leaves round the first one's.</param>
public sealed record NestingStep(NamedSection Before, NamedSection After, Clearance Clearance)
{
    /// <summary>Whether to warn.</summary>
    public bool Spoils => !Clearance.Holds;

    /// <summary>The step as a sentence: never silent, a warning where it spoils the eye.</summary>
    /// <param name="unit">The unit for people.</param>
    /// <returns>A sentence.</returns>
    public string Sentence(LengthUnit unit = LengthUnit.Mm) =>
        Spoils
            ? $"{Before.Name} {Clearance.ToWords(unit)} in {After.Name}: it spoils a corner that no later drift can close."
            : $"{Before.Name} lies in {After.Name}, {Clearance.ToWords(unit)}.";

    /// <summary>The steps of a series.</summary>
    /// <param name="series">The drifts in the order of use.</param>
    /// <returns>One step for each drift but the last.</returns>
    public static IReadOnlyList<NestingStep> Of(IReadOnlyList<NamedSection> series) =>
        [
            .. series.Zip(
                series.Skip(1),
                (before, after) => new NestingStep(before, after, Inside.Of(after.Section, before.Section))
            ),
        ];
}
