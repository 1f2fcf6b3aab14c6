using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes.Slits;

/// <summary>The slits worth trying for an eye: its length less 0 to 3 mm (common practice, no source).</summary>
/// <param name="Longest">As long as the eye: least stretch, ends nearest to splitting.</param>
/// <param name="Shortest">3 mm shorter (a tenth of a short eye): more stretch, safer ends.</param>
public sealed record SlitProposal(Slit Longest, Slit Shortest)
{
    private const double ShorterMm = 3;

    /// <summary>Proposes the slits for an eye.</summary>
    /// <param name="tool">What opens it.</param>
    /// <param name="t">The width of the punch in mm, up to the width of the eye; not used for a slitter.</param>
    /// <param name="eye">The section of the finished eye.</param>
    /// <param name="proposal">The slits, where there are such.</param>
    /// <param name="refusal">Otherwise the reason, with what is allowed.</param>
    /// <returns>True where there are such.</returns>
    public static bool TryFor(
        SlitTool tool,
        double t,
        Section eye,
        [NotNullWhen(true)] out SlitProposal? proposal,
        [NotNullWhen(false)] out string? refusal
    )
    {
        double length = eye.EyeLength.Mm;
        double shorter = length - Math.Min(ShorterMm, length / 10);
        proposal = null;
        if (
            Slit.TryFor(tool, length, t, eye, out Slit? longest, out refusal)
            && Slit.TryFor(tool, shorter, t, eye, out Slit? shortest, out refusal)
        )
        {
            proposal = new SlitProposal(longest, shortest);
        }

        return proposal is not null;
    }
}
