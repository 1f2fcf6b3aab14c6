using System.Runtime.InteropServices;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Lifetimes;

/// <summary>How long one tool was watched, and whether it failed suddenly (a crack, a break) at the end.</summary>
/// <remarks>A tool worn out, discarded or still in service did not fail: it is censored at its heats.</remarks>
/// <param name="Heats">Heats from new to the end of the watch: finite, zero or more, above zero where it failed.</param>
/// <param name="Failed">Whether it failed then.</param>
/// <param name="FromHeats">Heats it had when the watch began, from zero to <paramref name="Heats"/>.</param>
/// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
[StructLayout(LayoutKind.Auto)]
public readonly record struct WatchedLife(double Heats, bool Failed, double FromHeats = 0)
{
    /// <summary>Heats from new to the end of the watch.</summary>
    public double Heats { get; } = Failed ? Finite.Positive(Heats) : Finite.NotNegative(Heats);

    /// <summary>Heats it had when the watch began.</summary>
    public double FromHeats { get; } =
        Finite.NotNegative(FromHeats) <= Heats
            ? FromHeats
            : throw new ArgumentOutOfRangeException(nameof(FromHeats), FromHeats, $"is beyond the end at {Heats}");
}
