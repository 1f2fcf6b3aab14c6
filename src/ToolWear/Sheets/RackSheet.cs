using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear;
using ToolWear.Results;

namespace ToolWear.Sheets;

/// <summary>The tool rack for the shop's wall.</summary>
internal static class RackSheet
{
    private static readonly string[] Headings =
    [
        "",
        "Tool",
        "Eye",
        "What",
        "Done at",
        "Worn",
        "of",
        "Left",
        "9 in 10",
        "Eye now",
        "Drive mark",
        "Verdict",
        "Looked over",
    ];

    /// <summary>Makes the sheet.</summary>
    /// <param name="all">The shop with its forecasts.</param>
    /// <param name="on">The day it is of.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>The whole file.</returns>
    public static string Of(ShopForecasts all, DateOnly on, LengthUnit units)
    {
        Sheet sheet = new(Words.RackSheetHeading, all.Shop, on, Words.SheetSizes(units), isWide: true);
        sheet.Put(Table(all, units), isForTheWall: true, big: "Tool", small: "Looked over");
        return sheet.Done(
            Words.LeftExplained,
            $"{Words.NotFollowedMark} {Words.NotFollowed}",
            Words.DriveMarkExplained,
            Words.ForecastBasis,
            Words.EyeCaution,
            Words.ForecastCaution
        );
    }

    /// <summary>The cells of the rack, with the limit as a size and the drive mark beside them.</summary>
    private static Table Table(ShopForecasts all, LengthUnit units)
    {
        Table rack = RackTable.Of(all, units);
        Cell At(ImmutableArray<Cell> row, string column) => row[rack.IndexOf(column)];
        string? FromTo(ImmutableArray<Cell> row, ToolForecast tool) =>
            At(row, "left_lo90").IsNumber
                ? $"{At(row, "left_lo90").Shown}-{At(row, "left_hi90").Shown}{(tool.FollowedToItsLimit ? "" : Words.NotFollowedMark)}"
                : null;
        ImmutableArray<Column> columns = [.. Headings.Select(heading => new Column(null, heading))];
        return new(
            columns,
            [
                .. rack.Rows.Zip(
                    all.Tools,
                    (row, tool) =>
                        (ImmutableArray<Cell>)
                            [
                                row[0],
                                At(row, "tool"),
                                At(row, "eye"),
                                row[rack.IndexOfHeading("What")],
                                Cell.Of(tool.Deciding is { } gauge ? Words.ScrapAt(gauge.History.Gauge, units) : null),
                                row[rack.IndexOfHeading("Worn")],
                                row[rack.IndexOfHeading("Of")],
                                At(row, "heats_left"),
                                Cell.Of(FromTo(row, tool)),
                                Cell.Of(
                                    At(row, "eye_length_mm").IsNumber
                                        ? $"{At(row, "eye_length_mm").Shown} x {At(row, "eye_width_mm").Shown}"
                                        : null
                                ),
                                DriveMark.Of(all, tool, units).MarkMm,
                                At(row, "verdict"),
                                At(row, "looked_over_on"),
                            ]
                ),
            ]
        );
    }
}
