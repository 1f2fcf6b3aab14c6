using MathNet.Numerics.Distributions;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Alone;

// The line x = x0 + b n since the segment's start, b ~ bhat + se t(m-1). It is past the limit L after n heats where
// b n >= L - x0, so
//   F(k) = P(b >= (L-x0)/(now+k)) = T((bhat - (L-x0)/(now+k)) / se; m-1)
/// <summary>The forecast from this tool's own straight line since its last rework, and nothing else.</summary>
public sealed record LineForecast : Forecast
{
    private readonly LineThroughStart line;
    private readonly double se;
    private readonly double startMm;
    private readonly double leastVariance;

    internal LineForecast(LineThroughStart line, double leastVariance, double startMm, double limitMm, double heatsNow)
    {
        this.line = line;
        this.leastVariance = leastVariance;
        this.startMm = startMm;
        se = line.SlopeSeAtLeast(leastVariance) ?? throw new ArgumentException("needs two readings", nameof(line));
        LimitMm = limitMm;
        HeatsNow = heatsNow;
        ChancePastLimitNow = F(0);
        HeatsLeftIfNotPast = HeatsLeft.Of(F, ChancePastLimitNow, Math.Max(1, heatsNow) / 16);
    }

    /// <inheritdoc />
    public override double WearNowMm => startMm + (line.Slope * HeatsNow);

    /// <inheritdoc />
    public override double LimitMm { get; }

    /// <inheritdoc />
    public override double HeatsNow { get; }

    /// <inheritdoc />
    public override double ChancePastLimitNow { get; }

    /// <inheritdoc />
    public override HeatsLeft HeatsLeftIfNotPast { get; }

    /// <inheritdoc />
    public override Estimated RateMmPerHeat => ThisToolAlone.Rate(line, leastVariance);

    /// <inheritdoc />
    public override Estimated LifeHeats => ThisToolAlone.HeatsToRise(line, LimitMm, leastVariance);

    /// <inheritdoc />
    public override double ChancePastLimit(double moreHeats) => F(Finite.NotNegative(moreHeats));

    private double F(double k)
    {
        double left = LimitMm - startMm;
        double n = HeatsNow + k;
        if (left <= 0)
        {
            return 1;
        }

        if (n <= 0)
        {
            return 0;
        }

        double b = left / n;
        return se > 0 ? StudentT.CDF(b, se, line.Freedom, line.Slope) : (line.Slope >= b ? 1 : 0);
    }
}
