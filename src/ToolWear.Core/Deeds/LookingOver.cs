using ToolWear.Core.Ledger;

namespace ToolWear.Core.Deeds;

/// <summary>Looking a tool over.</summary>
public static class LookingOver
{
    /// <summary>Whether a finding may come of an over-heat: an air-hardening tool is brittle then until it is tempered.
    /// Common practice, no source.</summary>
    /// <param name="finding">The finding.</param>
    /// <returns>True for soft, glass-hard, stuck and cracked.</returns>
    public static bool MayBeOverheated(Finding finding) =>
        finding is Finding.Soft or Finding.GlassHard or Finding.Stuck or Finding.Cracked;
}
