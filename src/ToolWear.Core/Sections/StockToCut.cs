using System.Diagnostics.CodeAnalysis;

namespace ToolWear.Core.Sections;

/// <summary>What to cut off a bar for a tool.</summary>
/// <param name="VolumeMm3">The volume V of the finished tool in mm3.</param>
/// <param name="MassKg">The mass of the finished tool in kg.</param>
/// <param name="LengthMm">The length L to cut in mm.</param>
/// <param name="StockMassKg">The mass of what is cut in kg.</param>
/// <param name="LargestAreaMm2">The area of the tool's largest station in mm2.</param>
/// <param name="BarAreaMm2">The area A_bar of the bar in mm2.</param>
public sealed record StockToCut(
    double VolumeMm3,
    double MassKg,
    double LengthMm,
    double StockMassKg,
    double LargestAreaMm2,
    double BarAreaMm2
)
{
    /// <summary>Whether the bar is smaller than the tool's largest station, so that it has to be upset.</summary>
    public bool MustBeUpset => BarAreaMm2 < LargestAreaMm2;

    /// <summary>Works out the stock: L = V (1 + s) / A_bar + extra.</summary>
    /// <param name="body">The finished tool.</param>
    /// <param name="barAreaMm2">The area of the bar, 0.01 to 1 000 000 mm2.</param>
    /// <param name="lossShare">The share s lost to scale and grinding, 0 to 0.9; common practice 0.05 to 0.10.</param>
    /// <param name="extraMm">For holding, kerf or crop, 0 to 10 000 mm; 0 when forged on the end of the bar.</param>
    /// <param name="stock">The stock, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where the stock was worked out.</returns>
    public static bool TryFor(
        Body body,
        double barAreaMm2,
        double lossShare,
        double extraMm,
        [NotNullWhen(true)] out StockToCut? stock,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal =
            FigureRange.Refuse("The area of the bar", barAreaMm2, 0.01, 1_000_000, " mm2")
            ?? FigureRange.Refuse("The loss", lossShare, 0, 0.9, " as a share of one")
            ?? FigureRange.Refuse("The extra", extraMm, 0, 10_000, " mm");
        stock = null;
        if (refusal is not null)
        {
            return false;
        }

        double volume = body.VolumeMm3;
        double length = (volume * (1 + lossShare) / barAreaMm2) + extraMm;
        stock = new StockToCut(
            volume,
            Steel.MassKg(volume),
            length,
            Steel.MassKg(length * barAreaMm2),
            body.LargestAreaMm2,
            barAreaMm2
        );
        return true;
    }
}
