using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes;

/// <summary>How much smaller than the finish drift a shop makes the earlier ones of a series.</summary>
public sealed record SeriesSteps
{
    private SeriesSteps(EyeSize second, EyeSize rough)
    {
        Second = second;
        Rough = rough;
    }

    /// <summary>Second 0.8 x 1.2 mm, rough 2.3 x 3.6 mm smaller than the finish drift (common practice, no source).</summary>
    public static SeriesSteps Usual { get; } = new(new EyeSize(0.8, 1.2), new EyeSize(2.3, 3.6));

    /// <summary>How much smaller the second drift is, in length and width.</summary>
    public EyeSize Second { get; }

    /// <summary>How much smaller the rough drift is, in length and width.</summary>
    public EyeSize Rough { get; }

    /// <summary>Takes a shop's own steps.</summary>
    /// <param name="secondLength">0 to 20 mm.</param>
    /// <param name="secondWidth">0 to 20 mm.</param>
    /// <param name="roughLength">No less than the second's, to 20 mm.</param>
    /// <param name="roughWidth">No less than the second's, to 20 mm.</param>
    /// <param name="steps">The steps, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where the figures can be.</returns>
    public static bool TryMake(
        Length secondLength,
        Length secondWidth,
        Length roughLength,
        Length roughWidth,
        [NotNullWhen(true)] out SeriesSteps? steps,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal =
            FigureRange.Refuse("The second drift's step in length", secondLength.Mm, 0, 20, " mm")
            ?? FigureRange.Refuse("The second drift's step in width", secondWidth.Mm, 0, 20, " mm")
            ?? FigureRange.Refuse("The rough drift's step in length", roughLength.Mm, secondLength.Mm, 20, " mm")
            ?? FigureRange.Refuse("The rough drift's step in width", roughWidth.Mm, secondWidth.Mm, 20, " mm");
        steps = refusal is null
            ? new SeriesSteps(new EyeSize(secondLength.Mm, secondWidth.Mm), new EyeSize(roughLength.Mm, roughWidth.Mm))
            : null;
        return refusal is null;
    }
}
