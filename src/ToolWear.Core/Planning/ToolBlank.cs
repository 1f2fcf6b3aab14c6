using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning;

/// <summary>The body that is proposed for a tool not made yet. All of it common practice, no source.</summary>
/// <param name="Mark">The drive mark of a drift, from the shank mark towards the nose; null for others.</param>
/// <param name="Overall">The length over all, struck end to nose.</param>
/// <param name="Least">
/// The least length over all: with its struck end ground back so far, 40 mm still stand out of the head to be held and
/// struck when it is driven to its mark.
/// </param>
/// <param name="Body">The body from the shank mark to the nose.</param>
public sealed record ToolBlank(Length? Mark, Length Overall, Length Least, Body Body)
{
    private const double MarkMm = 70;
    private const double BehindMm = 10;
    private const double ShoulderMm = 10;
    private const double StandsOutMm = 40;
    private const double UsualDepthMm = 40;
    private const double BeyondDepthMm = 6;
    private const double NoseShare = 0.45;
    private const double NoseTaper = 0.09;
    private const double ShankShare = 0.8;

    // a slitter or punch: a round shank, then flat to its edge
    private const double SlitShankMm = 22;
    private const double SlitLongMm = 190;
    private const double SlitLeastMm = 130;
    private const double SlitNoseMm = 180;

    /// <summary>Proposes the body of a tool of a series: a drift, a slitter or a punch.</summary>
    /// <param name="series">What it is made like.</param>
    /// <param name="depthMm">How deep its eye is; null where not known.</param>
    /// <param name="blank">The body, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason.</param>
    /// <returns>True where they can be.</returns>
    public static bool TryFor(
        Series series,
        double? depthMm,
        [NotNullWhen(true)] out ToolBlank? blank,
        [NotNullWhen(false)] out string? refusal
    )
    {
        blank = null;
        refusal = "the series says too little of it";
        return series.AtMark() is { } section
            && (
                series.Form.OpensASlit
                    ? TrySlit(section, out blank, out refusal)
                    : series.Form.Name == "drift"
                        && TryFor(
                            section,
                            depthMm,
                            series.TaperLength ?? 0,
                            series.TaperWidth ?? 0,
                            out blank,
                            out refusal
                        )
            );
    }

    private static bool TrySlit(Section edge, out ToolBlank? blank, [NotNullWhen(false)] out string? refusal)
    {
        blank = null;
        // three times as thick where the edge begins as at its end, and no thicker than it is long
        Length thick = Length.FromMm(Math.Min(edge.EyeLength.Mm, Math.Max(edge.EyeWidth.Mm * 2, 9)));
        if (
            RoundSection.TryMake(Length.FromMm(SlitShankMm), out RoundSection? shank, out refusal)
            && edge.TryWornTo(edge.EyeLength, thick, out Section? root, out refusal)
            && Body.TryMake(
                [At(0, shank), At(80, shank), At(110, root), At(SlitNoseMm, edge)],
                out Body? body,
                out refusal
            )
        )
        {
            blank = new ToolBlank(null, Length.FromMm(SlitLongMm), Length.FromMm(SlitLeastMm), body);
        }

        return blank is not null;
    }

    /// <summary>Proposes the body of a drift.</summary>
    /// <param name="atMark">Its section at the mark.</param>
    /// <param name="depthMm">How deep its eye is; null where not known.</param>
    /// <param name="taperLength">The taper of the length in the full-size part.</param>
    /// <param name="taperWidth">The taper of the width there.</param>
    /// <param name="blank">The body, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason.</param>
    /// <returns>True where they can be.</returns>
    public static bool TryFor(
        Section atMark,
        double? depthMm,
        double taperLength,
        double taperWidth,
        [NotNullWhen(true)] out ToolBlank? blank,
        [NotNullWhen(false)] out string? refusal
    )
    {
        blank = null;
        double full = (depthMm ?? UsualDepthMm) + BeyondDepthMm;
        double shank = Math.Round(ShankShare * Math.Sqrt(4 * atMark.AreaMm2() / Math.PI));
        double noseRun = Math.Round(atMark.EyeLength.Mm * (1 - NoseShare) / NoseTaper);
        if (
            !RoundSection.TryMake(Length.FromMm(shank), out RoundSection? round, out refusal)
            || !atMark.TryWornTo(
                Length.FromMm(atMark.EyeLength.Mm - (taperLength * full)),
                Length.FromMm(atMark.EyeWidth.Mm - (taperWidth * full)),
                out Section? end,
                out refusal
            )
            || !Section.TryMake(
                atMark.Kind,
                Length.FromMm(atMark.EyeLength.Mm * NoseShare),
                Length.FromMm(atMark.EyeWidth.Mm * NoseShare),
                Length.FromMm(Math.Floor(atMark.Radius.Mm * NoseShare * 10) / 10),
                out Section? nose,
                out refusal
            )
            || !Body.TryMake(
                [
                    At(0, round),
                    At(MarkMm - ShoulderMm, round),
                    At(MarkMm, atMark),
                    At(MarkMm + full, end),
                    At(MarkMm + full + noseRun, nose),
                ],
                out Body? body,
                out refusal
            )
        )
        {
            return false;
        }

        double overall = BehindMm + MarkMm + full + noseRun;
        blank = new ToolBlank(
            Length.FromMm(MarkMm),
            Length.FromMm(overall),
            Length.FromMm(overall - (BehindMm + MarkMm - StandsOutMm)),
            body
        );
        return true;
    }

    private static Station At(double mm, Section section) => new(BodyPart.Body, Length.FromMm(mm), section);
}
