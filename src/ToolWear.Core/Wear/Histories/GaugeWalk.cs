using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Wear.Histories;

/// <summary>Walks the history of a tool and gathers what happened to one gauge mark.</summary>
internal sealed class GaugeWalk
{
    private readonly Shop shop;
    private readonly ToolInShop tool;
    private readonly GaugeMark gauge;
    private readonly List<WearSegment> done = [];
    private readonly List<WearReading> evidence = [];
    private readonly ImmutableArray<GaugeReading>.Builder readings = ImmutableArray.CreateBuilder<GaugeReading>();
    private readonly ImmutableArray<SizeThen>.Builder eyes = ImmutableArray.CreateBuilder<SizeThen>();
    private Length? start;
    private Length? resolution;
    private Length? lastKnown;
    private ToolReworked? lastRework;
    private double? segmentStartMm;
    private double heats;
    private double heatsSinceKnown;

    private GaugeWalk(Shop shop, ToolInShop tool, GaugeMark gauge)
    {
        this.shop = shop;
        this.tool = tool;
        this.gauge = gauge;
        start = gauge.Start ?? MadeLikeItsSeries();
        heats = heatsSinceKnown = tool.Tool.Start.HeatsBefore?.Count ?? 0;
        if (start is not null && !tool.Tool.Start.IsUnknown)
        {
            lastKnown = start;
            segmentStartMm = 0;
        }
    }

    public static GaugeHistory Of(
        Shop shop,
        ToolInShop tool,
        GaugeMark gauge,
        ImmutableArray<(HistoryPlace Place, Entered Entered)> history
    )
    {
        GaugeWalk walk = new(shop, tool, gauge);
        foreach ((_, Entered entered) in history)
        {
            walk.Take(entered);
        }

        return walk.End();
    }

    private void Take(Entered entered)
    {
        switch (entered.What)
        {
            case HeatsWorked worked:
                double weighted = shop.Weighted(tool.Tool, worked);
                heats += weighted;
                heatsSinceKnown += weighted;
                break;
            case ToolMeasured measured when measured.Gauge == gauge.Name:
                Read(entered.Number, measured);
                break;
            case ToolReworked rework when rework.Gauge == gauge.Name:
                Rework(rework);
                break;
            case ToolStartedHere:
                Begin(null);
                break;
            case EyeMeasured:
                eyes.Add(new(entered.Number, done.Count + 1, heats, segmentStartMm is not null, lastKnown));
                break;
            default:
                break;
        }
    }

    private void Read(long entry, ToolMeasured measured)
    {
        start ??= measured.Size;
        resolution = Fine(measured.Resolution) is { } read && !(read < resolution) ? read : resolution;
        double wearMm = gauge.WearTo(start.Value, measured.Size).Mm;
        // a reading at the start of a stretch says where it starts, not how fast it wears
        bool isStart = segmentStartMm is null || (heats == 0 && evidence.Count == 0);
        if (isStart)
        {
            segmentStartMm = wearMm;
            heats = 0;
        }
        else
        {
            evidence.Add(new(heats, wearMm));
        }

        readings.Add(new(entry, measured.On, measured.Session, done.Count + 1, heats, measured.Size, wearMm, isStart));
        lastKnown = measured.Size;
        lastRework = null;
        heatsSinceKnown = 0;
    }

    private void Rework(ToolReworked rework)
    {
        start ??= rework.After;
        Begin(start is { } from && rework.After is { } after ? gauge.WearTo(from, after).Mm : null);
        if (rework.After is not null)
        {
            lastKnown = rework.After;
            lastRework = rework;
            heatsSinceKnown = 0;
        }
    }

    private void Begin(double? startMm)
    {
        // a stretch of which neither start nor wear is known tells nothing
        if (segmentStartMm is { } before)
        {
            done.Add(new(before, [.. evidence]));
        }

        evidence.Clear();
        segmentStartMm = startMm;
        heats = 0;
    }

    private GaugeHistory End()
    {
        string kind = ShopHistories.KindOf(tool.Tool, gauge);
        (double guess, bool isAssumed) = shop.GuessOf(tool.Tool);
        WearHistory wear = new(
            kind,
            $"{kind} {tool.Tool.Steel ?? "unknown steel"}",
            tool.Mark.Text,
            gauge.Name,
            start is { } from ? gauge.LimitFrom(from)?.Mm : null,
            (resolution ?? gauge.Resolution ?? shop.Settings.CaliperResolution).Mm,
            guess,
            isAssumed,
            heats,
            [.. done, new WearSegment(segmentStartMm, [.. evidence])]
        );
        return new(tool, gauge, start, readings.ToImmutable(), lastKnown, heatsSinceKnown, wear)
        {
            AtEyes = eyes.ToImmutable(),
            LastRework = lastRework,
        };
    }

    // ledgers of before hold the step of a reduced fraction, 12.7 mm for 1/2"
    private static Length? Fine(Length? resolution) =>
        resolution?.Nanometres % SizeText.FinestFraction.Nanometres == 0 ? SizeText.FinestFraction : resolution;

    private Length? MadeLikeItsSeries() => shop.SeriesOf(tool.Tool)?.MadeSize(gauge.Measures);
}
