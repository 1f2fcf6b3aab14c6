using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Tools;

namespace ToolWear.Results;

/// <summary>The series for an eye, a row a place.</summary>
internal static class SeriesTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("tool", "Tool"),
        new("length_mm", "Length"),
        new("width_mm", "Width"),
        new("radius_mm", "r"),
        new("taper_length", "Taper"),
        new("taper_width", null),
        new("steel", "Steel"),
        new("guess_heats", null),
        new("mark_mm", "Mark"),
        new("overall_mm", "Long"),
        new("least_overall_mm", "Least"),
        new("hours", null),
        new("stock", null),
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="plan">The series.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>A row for each place, in the order of use.</returns>
    public static Table Of(SeriesPlan plan, LengthUnit units) =>
        new(Columns, [.. plan.Tools.Select(tool => Row(tool, units))]);

    private static ImmutableArray<Cell> Row(PlannedTool tool, LengthUnit units)
    {
        Series series = tool.Series;
        string Size(double mm) => SizeShown.Eye(Length.FromMm(mm), units);
        string Decimals(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);
        return
        [
            Cell.Of(
                Words.SeriesName(null, series.Place, series.Form.Name),
                series.Place == Place.None ? series.Form.Name : Places.Words.Word(series.Place)
            ),
            Cell.Of(series.Length?.Mm, Size),
            Cell.Of(series.Width?.Mm, Size),
            Cell.Of(series.Radius?.Mm, Size),
            Cell.Of(
                series.TaperLength,
                taper =>
                    series.TaperWidth is { } other && other != taper
                        ? $"{Decimals(taper)}/{Decimals(other)}"
                        : Decimals(taper)
            ),
            Cell.Of(series.TaperWidth, Decimals),
            Cell.Of(series.Steel),
            Cell.Of(series.GuessHeats, Words.About),
            Cell.Of(tool.Mark?.Mm, Size),
            Cell.Of(tool.Overall?.Mm, mm => SizeShown.Whole(mm, units)),
            Cell.Of(tool.Least?.Mm, mm => SizeShown.Whole(mm, units)),
            Cell.Of((double?)tool.Cost.Hours, hours => hours.ToString("0.0", CultureInfo.InvariantCulture)),
            Cell.Of(Words.StockOf(tool, LengthUnit.Mm)),
        ];
    }
}
