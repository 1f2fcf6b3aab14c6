using System.Diagnostics.CodeAnalysis;
using MathNet.Numerics.Integration;
using ToolWear.Core.Sections;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Planning.Lives;

// wear alone: ln T ~ N(ln m, s^2), S_wear(t) = Phi((ln m - ln t)/s)
// with cracks: S(t) = S_wear(t) S_crack(t);  with t(z) = m e^(s z), z standard normal:
//   mean = E integral of S_crack from 0 to t(z);   P(cracks first) = E (1 - S_crack(t(z)))
/// <summary>A log-normal life of wear, with or without sudden failures that come independently of it.</summary>
public sealed record LogNormalLife : Life
{
    private const double Reach = 10;
    private const int Panels = 40;
    private const int Order = 20;

    private LogNormalLife(double median, double sdLog, WeibullLife? cracks)
    {
        (MedianHeats, SdLog, Cracks) = (median, sdLog, cracks);
        MeanHeats = Mean(t => cracks?.MeanHeatsWithin(t) ?? t);
        ChanceCracksFirst = cracks is null ? 0 : Mean(t => 1 - cracks.Surviving(t));
    }

    /// <summary>m: half of the tools are worn out by so many heats; 0.5 to 100 000.</summary>
    public double MedianHeats { get; }

    /// <summary>s: the spread of ln T from tool to tool; 0.001 to 3.</summary>
    public double SdLog { get; }

    /// <summary>The sudden failures; null where none are reckoned with.</summary>
    public WeibullLife? Cracks { get; }

    /// <inheritdoc />
    public override double MeanHeats { get; }

    /// <summary>The chance that a new tool fails suddenly before it is worn out; 0 without sudden failures.</summary>
    public double ChanceCracksFirst { get; }

    /// <summary>Takes the figures.</summary>
    /// <param name="median">m in heats, 0.5 to 100 000.</param>
    /// <param name="sdLog">s, 0.001 to 3.</param>
    /// <param name="cracks">Sudden failures, null for none.</param>
    /// <param name="life">The life, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where the figures can be.</returns>
    public static bool TryMake(
        double median,
        double sdLog,
        WeibullLife? cracks,
        [NotNullWhen(true)] out LogNormalLife? life,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal =
            FigureRange.Refuse("The median life", median, 0.5, 100_000, " heats")
            ?? FigureRange.Refuse("The spread of the logarithm of the life", sdLog, 0.001, 3, "");
        life = refusal is null ? new LogNormalLife(median, sdLog, cracks) : null;
        return refusal is null;
    }

    /// <inheritdoc />
    public override double Surviving(double heats) => Worn(heats) * (Cracks?.Surviving(heats) ?? 1);

    /// <inheritdoc />
    public override double Density(double heats)
    {
        double z = (Math.Log(heats) - Math.Log(MedianHeats)) / SdLog;
        double wear = StandardDensity(z) / (SdLog * heats);
        return Cracks is null ? wear : (wear * Cracks.Surviving(heats)) + (Worn(heats) * Cracks.Density(heats));
    }

    private static double StandardDensity(double z) => Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);

    private double Worn(double t) => t > 0 ? NormalCurve.Phi((Math.Log(MedianHeats) - Math.Log(t)) / SdLog) : 1;

    // the integrand may grow as e^(s z), which moves its peak by s
    private double Mean(Func<double, double> ofLife)
    {
        double width = ((2 * Reach) + SdLog) / Panels;
        double sum = 0;
        for (int i = 0; i < Panels; i++)
        {
            double from = (width * i) - Reach;
            sum += GaussLegendreRule.Integrate(
                z => StandardDensity(z) * ofLife(MedianHeats * Math.Exp(SdLog * z)),
                from,
                from + width,
                Order
            );
        }

        return sum;
    }
}
