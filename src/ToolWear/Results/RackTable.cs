using System.Collections.Immutable;
using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Verdicts;

namespace ToolWear.Results;

/// <summary>The tool rack, with the pinned columns.</summary>
internal static class RackTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new(null, ""),
        new("tool", "Tool"),
        new("form", null),
        new("eye", "Eye"),
        new("place", null),
        new(null, "What"),
        new("steel", null),
        new("state", null),
        new(null, "Worn"),
        new(null, "Of"),
        new("heats_left", "Left"),
        new("left_lo90", "from"),
        new("left_hi90", "to"),
        new(null, ""),
        new("eye_length_mm", "Eye L"),
        new("eye_width_mm", "Eye W"),
        new("verdict", "Verdict"),
        new("why", null),
        new("gauge", null),
        new("looked_over_on", null),
        new("next", null),
    ];

    private static readonly ImmutableArray<string> Pinned =
    [
        "tool",
        "form",
        "eye",
        "place",
        "steel",
        "state",
        "verdict",
        "why",
        "gauge",
        "heats_left",
        "left_lo90",
        "left_hi90",
        "eye_length_mm",
        "eye_width_mm",
        "looked_over_on",
        "next",
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="forecasts">The shop with its forecasts.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>A row for each tool that is not scrapped.</returns>
    public static Table Of(ShopForecasts forecasts, LengthUnit units)
    {
        ImmutableHashSet<long> next = NextToTake.Of(forecasts);
        return new Table(
            Columns,
            [.. forecasts.Tools.Select(tool => Row(forecasts, tool, next.Contains(tool.Tool.Id), units))]
        )
        {
            FileOrder = Pinned,
        };
    }

    private static ImmutableArray<Cell> Row(ShopForecasts forecasts, ToolForecast tool, bool isNext, LengthUnit units)
    {
        Tool made = tool.Tool.Tool;
        GaugeForecast? gauge = tool.Deciding;
        HeatsLeft? left = tool.HeatsLeft;
        Judged verdict = forecasts.VerdictOf(tool);
        EyeSize? eye = EyeNow.Of(forecasts, tool)?.Eye;
        string Wear(double mm) => SizeShown.Wear(mm, units);
        string Eye(double mm) => SizeShown.Eye(Length.FromMm(mm), units);
        string place = made.Place == Place.None ? "" : Places.Words.Word(made.Place);
        return
        [
            Cell.Of(isNext ? ">" : "", none: ""),
            Cell.Of(made.Mark.Text),
            Cell.Of(made.Form.Name),
            Cell.Of(made.Eye),
            Cell.Of(place),
            Cell.Of(place.Length > 0 ? place : made.Form.Name),
            Cell.Of(made.Steel),
            Cell.Of(ToolStates.Words.Word(tool.Tool.State)),
            Cell.Of(gauge?.WearNowMm ?? gauge?.History.LastKnownWearMm, Wear),
            Cell.Of(gauge?.History.Wear.LimitMm, Wear),
            Cell.Of(left?.Q50, Words.About),
            Cell.Of(left?.Q05, Words.About),
            Cell.Of(left?.Q95, Words.About),
            Cell.Of(left is null || tool.FollowedToItsLimit ? "" : Words.NotFollowedMark, none: ""),
            Cell.Of(eye?.LengthMm, Eye),
            Cell.Of(eye?.WidthMm, Eye),
            Cell.Of(verdict.Word, Words.AsideOr(tool.Tool, verdict)),
            Cell.Of(verdict.Why),
            Cell.Of(gauge?.History.Gauge.Name),
            Cell.Of(LookedOver.Of(forecasts.Shop, tool.Tool).Last?.On),
            Cell.Of(isNext ? "yes" : ""),
        ];
    }
}
