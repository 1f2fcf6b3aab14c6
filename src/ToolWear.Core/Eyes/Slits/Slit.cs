using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes.Slits;

/// <summary>An opening for an eye, and how far it has to stretch round the drift.</summary>
/// <param name="Tool">What opens it.</param>
/// <param name="LengthMm">The length s of the slit.</param>
/// <param name="ToolWidthMm">The width t of the punch; 0 for a slitter.</param>
/// <param name="StretchShare">Perimeter of the eye over that of the opening, less one.</param>
public sealed record Slit(SlitTool Tool, double LengthMm, double ToolWidthMm, double StretchShare)
{
    /// <summary>The stretch above which to warn: 0.30 (common practice, no source; adze eyes may need 0.50).</summary>
    public const double StretchToWarn = 0.30;

    /// <summary>A warning where the opening stretches much, else null. The smith may overrule it.</summary>
    public string? Warning =>
        StretchShare > StretchToWarn
            ? $"The opening stretches by {Percent(StretchShare)} %, more than {Percent(StretchToWarn)}: its ends may tear."
            : null;

    /// <summary>The perimeter of an opening: 2 s of a slitter, 2 s + (pi - 2) t of a slot punch, 2 (s + t) of a square one.</summary>
    /// <param name="tool">What opens it.</param>
    /// <param name="s">The length of the slit in mm.</param>
    /// <param name="t">The width of the punch in mm; not used for a slitter.</param>
    /// <returns>The perimeter in mm.</returns>
    public static double OpeningMm(SlitTool tool, double s, double t) =>
        tool switch
        {
            SlitTool.Slitter => 2 * s,
            SlitTool.SlotPunch => (2 * s) + ((Math.PI - 2) * t),
            _ => 2 * (s + t),
        };

    /// <summary>The length of the slit that stretches by so much.</summary>
    /// <param name="tool">What opens it.</param>
    /// <param name="perimeterMm">The perimeter P of the eye, 1 to 10 000 mm.</param>
    /// <param name="t">The width of the punch, 0 to 1000 mm; not used for a slitter.</param>
    /// <param name="stretchShare">The stretch as a share, 0 to 1.</param>
    /// <param name="slitMm">The length s in mm, where there is one.</param>
    /// <param name="refusal">Otherwise the reason, with what is allowed.</param>
    /// <returns>True where there is one.</returns>
    public static bool TryLength(
        SlitTool tool,
        double perimeterMm,
        double t,
        double stretchShare,
        out double slitMm,
        [NotNullWhen(false)] out string? refusal
    )
    {
        slitMm = 0;
        refusal =
            FigureRange.Refuse("The perimeter of the eye", perimeterMm, 1, 10_000, " mm")
            ?? FigureRange.Refuse("The stretch", stretchShare, 0, 1, " as a share of one")
            ?? (tool == SlitTool.Slitter ? null : FigureRange.Refuse("The width of the punch", t, 0, 1000, " mm"));
        if (refusal is not null)
        {
            return false;
        }

        // what the slit alone has to give, P / (1 + stretch) = opening(s)
        double rest = (perimeterMm / (1 + stretchShare)) - OpeningMm(tool, 0, t);
        double s = rest / 2;
        if (!(s > 0) || (tool != SlitTool.Slitter && s < t))
        {
            refusal =
                $"A punch {Mm(t)} mm wide opens more than that without being longer than wide: take a narrower one.";
            return false;
        }

        slitMm = s;
        return true;
    }

    /// <summary>Judges a slit for an eye.</summary>
    /// <param name="tool">What opens it.</param>
    /// <param name="s">The length of the slit in mm, 1 mm to the length of the eye.</param>
    /// <param name="t">The width of the punch in mm, up to the width of the eye; not used for a slitter.</param>
    /// <param name="eye">The section of the finished eye.</param>
    /// <param name="slit">The slit with its stretch, where it serves.</param>
    /// <param name="refusal">Otherwise the reason: longer than the eye (split ends, cold shuts), or larger already.</param>
    /// <returns>True where it serves, perhaps with a warning.</returns>
    public static bool TryFor(
        SlitTool tool,
        double s,
        double t,
        Section eye,
        [NotNullWhen(true)] out Slit? slit,
        [NotNullWhen(false)] out string? refusal
    )
    {
        slit = null;
        double width = tool == SlitTool.Slitter ? 0 : t;
        double eyeLength = eye.EyeLength.Mm;
        refusal =
            s > eyeLength
                ? $"A slit of {Mm(s)} mm is longer than the eye: split ends and cold shuts. It must be 1 to {Mm(eyeLength)} mm."
                : FigureRange.Refuse("The slit", s, 1, eyeLength, " mm")
                    ?? FigureRange.Refuse("The width of the punch", width, 0, eye.EyeWidth.Mm, " mm");
        if (refusal is not null)
        {
            return false;
        }

        double stretch = (eye.PerimeterMm() / OpeningMm(tool, s, width)) - 1;
        if (stretch < 0)
        {
            refusal = "The opening is larger round than the eye already: take a shorter slit or a narrower punch.";
            return false;
        }

        slit = new Slit(tool, s, width, stretch);
        return true;
    }

    /// <summary>Whether a worn edge is still as wide as the slit needs; narrower, the tool is at its limit.</summary>
    /// <param name="edgeMm">The width of the edge now in mm.</param>
    /// <returns>True where it is.</returns>
    public bool EdgeServes(double edgeMm) => edgeMm >= LengthMm;

    private static string Mm(double mm) => mm.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Percent(double share) => (share * 100).ToString("0", CultureInfo.InvariantCulture);
}
