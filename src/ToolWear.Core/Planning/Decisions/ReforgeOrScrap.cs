using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Planning.Decisions;

/// <summary>Whether a rework pays: its cost for each heat gained against that of a new tool.</summary>
/// <param name="Reforge">True where the rework is the cheaper heat.</param>
/// <param name="ReworkAHeat">Cost of the rework for each heat it gains.</param>
/// <param name="NewAHeat">Cost of a new tool for each heat of its life, with its range.</param>
public sealed record ReforgeOrScrap(bool Reforge, double ReworkAHeat, Estimate NewAHeat)
{
    /// <summary>Weighs the two.</summary>
    /// <param name="reworkCost">Hours at the shop's rate and what else it costs, zero or more.</param>
    /// <param name="heatsGained">Heats it gains, above zero.</param>
    /// <param name="newCost">What a new tool costs, zero or more.</param>
    /// <param name="newLife">Heats a new tool lasts.</param>
    /// <returns>The answer.</returns>
    public static ReforgeOrScrap Of(double reworkCost, double heatsGained, double newCost, Estimate newLife)
    {
        double rework = Finite.NotNegative(reworkCost) / Finite.Positive(heatsGained);
        // the range of a quotient runs the other way; a life without upper bound costs next to nothing a heat
        Estimate fresh = new(
            Finite.NotNegative(newCost) / Finite.Positive(newLife.Value),
            newLife.High90 is { } high ? newCost / high : 0,
            newLife.Low90 > 0 ? newCost / newLife.Low90 : null
        );
        return new ReforgeOrScrap(rework < fresh.Value, rework, fresh);
    }
}
