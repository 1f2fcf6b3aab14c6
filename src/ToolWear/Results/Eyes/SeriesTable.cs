using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Tools;
using ToolWear.Wording;
using Row = ToolWear.Results.Column<ToolWear.Core.Planning.PlannedTool>;

namespace ToolWear.Results.Eyes;

/// <summary>The series for an eye, a row a place, in the order of use.</summary>
internal static class SeriesTable
{
    public static Columns<PlannedTool> Columns { get; } =
    [
        new("tool", "Tool", (tool, _) => Name(tool.Series)),
        Row.Number("length_mm", "Length", tool => tool.Series.Length?.Mm, Quantity.Size),
        Row.Number("width_mm", "Width", tool => tool.Series.Width?.Mm, Quantity.Size),
        Row.Number("radius_mm", "r", tool => tool.Series.Radius?.Mm, Quantity.Size),
        new("taper_length", "Taper", (tool, _) => Cell.Of(tool.Series.TaperLength, _ => Tapers(tool.Series))),
        Row.Number("taper_width", null, tool => tool.Series.TaperWidth),
        Row.Text("steel", "Steel", tool => tool.Series.Steel),
        Row.Number("guess_heats", null, tool => tool.Series.GuessHeats, Quantity.Heats),
        Row.Number("mark_mm", "Mark", tool => tool.Mark?.Mm, Quantity.Size)
            .Means("the mark to drive to, from the shank mark"),
        Row.Number("overall_mm", "Long", tool => tool.Overall?.Mm, Quantity.Whole).Means("the length over all"),
        Row.Number("least_overall_mm", "Least", tool => tool.Least?.Mm, Quantity.Whole)
            .Means("the length over all under which a tool is too short"),
        Row.Number("hours", null, tool => (double?)tool.Cost.Hours, Quantity.Of("hours", "0.0")),
        Row.Text("stock", null, tool => EyeWords.StockOf(tool, LengthUnit.Mm)),
    ];

    private static Cell Name(Series series) =>
        Cell.Of(
            Words.SeriesName(null, series.Place, series.Form.Name),
            series.Place == Place.None ? series.Form.Name : Places.Words.Word(series.Place)
        );

    private static string Tapers(Series series) =>
        string.Join(
            '/',
            new[] { series.TaperLength, series.TaperWidth ?? series.TaperLength }
                .Distinct()
                .Select(taper => taper?.ToString("0.###", CultureInfo.InvariantCulture))
        );
}
