using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes;

/// <summary>A series of drifts proposed for a new eye; the smith alters it as he likes.</summary>
/// <param name="Rough">The rough drift at the mark, cold.</param>
/// <param name="Second">The second drift at the mark, cold.</param>
/// <param name="Finish">The finish drift at the mark, cold: the eye and what it shrinks.</param>
/// <param name="TaperLength">The taper of the length of all three, as the eye's.</param>
/// <param name="TaperWidth">The taper of the width of all three, as the eye's.</param>
/// <param name="Nesting">Rough in second and second in finish, with warnings where one spoils the next.</param>
/// <param name="Slits">The slits worth trying.</param>
public sealed record SeriesProposal(
    Section Rough,
    Section Second,
    Section Finish,
    double TaperLength,
    double TaperWidth,
    IReadOnlyList<NestingStep> Nesting,
    SlitProposal Slits
)
{
    // what can be ground to: sizes to 0.05 mm, radii to 0.1 mm
    private const double SizeMm = 0.05;
    private const double RadiusMm = 0.1;

    // a small eye cannot give up a hatchet's millimetres: no drift is more than a quarter smaller than the finish
    private const double MostShare = 0.25;

    /// <summary>Proposes a series.</summary>
    /// <param name="eye">The finished cold eye at its face.</param>
    /// <param name="knockOut">The finish drift's temperatures.</param>
    /// <param name="taperLength">The eye's taper of length, 0 to 0.5 mm per mm.</param>
    /// <param name="taperWidth">The eye's taper of width, 0 to 0.5 mm per mm.</param>
    /// <param name="steps">How much smaller the earlier drifts are.</param>
    /// <param name="proposal">The series, where there is one.</param>
    /// <param name="refusal">Otherwise the reason, with what is allowed.</param>
    /// <returns>True where there is one.</returns>
    public static bool TryFor(
        Section eye,
        KnockOut knockOut,
        double taperLength,
        double taperWidth,
        SeriesSteps steps,
        [NotNullWhen(true)] out SeriesProposal? proposal,
        [NotNullWhen(false)] out string? refusal
    )
    {
        proposal = null;
        EyeSize full = new(
            Nearest(knockOut.DriftMm(eye.EyeLength.Mm), SizeMm),
            Nearest(knockOut.DriftMm(eye.EyeWidth.Mm), SizeMm)
        );
        refusal =
            Taper.Refuse("The taper of the length", taperLength) ?? Taper.Refuse("The taper of the width", taperWidth);
        if (
            refusal is not null
            || !TryDrift(eye, full, new EyeSize(0, 0), out Section? finish, out refusal)
            || !TryDrift(eye, full, steps.Second, out Section? second, out refusal)
            || !TryDrift(eye, full, steps.Rough, out Section? rough, out refusal)
            || !SlitProposal.TryFor(SlitTool.Slitter, 0, eye, out SlitProposal? slits, out refusal)
        )
        {
            return false;
        }

        NamedSection[] series = [new("rough", rough), new("second", second), new("finish", finish)];
        proposal = new SeriesProposal(rough, second, finish, taperLength, taperWidth, NestingStep.Of(series), slits);
        return true;
    }

    // the eye's shape at the finish size less a step, its radius smaller as the width is
    private static bool TryDrift(
        Section eye,
        EyeSize full,
        EyeSize step,
        [NotNullWhen(true)] out Section? drift,
        [NotNullWhen(false)] out string? refusal
    )
    {
        double a = full.LengthMm - Math.Min(step.LengthMm, Nearest(full.LengthMm * MostShare, SizeMm));
        double b = full.WidthMm - Math.Min(step.WidthMm, Nearest(full.WidthMm * MostShare, SizeMm));
        double r = Math.Min(Nearest(eye.Radius.Mm * b / full.WidthMm, RadiusMm), Math.Min(a, b) / 2);
        return Section.TryMake(eye.Kind, Length.FromMm(a), Length.FromMm(b), Length.FromMm(r), out drift, out refusal);
    }

    private static double Nearest(double mm, double step) => Math.Round(mm / step) * step;
}
