using System.Globalization;
using ToolWear.Core.Deeds;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Wording;
using Row = ToolWear.Results.Column<ToolWear.Results.Tools.ToMeasureRow>;

namespace ToolWear.Results.Tools;

/// <summary>A gauge mark that worked since it was read.</summary>
internal sealed record ToMeasureRow(ToolInShop Tool, GaugeMark Gauge, GaugeForecast? Known)
{
    public ExpectedReading? Expected { get; } =
        Known is null ? null : ExpectedReading.Of(Known, Known.History.Wear.HeatsNow);
}

/// <summary>What wants measuring: a row for each gauge mark of the round, in its order.</summary>
internal static class ToMeasureTable
{
    public static Columns<ToMeasureRow> Columns { get; } =
    [
        Row.Text("tool", "Tool", row => row.Tool.Mark.Text),
        Row.Text("gauge", "Gauge", row => row.Gauge.Name),
        Row.Number("from_mark_mm", "At", row => row.Gauge.FromMark?.Mm, Quantity.Caliper)
            .Means("below zero towards the struck end"),
        Row.Number("heats_since", "Heats since", row => row.Known?.History.HeatsSinceKnown, Quantity.Worked)
            .Means("weighted heats since a gauge mark was read"),
        Row.Number("start_mm", "Start", row => row.Known?.History.Start?.Mm, Quantity.Caliper),
        Row.Number("size_mm", "Last", row => row.Known?.History.LastKnown?.Mm, Quantity.Caliper),
        // a size after a rework was never read
        new Row("read_on", "Read on", (row, _) => Cell.Of(ReadOn(row), Reworked(row) ?? ReadOn(row))).Means(
            "the day of the last reading"
        ),
        Row.Number("scrap_mm", "Scrap", row => row.Gauge.ScrapSize?.Mm, Quantity.Caliper)
            .Means("the size at which a tool in use is scrapped"),
        Row.Number("expected_from_mm", "Expected from", row => row.Expected?.Least.Mm, Quantity.Caliper)
            .Means("the least size that a sound reading is expected to have, 49 times in 50 with the greatest"),
        Row.Number("expected_to_mm", "to", row => row.Expected?.Greatest.Mm, Quantity.Caliper)
            .Means("the greatest such size"),
    ];

    private static string? ReadOn(ToMeasureRow row) =>
        row.Known?.History.LastReadOn?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string? Reworked(ToMeasureRow row) =>
        row.Known is { } known ? Words.AfterRework(known.History)?.TrimStart(',', ' ') : null;

    /// <summary>The gauge marks of the tools that worked since they were read, those of the last session first.</summary>
    public static IEnumerable<ToMeasureRow> Rows(ShopForecasts all)
    {
        (IReadOnlyList<long> tools, int wanting) = ToMeasure.List(all.Shop);
        return tools
            .Take(wanting)
            .SelectMany(
                id => ToMeasure.Gauges(all.Shop.Tools[id].Tool),
                (id, gauge) =>
                    new ToMeasureRow(
                        all.Shop.Tools[id],
                        gauge,
                        all.Of(id).Gauges.FirstOrDefault(each => each.History.Gauge.Name == gauge.Name)
                    )
            );
    }
}
