using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Core.Wear.Alone;

/// <summary>What one gauge mark's readings since its last rework say by themselves.</summary>
/// <param name="Readings">How many readings that is.</param>
/// <param name="Line">The line through the segment's start, in mm and weighted heats since then; null without a reading after it.</param>
/// <param name="FreeLine">The line that may miss the start; null below three readings. It stands for wear since the start.</param>
/// <param name="RateMmPerHeat">The slope of the line through the start with its t interval, or why there is none.</param>
/// <param name="HeatsToLimit">Weighted heats since the segment's start at which that line reaches the limit, with t limits.</param>
/// <param name="HeatsToLimitOfFreeLine">The same of the free line, with Fieller's limits.</param>
/// <param name="Forecast">A <see cref="LineForecast"/>, or why there is none.</param>
public sealed record ThisToolAlone(
    int Readings,
    LineThroughStart? Line,
    FreeLine? FreeLine,
    Estimated RateMmPerHeat,
    Estimated HeatsToLimit,
    Estimated HeatsToLimitOfFreeLine,
    Estimated Forecast
)
{
    private const double Confidence = 0.9;

    /// <summary>Fits both lines to the last segment.</summary>
    /// <param name="history">One gauge mark of one tool.</param>
    /// <returns>The fits, with a reason wherever a figure is missing.</returns>
    public static ThisToolAlone Of(WearHistory history)
    {
        ImmutableArray<WearReading> readings = history.Last.Readings;
        double startMm = history.Last.StartMm ?? 0;
        double[] n = [.. readings.Select(reading => reading.Heats)];
        double[] x = [.. readings.Select(reading => reading.WearMm - startMm)];
        LineThroughStart? line = LineThroughStart.Fit(n, x);
        FreeLine? free = FreeLine.Fit(n, x);
        double leastVariance = history.ResolutionMm * history.ResolutionMm / 12;
        NotEnoughData? missing = Missing(history, line);
        NotEnoughData? noLimit = missing ?? WithoutLimit(history);
        double leftMm = (history.LimitMm ?? 0) - startMm;
        return new ThisToolAlone(
            n.Length,
            line,
            free,
            missing ?? Rate(line!, leastVariance),
            noLimit ?? HeatsToRise(line!, leftMm, leastVariance),
            noLimit ?? HeatsToRise(free, n.Length, leftMm),
            noLimit
                ?? (Estimated)new LineForecast(line!, leastVariance, startMm, history.LimitMm!.Value, history.HeatsNow)
        );
    }

    internal static Estimated Rate(LineThroughStart line, double leastVariance)
    {
        Limits b = line.SlopeLimits(Confidence, leastVariance)!.Value;
        return new Estimate(line.Slope, b.Low, b.High);
    }

    internal static Estimated HeatsToRise(LineThroughStart line, double d, double leastVariance)
    {
        if (d <= 0)
        {
            return new Estimate(0, 0, 0);
        }

        return line.Slope > 0 && line.HeatsToRise(d, Confidence, leastVariance) is { } limits
            ? new Estimate(d / line.Slope, limits.Low, limits.High)
            : DoesNotRise(line.Readings);
    }

    private static Estimated HeatsToRise(FreeLine? line, int readings, double d)
    {
        if (line is null)
        {
            return new NotEnoughData(
                readings,
                3,
                "a line that may miss the start takes three readings at different heats"
            );
        }

        return line.HeatsAt(d) is { } heats && line.FiellerLimits(d, Confidence) is { } limits
            ? new Estimate(heats, limits.Low, limits.High)
            : DoesNotRise(readings);
    }

    private static NotEnoughData DoesNotRise(int readings) =>
        new(readings, readings + 1, "the readings do not show it wearing yet");

    private static NotEnoughData? WithoutLimit(WearHistory history) =>
        history.LimitMm is null ? new NotEnoughData(0, 1, "no size is set at which it is worn out") : null;

    private static NotEnoughData? Missing(WearHistory history, LineThroughStart? line)
    {
        int has = history.Last.Readings.Length;
        return (history.Last.StartMm, has, line) switch
        {
            (null, _, _) => new NotEnoughData(0, 2, "its size after the last rework is not known"),
            (_, 0, _) when history.Segments.Length > 1 => new NotEnoughData(0, 2, "no reading since its last rework"),
            (_, 0, _) => new NotEnoughData(0, 2, "no reading yet"),
            (_, _, null) => new NotEnoughData(has, has + 2, "no reading after its first heat"),
            (_, 1, _) => new NotEnoughData(1, 2, "one reading gives no range"),
            _ => null,
        };
    }
}
