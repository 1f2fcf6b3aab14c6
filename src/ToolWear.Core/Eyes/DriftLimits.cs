namespace ToolWear.Core.Eyes;

/// <summary>The cold drift at its mark that still makes an eye inside its tolerance: smaller, it is scrap.</summary>
/// <param name="Least">The least length and width, D_min.</param>
/// <param name="Greatest">The greatest length and width, D_max.</param>
public sealed record DriftLimits(EyeSize Least, EyeSize Greatest)
{
    /// <summary>Limits by shrinkage: D_min = E_min (1 + e(T_eye)) / (1 + e(T_drift)), D_max likewise.</summary>
    /// <param name="tolerance">The tolerance on the cold eye.</param>
    /// <param name="knockOut">The temperatures of drift and eye.</param>
    /// <returns>The limits.</returns>
    public static DriftLimits Predicted(EyeTolerance tolerance, KnockOut knockOut) =>
        new(
            new EyeSize(knockOut.DriftMm(tolerance.LeastLength.Mm), knockOut.DriftMm(tolerance.LeastWidth.Mm)),
            new EyeSize(knockOut.DriftMm(tolerance.GreatestLength.Mm), knockOut.DriftMm(tolerance.GreatestWidth.Mm))
        );

    /// <summary>Limits by what the shop found: the eye's limits and the mean of drift less cold eye.</summary>
    /// <param name="tolerance">The tolerance on the cold eye.</param>
    /// <param name="allowance">The shop's own allowance.</param>
    /// <returns>The limits.</returns>
    public static DriftLimits Found(EyeTolerance tolerance, ShopAllowance allowance) =>
        new(
            new EyeSize(tolerance.LeastLength.Mm + allowance.LengthMm, tolerance.LeastWidth.Mm + allowance.WidthMm),
            new EyeSize(
                tolerance.GreatestLength.Mm + allowance.LengthMm,
                tolerance.GreatestWidth.Mm + allowance.WidthMm
            )
        );
}
