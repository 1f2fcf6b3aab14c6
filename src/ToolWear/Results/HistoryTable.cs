using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Results;

/// <summary>The wear history, one row a reading, with the pinned columns.</summary>
internal static class HistoryTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("tool", null),
        new("gauge", "Gauge"),
        new("form", null),
        new("eye", null),
        new("place", null),
        new("steel", null),
        new("lubricant", null),
        new("cooling", null),
        new("segment", "Stretch"),
        new("on", "Read on"),
        new("heats", "Heats"),
        new("size_mm", "Size"),
        new("wear_mm", "Worn"),
        new("fitted_mm", "Fitted"),
        new("heats_left", null),
        new("left_lo80", null),
        new("left_hi80", null),
        new(null, ""),
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tools">The tools, with their forecasts.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>A row for each reading, by tool, gauge mark and history.</returns>
    public static Table Of(Shop shop, IEnumerable<ToolForecast> tools, LengthUnit units) =>
        new(
            Columns,
            [
                .. tools
                    .SelectMany(tool => tool.Gauges)
                    .SelectMany(gauge =>
                        gauge.History.Readings.Zip(
                            gauge.FittedMm(),
                            (reading, fittedMm) => Row(shop, gauge, reading, fittedMm, units)
                        )
                    ),
            ]
        );

    private static ImmutableArray<Cell> Row(
        Shop shop,
        GaugeForecast gauge,
        GaugeReading reading,
        double? fittedMm,
        LengthUnit units
    )
    {
        Tool tool = gauge.History.Tool.Tool;
        Care? care = CareOf(shop, gauge.History.Tool, reading);
        // what was foreseen belongs to the last reading: the forecast starts from it
        bool isLast = reading == gauge.History.Readings[^1];
        HeatsLeft? left = isLast && gauge.History.HeatsSinceKnown <= 0 ? gauge.Forecast?.HeatsLeft : null;
        string Wear(double mm) => SizeShown.Wear(mm, units);
        Cooling? cooling = care?.Cooling ?? shop.Settings.Cooling;
        return
        [
            Cell.Of(tool.Mark.Text),
            Cell.Of(gauge.History.Gauge.Name),
            Cell.Of(tool.Form.Name),
            Cell.Of(tool.Eye),
            Cell.Of(tool.Place == Place.None ? null : Places.Words.Word(tool.Place)),
            Cell.Of(tool.Steel),
            Cell.Of(care?.Lubricant ?? shop.Settings.Lubricant),
            Cell.Of(cooling is { } word ? Care.CoolingWords.Word(word) : null),
            Cell.Of(reading.Segment),
            Cell.Of(reading.On),
            Cell.Of(reading.Heats),
            Cell.Of(reading.Size.Mm, Wear),
            Cell.Of(reading.WearMm, Wear),
            Cell.Of(fittedMm, Wear),
            Cell.Of(left?.Q50, Words.About),
            Cell.Of(left?.Q10, Words.About),
            Cell.Of(left?.Q90, Words.About),
            Cell.Of(gauge.IsSuspect(reading) ? Words.Suspect : "", none: ""),
        ];
    }

    private static Care? CareOf(Shop shop, ToolInShop tool, GaugeReading reading)
    {
        string? session =
            reading.Session
            ?? shop.HistoryOf(tool)
                .Where(each => each.Place.Day <= reading.On)
                .Select(each => each.Entered.What)
                .OfType<HeatsWorked>()
                .LastOrDefault()
                ?.Session;
        return session is null ? null : shop.Sessions[session].Opened.Care;
    }
}
