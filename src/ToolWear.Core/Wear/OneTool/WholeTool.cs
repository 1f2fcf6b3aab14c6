using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.OneTool;

// Gauge marks see the same heats and the same steel, so they are not independent:
//   F(k) = max over gauge marks of F_g(k);   1 - prod(1 - F_g(k)) is the cautious bound
/// <summary>A tool's own end over all its gauge marks.</summary>
public static class WholeTool
{
    /// <summary>The chance that the tool is past one of its limits after k more heats: the largest over its gauge marks.</summary>
    /// <param name="gauges">The forecasts of its gauge marks, at least one.</param>
    /// <param name="moreHeats">k, zero or more.</param>
    /// <returns>A chance, 0 to 1.</returns>
    public static double ChancePastLimit(IReadOnlyCollection<Forecast> gauges, double moreHeats) =>
        gauges.Max(gauge => gauge.ChancePastLimit(moreHeats));

    /// <summary>The same as if the gauge marks wore independently: it can only be larger.</summary>
    /// <param name="gauges">The forecasts of its gauge marks.</param>
    /// <param name="moreHeats">k, zero or more.</param>
    /// <returns>A chance, 0 to 1.</returns>
    public static double CautiousChancePastLimit(IEnumerable<Forecast> gauges, double moreHeats) =>
        1 - gauges.Aggregate(1.0, (inside, gauge) => inside * (1 - gauge.ChancePastLimit(moreHeats)));

    /// <summary>Heats left of the whole tool.</summary>
    /// <param name="gauges">The forecasts of its gauge marks, at least one.</param>
    /// <returns>The quantiles; none where any gauge mark is at or past its limit.</returns>
    public static HeatsLeft HeatsLeft(IReadOnlyCollection<Forecast> gauges) =>
        gauges.Count == 1 ? gauges.First().HeatsLeft
        : gauges.Any(gauge => gauge.AtOrPastLimit) ? Figures.HeatsLeft.None
        : Figures.HeatsLeft.Of(k => ChancePastLimit(gauges, k), ChancePastLimit(gauges, 0), 1);

    /// <summary>The gauge mark that decides: the one most likely to be past its limit where the tool's median ends.</summary>
    /// <param name="gauges">The forecasts of its gauge marks, at least one.</param>
    /// <param name="left">The tool's <see cref="HeatsLeft"/>.</param>
    /// <returns>The place of the forecast in the list.</returns>
    public static int Deciding(IReadOnlyList<Forecast> gauges, HeatsLeft left)
    {
        double end = left.Q50 ?? Figures.HeatsLeft.Most;
        return Enumerable
            .Range(0, gauges.Count)
            .MaxBy(gauge => (gauges[gauge].ChancePastLimit(end), gauges[gauge].ChancePastLimitNow));
    }
}
