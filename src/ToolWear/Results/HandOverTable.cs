using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Verdicts;

namespace ToolWear.Results;

/// <summary>What a helper is handed: the tools to take, in order, how deep, how cooled, when to stop.</summary>
internal static class HandOverTable
{
    private const int MostThen = 4;

    private static readonly ImmutableArray<Column> Columns =
    [
        new("step", "Step"),
        new("stage", "Stage"),
        new("tool", "Tool"),
        new("peg", "Peg"),
        new("form", null),
        new("eye", null),
        new("place", null),
        new(null, "What"),
        new("work", "Work"),
        new("steel", "Steel"),
        new("until_near_heats", null),
        new("stop_after_heats", "Stop at heats"),
        new("mark_mm", "Drive to"),
        new("deeper_mm", null),
        new("cooling", "Cooling"),
        new("verdict", "Verdict"),
        new("looked_over_on", "Looked over"),
        new("then_take", "Then take"),
    ];

    /// <summary>Makes the table: a row for each stage of a pattern that uses a tool.</summary>
    /// <param name="all">The shop with its forecasts.</param>
    /// <param name="pattern">The pattern; one that is entered.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>The rows; none where no stage names a form of tool.</returns>
    public static Table Of(ShopForecasts all, string pattern, LengthUnit units)
    {
        ImmutableHashSet<long> next = NextToTake.Of(all);
        ImmutableArray<PatternStage> stages =
        [
            .. LastTime.Stages(all.Shop, pattern).Where(stage => stage.Form is not null),
        ];
        return new(Columns, [.. stages.Select((stage, i) => Row(all, i + 1, stage, Fitting(all, stage, next), units))]);
    }

    /// <summary>The tools that a table names first for its stages.</summary>
    /// <param name="all">The shop with its forecasts.</param>
    /// <param name="pattern">The pattern.</param>
    /// <returns>Each once, in the order of the stages.</returns>
    public static ImmutableArray<Tool> Tools(ShopForecasts all, string pattern)
    {
        ImmutableHashSet<long> next = NextToTake.Of(all);
        return
        [
            .. LastTime
                .Stages(all.Shop, pattern)
                .Select(stage => Fitting(all, stage, next).FirstOrDefault()?.Tool.Tool)
                .OfType<Tool>()
                .Distinct(),
        ];
    }

    /// <summary>The tools of a stage that may be taken, the one to take first in front.</summary>
    private static ImmutableArray<ToolForecast> Fitting(
        ShopForecasts all,
        PatternStage stage,
        ImmutableHashSet<long> next
    ) =>
        [
            .. all
                .InService.Where(each => LastTime.Fits(stage, each.Tool.Tool))
                .Where(each => all.VerdictOf(each).Verdict >= Verdict.NearItsLimit)
                .OrderByDescending(each => next.Contains(each.Tool.Id))
                .ThenBy(each => each.Tool, RackOrder.Instance),
        ];

    private static ImmutableArray<Cell> Row(
        ShopForecasts all,
        int step,
        PatternStage stage,
        ImmutableArray<ToolForecast> fitting,
        LengthUnit units
    )
    {
        ToolForecast? first = fitting.FirstOrDefault();
        Tool? tool = first?.Tool.Tool;
        string place = stage.Place == Place.None ? "" : Places.Words.Word(stage.Place);
        string what = $"{stage.Eye} {(place.Length > 0 ? place : stage.Form!.Name)}".Trim();
        Work work = stage.Work ?? tool?.MainWork ?? stage.Form!.MainWork(stage.Place);
        Judged? verdict = first is null ? null : all.VerdictOf(first);
        DriveMark? mark = first is null ? null : DriveMark.Of(all, first, units);
        return
        [
            Cell.Of(step),
            Cell.Of(stage.Name),
            Cell.Of(tool?.Mark.Text, none: Words.NoToolToTake),
            Cell.Of(tool?.Peg),
            Cell.Of(stage.Form!.Name),
            Cell.Of(stage.Eye),
            Cell.Of(place),
            Cell.Of(what),
            Cell.Of(Works.Words.Word(work)),
            Cell.Of(tool?.Steel),
            Cell.Of(first is null ? null : first.EnoughToday),
            Cell.Of(first is null ? null : StopAfter(all.Shop, first, stage, work), Stop),
            mark?.NoDepth is { } why ? Cell.Of(null, none: why) : mark?.MarkMm ?? Cell.Unknown,
            mark?.DeeperMm ?? Cell.Unknown,
            Cell.Of(tool is null ? null : Words.CoolingOf(tool, all.Shop.Settings.Cooling)),
            Cell.Of(verdict?.Word),
            Cell.Of(first is null ? null : LookedOver.Of(all.Shop, first.Tool).Last?.On),
            ThenTake([.. fitting.Skip(1).Select(each => each.Tool.Mark.Text)]),
        ];
    }

    /// <summary>Heats of the stage's own work up to where the tool is near its limit, rounded down.</summary>
    private static double? StopAfter(Shop shop, ToolForecast tool, PatternStage stage, Work work)
    {
        double weight =
            (work == tool.Tool.Tool.MainWork ? 1 : shop.Settings.Factor(tool.Tool.Tool.Place, work))
            * (stage.Load ?? 1);
        // a work that does not wear the tool sets no end
        return tool.EnoughToday is not { } weighted || weight <= 0 ? null
            : weighted >= EnoughToday.MostAhead ? EnoughToday.MostAhead
            : Math.Floor(Math.Max(0, weighted) / weight);
    }

    // files name them all
    private static Cell ThenTake(ImmutableArray<string> marks) =>
        marks.Length <= MostThen
            ? Cell.Of(string.Join(", ", marks))
            : Cell.Of(
                string.Join(", ", marks),
                $"{string.Join(", ", marks.Take(MostThen))} {Words.AndMore(marks.Length - MostThen)}"
            );

    private static string Stop(double heats) =>
        heats <= 0 ? Words.StopNow
        : heats >= EnoughToday.MostAhead ? $"over {Words.About(EnoughToday.MostAhead)}"
        : Words.About(heats);
}
