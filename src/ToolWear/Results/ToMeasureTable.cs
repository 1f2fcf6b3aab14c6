using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;

namespace ToolWear.Results;

/// <summary>What wants measuring: a row for each gauge mark of the round, in its order.</summary>
internal static class ToMeasureTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("tool", "Tool"),
        new("gauge", "Gauge"),
        new("from_mark_mm", "At"),
        new("heats_since", "Heats since"),
        new("start_mm", "Start"),
        new("size_mm", "Last"),
        new("read_on", "Read on"),
        new("scrap_mm", "Scrap"),
        new("expected_from_mm", "Expected from"),
        new("expected_to_mm", "to"),
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="all">The shop with its forecasts.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>The gauge marks of the tools that worked since they were read, those of the last session first.</returns>
    public static Table Of(ShopForecasts all, LengthUnit units)
    {
        (ImmutableArray<long> tools, int wanting) = ToMeasure.List(all.Shop);
        return new(
            Columns,
            [
                .. tools
                    .Take(wanting)
                    .Select(id => all.Shop.Tools[id])
                    .SelectMany(tool => ToMeasure.Gauges(tool.Tool), (tool, gauge) => Row(all, tool, gauge, units)),
            ]
        );
    }

    private static ImmutableArray<Cell> Row(ShopForecasts all, ToolInShop tool, GaugeMark gauge, LengthUnit units)
    {
        GaugeForecast? known = all.Of(tool.Id).Gauges.FirstOrDefault(each => each.History.Gauge.Name == gauge.Name);
        ExpectedReading? expected = Measuring.Expected(all.Shop, tool, all.Of(tool.Id), gauge.Name);
        Cell Size(Length? size) => Cell.Of(size?.Mm, _ => SizeShown.Caliper(size!.Value, units));
        return
        [
            Cell.Of(tool.Mark.Text),
            Cell.Of(gauge.Name),
            Size(gauge.FromMark),
            Cell.Of(known?.History.HeatsSinceKnown, Words.Heats),
            Size(known?.History.Start),
            Size(known?.History.LastKnown),
            Cell.Of(known?.History.Readings.LastOrDefault()?.On),
            Size(gauge.ScrapSize),
            Size(expected?.Least),
            Size(expected?.Greatest),
        ];
    }
}
