using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Planning.Decisions;

// finish heats after h rough ones: hf(h) = hmin + A exp(-h/s);  cr = Cr/Nr + ct, cf = Cf/Nf + ct
// cost(h) = cr h + cf hf(h), least at h* = s ln(A cf / (s cr)), floored at 0
/// <summary>Where to spend the heats of a head: on the rough drift or on the finish drift.</summary>
/// <param name="RoughHeats">h*, the best number of rough heats, zero or more.</param>
/// <param name="CostAtBest">The cost of a head's heats at h*.</param>
/// <param name="WholeHeats">The better of the two neighbouring whole numbers.</param>
/// <param name="CostAtWhole">The cost there.</param>
/// <param name="CostWithout">The cost with no rough heat at all.</param>
/// <param name="CostARoughHeat">cr.</param>
/// <param name="CostAFinishHeat">cf.</param>
public sealed record HeatSplit(
    double RoughHeats,
    double CostAtBest,
    int WholeHeats,
    double CostAtWhole,
    double CostWithout,
    double CostARoughHeat,
    double CostAFinishHeat
)
{
    /// <summary>What a head saves with the whole number against none.</summary>
    public double Saving => CostWithout - CostAtWhole;

    /// <summary>Finds the split.</summary>
    /// <param name="costARoughHeat">cr, above zero.</param>
    /// <param name="costAFinishHeat">cf, above zero.</param>
    /// <param name="leastFinishHeats">hmin, the finish heats that are always needed, zero or more.</param>
    /// <param name="moreWithoutRough">A, how many more without any rough heat, zero or more.</param>
    /// <param name="roughHeatsThatHelp">s, the rough heats that take two thirds of those away, above zero.</param>
    /// <param name="split">The split, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where the figures can be.</returns>
    public static bool TryFor(
        double costARoughHeat,
        double costAFinishHeat,
        double leastFinishHeats,
        double moreWithoutRough,
        double roughHeatsThatHelp,
        [NotNullWhen(true)] out HeatSplit? split,
        [NotNullWhen(false)] out string? refusal
    )
    {
        (double cr, double cf, double A, double s) = (
            costARoughHeat,
            costAFinishHeat,
            moreWithoutRough,
            roughHeatsThatHelp
        );
        refusal =
            FigureRange.Refuse("The cost of a rough heat", cr, 1e-6, 1e6, "")
            ?? FigureRange.Refuse("The cost of a finish heat", cf, 1e-6, 1e6, "")
            ?? FigureRange.Refuse("The least finish heats", leastFinishHeats, 0, 1000, "")
            ?? FigureRange.Refuse("The finish heats more without rough ones", A, 0, 1000, "")
            ?? FigureRange.Refuse("The rough heats that help", s, 0.01, 1000, "");
        split = null;
        if (refusal is not null)
        {
            return false;
        }

        double Cost(double h) => (cr * h) + (cf * (leastFinishHeats + (A * Math.Exp(-h / s))));
        double best = A > 0 ? Math.Max(0, s * Math.Log(A * cf / (s * cr))) : 0;
        double below = Math.Floor(best);
        double whole = Cost(below) <= Cost(below + 1) ? below : below + 1;
        split = new HeatSplit(best, Cost(best), (int)whole, Cost(whole), Cost(0), cr, cf);
        return true;
    }
}
