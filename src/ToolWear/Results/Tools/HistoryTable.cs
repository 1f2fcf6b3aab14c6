using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Wording;
using Row = ToolWear.Results.Column<ToolWear.Results.Tools.HistoryRow>;

namespace ToolWear.Results.Tools;

/// <summary>A reading in the history of a gauge mark, with the wear that the forecast of today expects there.</summary>
internal sealed record HistoryRow(Shop Shop, GaugeForecast Gauge, GaugeReading Reading, double? FittedMm)
{
    public Tool Tool => Gauge.History.Tool.Tool;

    /// <summary>The lubricant and cooling of the session that the reading counts after.</summary>
    public Care? Care { get; } = CareOf(Shop, Gauge.History.Tool, Reading);

    /// <summary>What was foreseen belongs to the last reading: the forecast starts from it.</summary>
    public HeatsLeft? Left { get; } =
        Reading == Gauge.History.Readings[^1] && Gauge.History.HeatsSinceKnown <= 0 ? Gauge.Forecast?.HeatsLeft : null;

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

/// <summary>The wear history, one row a reading, with the pinned columns.</summary>
internal static class HistoryTable
{
    public static Columns<HistoryRow> Columns { get; } =
    [
        Row.Text("tool", null, row => row.Tool.Mark.Text),
        Row.Text("gauge", "Gauge", row => row.Gauge.History.Gauge.Name),
        Row.Text("form", null, row => row.Tool.Form.Name),
        Row.Text("eye", null, row => row.Tool.Eye),
        Row.Place(null, row => row.Tool.Place),
        Row.Text("steel", null, row => row.Tool.Steel),
        Row.Text("lubricant", null, row => row.Care?.Lubricant ?? row.Shop.Settings.Lubricant),
        Row.Text("cooling", null, row => Cooling(row.Care?.Cooling ?? row.Shop.Settings.Cooling)),
        Row.Number("segment", "Stretch", row => row.Reading.Segment)
            .Means("the stretch between two reworks of a gauge mark, 1 first"),
        Row.Day("on", "Read on", row => row.Reading.On),
        Row.Number("heats", "Heats", row => row.Reading.Heats, Quantity.Worked)
            .Means("weighted by the work, since the stretch began"),
        Row.Number("size_mm", "Size", row => row.Reading.Size.Mm, Quantity.Wear),
        Row.Number("wear_mm", "Worn", row => row.Reading.WearMm, Quantity.Wear)
            .Means("start less size, or size less start where it wears larger, since the stretch began"),
        Row.Number("fitted_mm", "Fitted", row => row.FittedMm, Quantity.Wear)
            .Means("the wear expected at that reading by the forecast of today"),
        Row.Number("heats_left", null, row => row.Left?.Q50, Quantity.Heats),
        Row.Number("left_lo80", null, row => row.Left?.Q10, Quantity.Heats),
        Row.Number("left_hi80", null, row => row.Left?.Q90, Quantity.Heats),
        Row.Text(null, "", row => row.Gauge.IsSuspect(row.Reading) ? Words.Suspect : null, none: ""),
    ];

    /// <summary>A row for each reading, by tool, gauge mark and history.</summary>
    public static IEnumerable<HistoryRow> Rows(Shop shop, params IEnumerable<ToolForecast> tools) =>
        tools
            .SelectMany(tool => tool.Gauges)
            .SelectMany(gauge =>
                gauge.History.Readings.Zip(
                    gauge.FittedMm(),
                    (reading, fittedMm) => new HistoryRow(shop, gauge, reading, fittedMm)
                )
            );

    private static string? Cooling(Cooling? cooling) => cooling is { } word ? Care.CoolingWords.Word(word) : null;
}
