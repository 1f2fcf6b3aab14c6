using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes;

/// <summary>Whether a worn tool can be ground into a smaller one.</summary>
/// <remarks>By shape alone: never after a crack or an over-heat, nor in unknown steel without trial.</remarks>
/// <param name="Target">The smaller tool.</param>
/// <param name="Clearance">The room that the worn tool leaves round it.</param>
/// <param name="CleanUp">What has to come off all round.</param>
/// <param name="LengthwaysMm">Half the difference in length: what comes off each end.</param>
/// <param name="WidthwaysMm">Half the difference in width: what comes off each cheek.</param>
public sealed record MakingInto(
    NamedSection Target,
    Clearance Clearance,
    Length CleanUp,
    double LengthwaysMm,
    double WidthwaysMm
)
{
    // the tenth of a nanometre to which a clearance is known
    private const double DoubtMm = 1e-7;

    /// <summary>Whether the worn tool holds the smaller one with the clean-up allowance all round.</summary>
    public bool Possible => Clearance.ClearanceMm >= CleanUp.Mm - DoubtMm;

    /// <summary>What a worn tool can become.</summary>
    /// <param name="worn">Its section as it is now.</param>
    /// <param name="targets">The tools it might become.</param>
    /// <param name="cleanUp">What has to come off all round, 0 to 20 mm.</param>
    /// <param name="makings">One for each target, possible or not, in the order given.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where the allowance can be.</returns>
    public static bool TryFrom(
        Section worn,
        IReadOnlyList<NamedSection> targets,
        Length cleanUp,
        [NotNullWhen(true)] out IReadOnlyList<MakingInto>? makings,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal = FigureRange.Refuse("The clean-up all round", cleanUp.Mm, 0, 20, " mm");
        makings = refusal is null ? [.. targets.Select(target => Of(worn, target, cleanUp))] : null;
        return refusal is null;
    }

    private static MakingInto Of(Section worn, NamedSection target, Length cleanUp) =>
        new(
            target,
            Inside.Of(worn, target.Section),
            cleanUp,
            (worn.EyeLength - target.Section.EyeLength).Mm / 2,
            (worn.EyeWidth - target.Section.EyeWidth).Mm / 2
        );
}
