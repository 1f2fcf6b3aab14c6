using ToolWear.Core.Measure;

namespace ToolWear.Core.Sections;

/// <summary>The range of sizes that a section may have, wide enough for any hand-held tool and its bar.</summary>
public static class SectionRange
{
    /// <summary>The least length, width or diameter: 0.1 mm.</summary>
    public static Length Least { get; } = Length.FromMm(0.1m);

    /// <summary>The greatest length, width or diameter: 1000 mm.</summary>
    public static Length Greatest { get; } = Length.FromMm(1000m);

    /// <summary>The refusal of a size outside the range, or null where it lies inside.</summary>
    /// <param name="what">What was measured, as a sentence begins: "The diameter".</param>
    /// <param name="size">Its size.</param>
    /// <returns>A sentence with the range, or null.</returns>
    internal static string? Refuse(string what, Length size) =>
        size >= Least && size <= Greatest ? null : $"{what} must be {Least} to {Greatest}; {size} is not.";

    /// <summary>The refusal of a radius that is negative or does not fit, or null.</summary>
    /// <param name="what">Which radius, as a sentence begins: "The nose radius".</param>
    /// <param name="radius">The radius.</param>
    /// <param name="acrossIt">The width that twice the radius must not exceed.</param>
    /// <returns>A sentence with the range, or null.</returns>
    internal static string? RefuseRadius(string what, Length radius, Length acrossIt) =>
        radius >= Length.Zero && radius <= acrossIt && radius + radius <= acrossIt
            ? null
            : $"{what} must be 0 to {new Length(acrossIt.Nanometres / 2)}, half the width; {radius} is not.";
}
