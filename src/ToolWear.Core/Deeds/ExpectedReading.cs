using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.Core.Deeds;

/// <summary>Where the next caliper reading of a gauge mark is expected.</summary>
/// <param name="Least">The least size.</param>
/// <param name="Greatest">The greatest size.</param>
public sealed record ExpectedReading(Length Least, Length Greatest)
{
    // what one sound reading in fifty lies outside of
    private const double Share = 0.98;

    /// <summary>The range from the forecast of before.</summary>
    /// <param name="gauge">The gauge mark, null for none.</param>
    /// <param name="heatsNow">Weighted heats since the start of its last stretch.</param>
    /// <returns>The range, null where no forecast speaks.</returns>
    public static ExpectedReading? Of(GaugeForecast? gauge, double heatsNow)
    {
        if (gauge is not { Curve: { } forecast, History.Start: { } start })
        {
            return null;
        }

        Limits wear = forecast.NextReading(Math.Max(heatsNow, forecast.HeatsNow), Share);
        double sign = gauge.History.Gauge.Wears == Wears.Smaller ? -1 : 1;
        double[] sizes = [start.Mm + (sign * wear.Low), start.Mm + (sign * (wear.High ?? wear.Low))];
        double most = sizes.Max();
        // a length over all only gets shorter: no scatter of the caliper's makes up for it
        if (gauge.History is { Gauge.Measures: Measures.Overall, LastKnown: { } last })
        {
            most = Math.Min(most, last.Mm);
        }

        return new(Length.FromMm(Math.Clamp(sizes.Min(), 0, most)), Length.FromMm(most));
    }

    /// <summary>Whether a size lies in the range.</summary>
    /// <param name="size">The size.</param>
    /// <returns>True where it does, ends included.</returns>
    public bool Holds(Length size) => size >= Least && size <= Greatest;

    /// <summary>The range in words.</summary>
    /// <param name="units">The unit for people.</param>
    /// <returns>For example "between 13.05 and 13.31 mm".</returns>
    public string InWords(LengthUnit units) =>
        $"between {SizeShown.Caliper(Least, units)} and {SizeShown.Caliper(Greatest, units)} {SizeShown.Mark(units)}";
}
