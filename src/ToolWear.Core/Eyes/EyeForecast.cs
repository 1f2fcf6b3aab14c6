using ToolWear.Core.Measure;

namespace ToolWear.Core.Eyes;

/// <summary>The cold eye that a drift makes now: predicted from shrinkage, and found by the shop where it has measured.</summary>
/// <param name="Predicted">The eye by shrinkage alone.</param>
/// <param name="FoundLengthMm">The length by the shop's own allowance, or why there is none.</param>
/// <param name="FoundWidthMm">The width by the shop's own allowance, or why there is none.</param>
/// <param name="Heads">How many measured eyes stand behind what was found; 0 where nothing was.</param>
public sealed record EyeForecast(EyeSize Predicted, Estimated FoundLengthMm, Estimated FoundWidthMm, int Heads)
{
    /// <summary>The eye to use: what the shop found, else the prediction.</summary>
    public EyeSize Eye =>
        FoundLengthMm is Estimate length && FoundWidthMm is Estimate width
            ? new EyeSize(length.Value, width.Value)
            : Predicted;

    /// <summary>Forecasts the eye of a drift.</summary>
    /// <param name="drift">The cold drift at its mark, as it is now.</param>
    /// <param name="knockOut">The temperatures of drift and eye.</param>
    /// <param name="eyes">The finished eyes measured for this place and eye.</param>
    /// <returns>The forecast.</returns>
    public static EyeForecast For(EyeSize drift, KnockOut knockOut, IReadOnlyList<MeasuredEye> eyes)
    {
        EyeSize predicted = knockOut.Eyes(drift);
        return ShopAllowance.TryFrom(eyes, out ShopAllowance? own, out NotEnoughData? missing)
            ? new EyeForecast(predicted, own.NextLengthMm(drift.LengthMm), own.NextWidthMm(drift.WidthMm), own.Heads)
            : new EyeForecast(predicted, missing, missing, 0);
    }

    /// <summary>The length in words: "predicted 36.3, found 36.2 on 6 heads".</summary>
    /// <param name="unit">The unit for people.</param>
    /// <returns>Words without a full stop, no finer than 0.1 mm or 1/64 in.</returns>
    public string LengthInWords(LengthUnit unit = LengthUnit.Mm) => Words(Predicted.LengthMm, FoundLengthMm, unit);

    /// <summary>The width in words, as the length.</summary>
    /// <param name="unit">The unit for people.</param>
    /// <returns>Words without a full stop, no finer than 0.1 mm or 1/64 in.</returns>
    public string WidthInWords(LengthUnit unit = LengthUnit.Mm) => Words(Predicted.WidthMm, FoundWidthMm, unit);

    private string Words(double predictedMm, Estimated found, LengthUnit unit)
    {
        string Size(double mm) => SizeShown.Eye(Length.FromMm(mm), unit);
        string predicted = $"predicted {Size(predictedMm)}";
        return found is Estimate estimate ? $"{predicted}, found {Size(estimate.Value)} on {Heads} heads" : predicted;
    }
}
