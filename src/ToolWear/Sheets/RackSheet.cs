using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Results;
using ToolWear.Results.Tools;
using ToolWear.Wording;

namespace ToolWear.Sheets;

/// <summary>The tool rack for the shop's wall.</summary>
internal static class RackSheet
{
    private const string RackSheetHeading = "Tool rack";

    private static Columns<RackRow> Columns { get; } =
    [
        RackTable.Next,
        RackTable.Tool with
        {
            Print = Print.Big,
        },
        RackTable.EyeName,
        RackTable.What,
        new(null, "Done at", (row, units) => Cell.Of(DoneAt(row, units))),
        RackTable.Worn,
        RackTable.Limit with
        {
            Heading = "of",
        },
        RackTable.Left,
        RackTable.Range,
        RackTable.EyeNow,
        new(
            null,
            "Drive mark",
            (row, units) => DriveMark.MarkMm(row.Made, DriftOutlooks.Of(row.All, row.Tool)?.Drive, units)
        ),
        RackTable.Verdict,
        RackTable.LookedOver with
        {
            Heading = "Looked over",
            Print = Print.Small,
        },
    ];

    /// <summary>Makes the sheet.</summary>
    /// <param name="all">The shop with its forecasts.</param>
    /// <param name="on">The day it is of.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>The whole file.</returns>
    public static string Of(ShopForecasts all, DateOnly on, LengthUnit units)
    {
        Sheet sheet = new(RackSheetHeading, all.Shop, on, Words.SheetSizes(units), isWide: true);
        sheet.Put(Columns.Over(RackTable.Rows(all), units), isForTheWall: true);
        return sheet.Done(
            RackTable.MarksExplained,
            Words.LeftExplained,
            $"{Words.NotFollowedMark} {Words.NotFollowed}",
            HandOverSheet.DriveMarkExplained,
            Words.ForecastBasis,
            Cautions.EyeCaution,
            Cautions.ForecastCaution
        );
    }

    /// <summary>The size at which a tool is done, as a smith reads it off a rule and off a caliper: "width under 12.80"; in
    /// inches "width under 1/2 (0.504)".</summary>
    private static string? DoneAt(RackRow row, LengthUnit units)
    {
        if (row.Tool.Deciding?.History.Gauge is not { ScrapSize: { } scrap } gauge)
        {
            return null;
        }

        string size = SizeShown.Caliper(scrap, units);
        string fraction = units == LengthUnit.Inch ? $"{SizeShown.Eye(scrap, units)} ({size})" : size;
        return $"{gauge.Name} {(gauge.Wears == Wears.Smaller ? "under" : "over")} {fraction}";
    }
}
