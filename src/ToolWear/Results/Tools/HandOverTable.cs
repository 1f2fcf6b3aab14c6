using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Eyes;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Wording;
using Row = ToolWear.Results.Column<ToolWear.Results.Tools.HandOverStep>;

namespace ToolWear.Results.Tools;

/// <summary>A stage of a pattern with the tools that may be taken for it, the one to take first in front.</summary>
internal sealed record HandOverStep(
    ShopForecasts All,
    int Number,
    string Pattern,
    PatternStage Stage,
    ImmutableArray<ToolForecast> Fitting
)
{
    private const int MostThen = 4;

    public ToolForecast? First => Fitting.FirstOrDefault();

    public Tool? Tool => First?.Tool.Tool;

    public Judged? Verdict => First is null ? null : All.VerdictOf(First);

    public string What =>
        $"{Stage.Eye} {(Stage.Place == Place.None ? Stage.Form!.Name : Places.Words.Word(Stage.Place))}".Trim();

    public Work Work => Stage.Work ?? Tool?.MainWork ?? Stage.Form!.MainWork(Stage.Place);

    /// <summary>Whether a drift is driven deeper, or that no depth serves; null for other tools.</summary>
    public DriveDepth? Drive { get; } =
        Fitting.FirstOrDefault() is { } first ? DriftOutlooks.Of(All, first)?.Drive : null;

    /// <summary>When the tool is to be dressed; null where it is not dressed by heats.</summary>
    public Dressing? Dressing { get; } =
        Fitting.FirstOrDefault() is { } first ? Dressing.Of(All.Shop, first.Tool) : null;

    /// <summary>Heats of the stage's own work up to where the tool is near its limit or is to be dressed, rounded down.</summary>
    public double? StopAfter
    {
        get
        {
            if (Tool is not { } tool)
            {
                return null;
            }

            // a work that does not wear the tool sets no end; a dressing comes before the limit
            double weight = All.Shop.WeightOf(tool, Work, Pattern);
            double? enough = First!.EnoughOf(weight);
            double? dress = weight > 0 && Dressing?.Until is { } until ? Math.Floor(Math.Max(0, until) / weight) : null;
            return enough is null ? dress : Math.Min(enough.Value, dress ?? enough.Value);
        }
    }

    /// <summary>Why no tool is to be taken: what each that would fit needs first.</summary>
    public string WhyNone =>
        FindingWords.NoneToUse(All, All.InService.Where(each => LastTime.Fits(Stage, each.Tool.Tool)));

    /// <summary>The tools to take when the first has done its heats; files name them all.</summary>
    public Cell ThenTake
    {
        get
        {
            string[] marks = [.. Fitting.Skip(1).Select(each => each.Tool.Mark.Text)];
            string all = string.Join(", ", marks);
            return Cell.Of(
                all,
                marks.Length <= MostThen
                    ? all
                    : $"{string.Join(", ", marks.Take(MostThen))} {Words.AndMore(marks.Length - MostThen)}"
            );
        }
    }
}

/// <summary>What a helper is handed: the tools to take, in order, how deep, how cooled, when to stop.</summary>
internal static class HandOverTable
{
    public static Column<HandOverStep> Tool { get; } =
        new("tool", "Tool", (step, _) => Cell.Of(step.Tool?.Mark.Text, none: step.WhyNone));

    public static Column<HandOverStep> Peg { get; } = Row.Text("peg", "Peg", step => step.Tool?.Peg);

    public static Column<HandOverStep> What { get; } = Row.Text(null, "What", step => step.What);

    public static Column<HandOverStep> Steel { get; } = Row.Text("steel", "Steel", step => step.Tool?.Steel);

    public static Column<HandOverStep> Stop { get; } =
        new Row(
            "stop_after_heats",
            "Stop at heats",
            (step, _) => Cell.Of(step.StopAfter, heats => StopInWords(step, heats)),
            "heats"
        ).Means("heats of that work after which the tool is near its limit or is to be dressed");

    public static Column<HandOverStep> Dress { get; } =
        Row.Text(null, "Dress", step => step.Dressing is { } dressing ? FindingWords.DressAfter(dressing) : null);

    public static Column<HandOverStep> Mark { get; } =
        new(
            "mark_mm",
            "Drive to",
            (step, units) =>
                step.Drive is NoDepth none ? Cell.Of(null, none: none.Why(units))
                : step.Tool is { } tool ? DriveMark.MarkMm(tool, step.Drive, units)
                : Cell.Unknown,
            "mm"
        );

    public static Column<HandOverStep> Cooling { get; } =
        Row.Text(
                "cooling",
                "Cooling",
                step => step.Tool is { } tool ? CoolingOf(tool, step.All.Shop.Settings.Cooling) : null
            )
            .Means("what to do between heats");

    public static Column<HandOverStep> Verdict { get; } =
        new("verdict", "Verdict", (step, _) => Cell.Of(step.Verdict?.Word, step.Verdict?.Shown ?? "-"));

    public static Column<HandOverStep> LookedOver { get; } =
        Row.Day(
            "looked_over_on",
            "Looked over",
            step => step.First is { } first ? Core.Findings.LookedOver.Of(step.All.Shop, first.Tool).Last?.On : null
        );

    public static Column<HandOverStep> ThenTake { get; } =
        new Row("then_take", "Then use", (step, _) => step.ThenTake).Means(
            "tools to take when the first has done its heats, in order"
        );

    private static Column<HandOverStep> Step { get; } =
        Row.Number("step", "Step", step => step.Number).Means("the place in the order, 1 first");

    private static Column<HandOverStep> Stage { get; } = Row.Text("stage", "Stage", step => step.Stage.Name);

    /// <summary>For a narrow terminal: which tool, from where, till when ...</summary>
    public static Columns<HandOverStep> Which { get; } = [Step, Stage, Tool, Peg, Stop, Verdict];

    /// <summary>... and how it is used.</summary>
    public static Columns<HandOverStep> How { get; } = [Step, Tool, Mark, Dress, ThenTake, Cooling];

    public static Columns<HandOverStep> Columns { get; } =
    [
        Step,
        Stage,
        Tool with
        {
            Print = Print.Big,
        },
        Peg with
        {
            Print = Print.Wrapped,
        },
        Row.Text("form", null, step => step.Stage.Form!.Name),
        Row.Text("eye", null, step => step.Stage.Eye),
        Row.Place(null, step => step.Stage.Place),
        What with
        {
            Print = Print.Wrapped,
        },
        Row.Text("work", "Work", step => Works.Words.Word(step.Work)),
        Steel,
        Row.Number("until_near_heats", null, step => step.First?.EnoughToday, Quantity.Heats)
            .Means("weighted heats until the tool is near its limit"),
        Stop,
        Dress with
        {
            Print = Print.Wrapped,
        },
        Mark,
        Row.Number("deeper_mm", null, step => (step.Drive as DriveTo)?.DeeperMm, Quantity.Gap),
        Cooling with
        {
            Print = Print.Wrapped,
        },
        Verdict with
        {
            Print = Print.Wrapped,
        },
        LookedOver with
        {
            Print = Print.Small,
        },
        ThenTake with
        {
            Print = Print.Wrapped,
        },
    ];

    /// <summary>The tools that are taken first, each once, in the order of the stages.</summary>
    public static ImmutableArray<Tool> Tools(IEnumerable<HandOverStep> steps) =>
        [.. steps.Select(step => step.Tool).OfType<Tool>().Distinct()];

    /// <summary>A step for each stage of a pattern that uses a tool; none where no stage names a form of tool.</summary>
    public static ImmutableArray<HandOverStep> Steps(ShopForecasts all, string pattern)
    {
        ImmutableHashSet<long> next = NextToTake.Of(all);
        return
        [
            .. LastTime
                .Stages(all.Shop, pattern)
                .Where(stage => stage.Form is not null)
                .Select((stage, i) => new HandOverStep(all, i + 1, pattern, stage, Fitting(all, stage, next))),
        ];
    }

    private static ImmutableArray<ToolForecast> Fitting(
        ShopForecasts all,
        PatternStage stage,
        ImmutableHashSet<long> next
    ) =>
        [
            .. all
                .InService.Where(each => LastTime.Fits(stage, each.Tool.Tool))
                .Where(each => all.VerdictOf(each).MayBeNext)
                .OrderByDescending(each => next.Contains(each.Tool.Id))
                .ThenBy(each => each.Tool, RackOrder.Instance),
        ];

    private static string StopInWords(HandOverStep step, double heats) =>
        heats <= 0 && step.Dressing is { Until: <= 0 } ? "0: dress it first"
        : heats <= 0 ? "0: near its limit"
        : heats >= EnoughToday.MostAhead ? $"over {Words.About(EnoughToday.MostAhead)}"
        : Words.About(heats);

    // common practice, no source: the caution at the hammer, tool by tool
    private static string CoolingOf(Tool tool, Cooling? cooling)
    {
        string usual = cooling is { } word ? Care.CoolingWords.Word(word) : "as usual";
        return SteelClasses.Of(tool.Steel) == SteelClass.AirHardening ? "air only, no water; warm it first"
            : SteelClasses.Of(tool.Steel) == SteelClass.Unknown ? "air only, no water: steel unknown"
            : cooling is Core.Ledger.Cooling.DipWhenBlack or null ? $"{usual}; water only when black"
            : usual;
    }
}
