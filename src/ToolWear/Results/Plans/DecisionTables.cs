using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Core.Tools;
using ToolWear.Wording;
using Age = ToolWear.Results.Column<ToolWear.Core.Planning.Decisions.AgeReplacement>;
using Pull = ToolWear.Results.Column<ToolWear.Results.Plans.PullRow>;
using Rework = ToolWear.Results.Column<ToolWear.Results.Plans.ReworkRow>;
using Split = ToolWear.Results.Column<ToolWear.Results.Plans.SplitRow>;

namespace ToolWear.Results.Plans;

/// <summary>Whether to pull a tool before it fails.</summary>
internal sealed record PullRow(ToolMark Mark, EarlyPulling Answer)
{
    public AgeReplacement? Age => Answer.Age as AgeReplacement;

    public ChangeBeforeSession? Before => Answer.Before as ChangeBeforeSession;

    public string Word =>
        Answer.Before is ChangeBeforeSession before
            ? before.Change
                ? "change it"
                : "keep it"
            : "not enough data";

    public string Said =>
        (Answer.Before, Answer.Age) switch
        {
            (ChangeBeforeSession { Change: true }, _) => "change it before the session: by cost, staying is dearer",
            (ChangeBeforeSession, AgeReplacement { AtHeats: { } at }) when Answer.HeatsFromNew < at =>
                $"by cost, pull such tools at about {Words.About(at)} heats from new",
            (ChangeBeforeSession, AgeReplacement { AtHeats: { } at }) =>
                $"by cost it can stay this session, though it is past the {Words.About(at)} heats at which such tools are best pulled",
            (NotEnoughData missing, _) => Words.Missing(missing),
            _ => "by cost, no age pays for pulling such tools early",
        };
}

/// <summary>Whether a rework of a tool pays.</summary>
internal sealed record ReworkRow(ToolMark Mark, ReforgeOrScrap Answer);

/// <summary>How heats are split between two drifts, and how finish heats fall with rough ones.</summary>
internal sealed record SplitRow(HeatSplit Split, FinishHeatsFit Falls);

/// <summary>What is weighed against each other.</summary>
internal static class DecisionTables
{
    private static readonly Quantity Cents = Quantity.Of("money", "F4");
    private static readonly Quantity Heats = Quantity.Of("heats", "F2");

    public static Columns<SplitRow> HeatSplit { get; } =
    [
        Split
            .Number("whole_heats", "Rough heats a head", row => row.Split.WholeHeats, Quantity.Worked)
            .Means("the better whole number of rough heats a head"),
        Split
            .Number("cost_at_whole", "Cost of its heats", row => row.Split.CostAtWhole, Quantity.Money)
            .Means("the same at the better of the two whole numbers about it"),
        Split
            .Number("cost_without", "With none", row => row.Split.CostWithout, Quantity.Money)
            .Means("what the heats of a head cost without rough heats"),
        Split
            .Number("saving", "Saved on a head", row => row.Split.Saving, Quantity.Money)
            .Means("what the better number saves on a head against none"),
        Split
            .Number("rough_heats", "Best, not in whole heats", row => row.Split.RoughHeats, Heats)
            .Means("the best number of rough heats a head"),
        Split
            .Number("cost_at_best", "Cost there", row => row.Split.CostAtBest, Quantity.Money)
            .Means("what the heats of a head cost at the best number, if heats came in parts"),
        Split
            .Number("cost_a_rough_heat", "A rough heat costs", row => row.Split.CostARoughHeat, Quantity.Money)
            .Means("what a heat on the rough drift costs"),
        Split
            .Number("cost_a_finish_heat", "A finish heat costs", row => row.Split.CostAFinishHeat, Quantity.Money)
            .Means("what a heat on the finish drift costs"),
        Split
            .Number("least_finish_heats", "Finish heats always needed", row => row.Falls.Least, Heats)
            .Means("finish heats that a head always needs"),
        Split
            .Number("more_without_rough", "More without rough heats", row => row.Falls.More, Heats)
            .Means("finish heats that it needs besides where there are no rough ones"),
        Split
            .Number("rough_heats_that_help", "Rough heats that take 2/3 away", row => row.Falls.Helps, Heats)
            .Means("rough heats that take two thirds of those besides away"),
        new(
            "sessions",
            "Sessions it rests on",
            (row, _) => Cell.Of(row.Falls.Sessions, sessions => sessions > 0 ? Words.About(sessions) : "given")
        ),
    ];

    public static Columns<PullRow> PullEarly { get; } =
    [
        Pull.Text("tool", "Tool", row => row.Mark.Text),
        new Pull("answer", "Answer", (row, _) => Cell.Of(row.Word, row.Said)).Means(
            "whether to change a tool before its next session: change it, keep it, not enough data"
        ),
        Pull.Number("pull_at_heats", "Pull such tools at", row => row.Age?.AtHeats, Quantity.Worked)
            .Means("the heats from new at which pulling such tools costs least"),
        Pull.Number("cost_a_heat", "Cost a heat so", row => row.Age?.CostAHeat, Cents),
        Pull.Number("run_to_failure_a_heat", "Run till they fail", row => row.Age?.RunToFailureAHeat, Cents)
            .Means("what a heat costs where tools are run till they fail"),
        Pull.Number("heats_from_new", "Its heats from new", row => row.Answer.HeatsFromNew, Quantity.Worked)
            .Means("weighted heats of the tool since it was made"),
        Pull.Number("session_heats", "Next session", row => row.Answer.SessionHeats, Quantity.Worked)
            .Means("heats of the next usual session"),
        Pull.Number("cost_of_staying", "Staying costs", row => row.Before?.CostOfStaying, Cents)
            .Means("what it costs on the average to leave it in"),
        Pull.Number("cost_of_changing", "Changing costs", row => row.Before?.CostOfChanging, Cents)
            .Means("what changing the tool before the session costs"),
        Pull.Number("failures", "Failed on record", row => row.Answer.Failures).Means("tools that cracked or broke"),
    ];

    /// <summary>At which age to pull tools of a life that was given.</summary>
    public static Columns<AgeReplacement> PullAt { get; } =
    [
        new("pull_at_heats", "Pull at", (age, _) => AtHeats(age), "heats"),
        Age.Number("cost_a_heat", "Cost a heat so", age => age.CostAHeat, Cents),
        Age.Number("run_to_failure_a_heat", "Run till they fail", age => age.RunToFailureAHeat, Cents),
    ];

    public static Columns<ReworkRow> Reforge { get; } =
    [
        Rework.Text("tool", "Tool", row => row.Mark.Text),
        new Rework(
            "reforge",
            "Answer",
            (row, _) => Cell.Of(row.Answer.Reforge ? "yes" : "no", PlanWords.ReforgeAnswer(row.Answer))
        ).Means("whether to re-forge a worn tool: yes, no"),
        Rework
            .Number("rework_a_heat", "Rework, a heat", row => row.Answer.ReworkAHeat, Quantity.Money)
            .Means("what a heat gained by a rework costs"),
        Rework
            .Number("new_a_heat", "New one, a heat", row => row.Answer.NewAHeat.Value, Quantity.Money)
            .Means("what a heat of a new tool costs"),
        Rework
            .Number("new_a_heat_lo90", "from", row => row.Answer.NewAHeat.Low90, Quantity.Money)
            .Means("nine times in ten at least so much"),
        Rework
            .Number("new_a_heat_hi90", "to", row => row.Answer.NewAHeat.High90, Quantity.Money)
            .Means("nine times in ten at most so much"),
    ];

    private static Cell AtHeats(AgeReplacement age) =>
        age.AtHeats is { } heats ? Cell.Of(heats) : Cell.Of(null, none: "run them till they fail");
}
