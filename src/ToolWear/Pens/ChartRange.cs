using ToolWear.Core.Measure;

namespace ToolWear.Pens;

/// <summary>How far the axes of a chart reach, on the screen and on paper.</summary>
/// <param name="LastHeat">Where the axis of heats ends, at least 1.</param>
/// <param name="Least">The least size on the other axis, in the unit shown.</param>
/// <param name="Greatest">The greatest size, in the unit shown.</param>
/// <param name="Units">The unit shown.</param>
internal sealed record ChartRange(double LastHeat, double Least, double Greatest, LengthUnit Units)
{
    /// <summary>The range that holds all readings, made sizes and the limit, with a little air.</summary>
    /// <param name="figures">The figures.</param>
    /// <param name="units">The unit to show.</param>
    /// <returns>The range; of a chart without any size 0 to 1.</returns>
    public static ChartRange Of(ChartFigures figures, LengthUnit units)
    {
        double lastHeat = Math.Max(1, (figures.Now + (figures.End?.About ?? 0)) * 1.05);
        double[] sizes =
        [
            .. figures.Readings.Concat(figures.Misread).Concat(figures.Made).Select(point => In(units, point.SizeMm)),
            .. figures.Fitted.Where(point => point.Heats <= figures.Now).Select(point => In(units, point.SizeMm)),
        ];
        double[] all = figures.ScrapMm is { } scrap ? [.. sizes, In(units, scrap)] : sizes;
        if (all.Length == 0)
        {
            return new(lastHeat, 0, 1, units);
        }

        double air = Math.Max(all.Max() - all.Min(), In(units, 0.1)) * 0.08;
        return new(lastHeat, all.Min() - air, all.Max() + air, units);
    }

    /// <summary>A size in the unit shown.</summary>
    /// <param name="mm">The size, mm.</param>
    /// <returns>The same in that unit.</returns>
    public double InUnit(double mm) => In(Units, mm);

    private static double In(LengthUnit units, double mm) =>
        units == LengthUnit.Mm ? mm : mm * Length.NanometresInMm / Length.NanometresInInch;
}
