using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Alone;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Ranges;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear.Core.Wear.OneTool;

/// <summary>One gauge mark of one tool: its history and what it says of what is to come.</summary>
/// <param name="History">What the ledger says.</param>
/// <param name="Alone">This tool's own line since its last rework.</param>
/// <param name="Outlook">The forecast with its sisters, which drives verdicts and plans; or why there is none.</param>
/// <param name="FollowedToItsLimit">Whether a tool of the kind was read close to its limit; until then a range may be too narrow.</param>
public sealed record GaugeForecast(
    GaugeHistory History,
    ThisToolAlone Alone,
    Estimated Outlook,
    bool FollowedToItsLimit
)
{
    /// <summary>How the ranges held that were said of such tools; null where nobody asked.</summary>
    public KeptRanges? Ranges { get; init; }

    /// <summary>The forecast, null where there is none.</summary>
    public SisterForecast? Forecast => Outlook as SisterForecast;

    /// <summary>The curve through what was read, also where it says nothing of what is left; null where there is none.</summary>
    public SisterForecast? Curve { get; init; } = Outlook as SisterForecast;

    // without sizes the forecast speaks of shares of a life
    private SisterForecast? Sized => History.Wear.LimitMm is null ? null : Curve;

    /// <summary>The wear that the forecast expects now, mm; null where there is none or it knows no sizes.</summary>
    public double? WearNowMm => Sized?.WearNowMm;

    /// <summary>Whether a reading of its history is probably a mis-reading. It is never dropped.</summary>
    /// <param name="reading">One of the history's readings.</param>
    /// <returns>True where it is more likely wrong than right.</returns>
    public bool IsSuspect(GaugeReading reading)
    {
        if (Curve is not { } forecast || reading.IsStart)
        {
            return false;
        }

        // segments are numbered from 1 in a history, from 0 in a forecast
        return forecast.Suspect.Any(suspect =>
            suspect.Segment + 1 == reading.Segment
            && History
                .Readings.Where(each => each.Segment == reading.Segment && !each.IsStart)
                .OrderBy(each => each.Heats)
                .ElementAtOrDefault(suspect.Reading)
                ?.Entry == reading.Entry
        );
    }

    /// <summary>The size now in mm: as last known where it has not worked since, else as forecast; null where not known.</summary>
    public double? SizeNowMm =>
        History.HeatsSinceKnown <= 0 || WearNowMm is not { } worn ? History.LastKnown?.Mm : SizeMm(worn);

    /// <summary>The size when each measured eye was made: by the forecast's curve, else as last known then.</summary>
    /// <returns>The size in mm by the number of the eye's entry, where it is known.</returns>
    public ImmutableDictionary<long, double> SizesAtEyes()
    {
        ImmutableDictionary<long, double>.Builder sizes = ImmutableDictionary.CreateBuilder<long, double>();
        foreach (IGrouping<int, SizeThen> segment in History.AtEyes.GroupBy(then => then.Segment))
        {
            SizeThen[] thens = [.. segment];
            ImmutableArray<double> fitted =
                Sized is { } forecast && History.Start is not null && thens.All(then => then.StartIsKnown)
                    ? forecast.Fitted(segment.Key - 1, [.. thens.Select(then => then.Heats)])
                    : [];
            for (int i = 0; i < thens.Length; i++)
            {
                double? mm = fitted.IsEmpty ? thens[i].LastKnown?.Mm : SizeMm(fitted[i]);
                if (mm is { } known)
                {
                    sizes.Add(thens[i].Entry, known);
                }
            }
        }

        return sizes.ToImmutable();
    }

    /// <summary>The wear that the forecast's curve gives at each reading of the history.</summary>
    /// <returns>Wear in mm, one for each reading in their order; null where there is no forecast.</returns>
    public ImmutableArray<double?> FittedMm()
    {
        double?[] fitted = new double?[History.Readings.Length];
        if (Sized is not { } forecast)
        {
            return [.. fitted];
        }

        // one smoothing of a segment serves all its readings
        foreach (
            var segment in History.Readings.Select((reading, i) => (reading, i)).GroupBy(each => each.reading.Segment)
        )
        {
            (GaugeReading reading, int i)[] readings = [.. segment];
            ImmutableArray<double> wear = forecast.Fitted(
                segment.Key - 1,
                [.. readings.Select(each => each.reading.Heats)]
            );
            foreach (((_, int i), double mm) in readings.Zip(wear))
            {
                fitted[i] = mm;
            }
        }

        return [.. fitted];
    }

    private double? SizeMm(double wearMm) =>
        History.Gauge.Wears == Tools.Wears.Smaller ? History.Start?.Mm - wearMm : History.Start?.Mm + wearMm;
}
