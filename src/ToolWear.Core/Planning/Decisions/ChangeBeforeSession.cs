using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Planning.Decisions;

// change where cf F(s) > cp (expected unused heats lost) / (mean life)
/// <summary>Whether to change a tool before a session rather than in the middle of it.</summary>
/// <param name="Change">True where changing now is cheaper.</param>
/// <param name="CostOfStaying">cf F(s): what a failure costs, times its chance.</param>
/// <param name="CostOfChanging">The share of a change that is thrown away with the unused heats.</param>
public sealed record ChangeBeforeSession(bool Change, double CostOfStaying, double CostOfChanging) : Estimated
{
    /// <summary>Minutes that a failure in the middle costs besides the head it spoils. Common practice, no source.</summary>
    public const double MinutesLost = 20;

    /// <summary>Minutes that a planned change costs. Common practice, no source.</summary>
    public const double MinutesOfAChange = 5;

    /// <summary>Weighs the two.</summary>
    /// <param name="chanceFails">F(s), the chance that it fails within the session, 0 to 1.</param>
    /// <param name="expectedHeatsLeft">The heats it would still give on average, zero or more.</param>
    /// <param name="meanLife">The mean life of such a tool in heats, above zero.</param>
    /// <param name="costPlanned">cp, zero or more.</param>
    /// <param name="costFailure">cf, zero or more.</param>
    /// <param name="failures">How many failures stand behind the chance; below two nothing is said.</param>
    /// <returns>A <see cref="ChangeBeforeSession"/>, or <see cref="NotEnoughData"/>: then use the tool to its limit.</returns>
    public static Estimated Of(
        double chanceFails,
        double expectedHeatsLeft,
        double meanLife,
        double costPlanned,
        double costFailure,
        int failures
    )
    {
        if (failures < 2)
        {
            return new NotEnoughData(failures, 2, "too few tools failed suddenly to say so");
        }

        double staying = Finite.NotNegative(costFailure) * Finite.NotNegative(chanceFails);
        double changing =
            Finite.NotNegative(costPlanned) * Finite.NotNegative(expectedHeatsLeft) / Finite.Positive(meanLife);
        return new ChangeBeforeSession(staying > changing, staying, changing);
    }
}
