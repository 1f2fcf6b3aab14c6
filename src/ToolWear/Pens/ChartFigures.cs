using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.Pens;

/// <summary>A point of the chart: sizes over the weighted heats that the records count.</summary>
/// <param name="Heats">Weighted heats.</param>
/// <param name="SizeMm">The size, mm.</param>
internal readonly record struct ChartPoint(double Heats, double SizeMm);

/// <summary>Where the end is to be expected, in weighted heats from now.</summary>
/// <param name="About">About so many.</param>
/// <param name="From">Nine times in ten at least so many; null where nothing bounds it.</param>
/// <param name="To">Nine times in ten at most so many; null where nothing bounds it.</param>
internal readonly record struct ChartEnd(double About, double? From, double? To);

/// <summary>The figures of a chart: what the ledger says of one gauge mark, and what is foreseen.</summary>
/// <param name="Readings">The readings of the caliper.</param>
/// <param name="Misread">Those of the readings that are likelier wrong than right.</param>
/// <param name="Made">Sizes that were made: the starting size, sizes after a rework.</param>
/// <param name="Breaks">Where a rework broke the history, in heats.</param>
/// <param name="Now">Weighted heats now.</param>
/// <param name="Fitted">The size to be expected.</param>
/// <param name="Low">The lower edge of the band that holds it eight times in ten.</param>
/// <param name="High">The upper edge.</param>
/// <param name="ScrapMm">The scrap size, null where none is set.</param>
/// <param name="End">Where the end is to be expected; null where nothing bounds it.</param>
internal sealed record ChartFigures(
    ImmutableArray<ChartPoint> Readings,
    ImmutableArray<ChartPoint> Misread,
    ImmutableArray<ChartPoint> Made,
    ImmutableArray<double> Breaks,
    double Now,
    ImmutableArray<ChartPoint> Fitted,
    ImmutableArray<ChartPoint> Low,
    ImmutableArray<ChartPoint> High,
    double? ScrapMm,
    ChartEnd? End
)
{
    private const int CurvePoints = 30;

    /// <summary>Gathers the figures.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="gauge">The gauge mark with its forecast.</param>
    /// <returns>The figures.</returns>
    public static ChartFigures Of(Shop shop, GaugeForecast gauge)
    {
        GaugeHistory history = gauge.History;
        Walk walk = new(shop, gauge);
        double now = walk.Heats;
        ChartEnd? end = gauge.Forecast is { AtOrPastLimit: false, HeatsLeft: { Q50: { } about } left }
            ? new ChartEnd(about, left.Q05, left.Q95)
            : null;
        ImmutableArray<WearBand> bands = Bands(gauge, end?.About);
        double from = now - history.Wear.HeatsNow;
        ImmutableArray<ChartPoint> Curve(Func<WearBand, double> wear) =>
            [.. bands.Select(band => new ChartPoint(from + band.Heats, SizeMm(history, wear(band))))];
        return new(
            walk.Readings.ToImmutable(),
            walk.Misread.ToImmutable(),
            walk.Made.ToImmutable(),
            walk.Breaks.ToImmutable(),
            now,
            Curve(band => band.FittedMm),
            Curve(band => band.Low80Mm),
            Curve(band => band.High80Mm),
            history.Gauge.ScrapSize?.Mm,
            end
        );
    }

    private static ImmutableArray<WearBand> Bands(GaugeForecast gauge, double? left)
    {
        if (gauge.Forecast is not { } forecast || gauge.WearNowMm is null || gauge.History.Start is null)
        {
            return [];
        }

        double last = Math.Max(gauge.History.Wear.HeatsNow + (left ?? 0) * 1.1, 1);
        return forecast.Bands([.. Enumerable.Range(0, CurvePoints + 1).Select(i => last * i / CurvePoints)]);
    }

    private static double SizeMm(GaugeHistory history, double wearMm) =>
        history.Start!.Value.Mm + (history.Gauge.Wears == Wears.Smaller ? -wearMm : wearMm);

    /// <summary>The tool's history, with its heats running on through reworks.</summary>
    private sealed class Walk
    {
        public Walk(Shop shop, GaugeForecast gauge)
        {
            GaugeHistory history = gauge.History;
            HashSet<long> suspect = [.. history.Readings.Where(gauge.IsSuspect).Select(reading => reading.Entry)];
            Tool tool = history.Tool.Tool;
            Heats = tool.Start.HeatsBefore?.Count ?? 0;
            if (history.Gauge.Start is { } start && !tool.Start.IsUnknown)
            {
                Made.Add(new(0, start.Mm));
            }

            foreach ((_, Entered entered) in shop.HistoryOf(history.Tool))
            {
                switch (entered.What)
                {
                    case HeatsWorked worked:
                        Heats += shop.Weighted(tool, worked);
                        break;
                    case ToolMeasured measured when measured.Gauge == history.Gauge.Name:
                        (suspect.Contains(entered.Number) ? Misread : Readings).Add(new(Heats, measured.Size.Mm));
                        break;
                    case ToolReworked rework when rework.Gauge == history.Gauge.Name:
                        Breaks.Add(Heats);
                        AddIfKnown(rework.After);
                        break;
                    default:
                        break;
                }
            }
        }

        public double Heats { get; private set; }

        public ImmutableArray<ChartPoint>.Builder Readings { get; } = ImmutableArray.CreateBuilder<ChartPoint>();

        public ImmutableArray<ChartPoint>.Builder Misread { get; } = ImmutableArray.CreateBuilder<ChartPoint>();

        public ImmutableArray<ChartPoint>.Builder Made { get; } = ImmutableArray.CreateBuilder<ChartPoint>();

        public ImmutableArray<double>.Builder Breaks { get; } = ImmutableArray.CreateBuilder<double>();

        private void AddIfKnown(Length? size)
        {
            if (size is { } known)
            {
                Made.Add(new(Heats, known.Mm));
            }
        }
    }
}
