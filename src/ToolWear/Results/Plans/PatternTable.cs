using ToolWear.Core.Planning;
using ToolWear.Core.Tools;
using Row = ToolWear.Results.Column<ToolWear.Core.Planning.HeatsAHead>;

namespace ToolWear.Results.Plans;

/// <summary>The patterns stage by stage.</summary>
internal static class PatternTable
{
    private static readonly Row Pattern = Row.Text("pattern", "Pattern", stage => stage.Pattern);

    public static Column<HeatsAHead> Stage { get; } = Row.Text("stage", "Stage", stage => stage.Stage.Name);

    public static Column<HeatsAHead> Tool { get; } = Row.Text(null, "Tool", stage => stage.Tools?.ToString());

    public static Column<HeatsAHead> Work { get; } =
        Row.Text("work", "Work", stage => stage.Stage.Work is { } work ? Works.Words.Word(work) : null);

    public static Column<HeatsAHead> FirstGuess { get; } =
        Row.Number("first_guess", "First guess", stage => stage.Stage.HeatsAHead, Quantity.HeatsAHead)
            .Means("heats a head by the smith's first guess");

    public static Column<HeatsAHead> Learned { get; } =
        Row.Number("heats_by_records", "By records", stage => stage.IsLearned ? stage.Heats : null, Quantity.HeatsAHead)
            .Means("heats a head by closed sessions; empty until two tell them");

    public static Column<HeatsAHead> Sessions { get; } =
        Row.Number("sessions", "Sessions", stage => stage.IsLearned ? stage.Sessions : null)
            .Means(
                "sessions in the year; in patterns those that the records are of; in heat-split those that its figures rest on, 0 where they were given"
            );

    public static Columns<HeatsAHead> Columns { get; } =
    [
        Pattern,
        Stage,
        Row.Text("eye", null, stage => stage.Stage.Eye),
        Row.Text("form", null, stage => stage.Stage.Form?.Name),
        Row.Place(null, stage => stage.Stage.Place),
        Tool,
        Work,
        Row.Number("load", "Load", stage => stage.Stage.Load ?? 1, Quantity.Of("", "0.##")),
        FirstGuess,
        Learned,
        Sessions,
    ];

    /// <summary>Heats a head of patterns that are ordered: the first guess, and what the records taught.</summary>
    public static Columns<HeatsAHead> HeatsAHead { get; } =
    [
        Pattern,
        Stage,
        FirstGuess,
        Learned,
        Row.Number(null, "Spread", stage => stage.Spread, Quantity.HeatsAHead),
        Sessions,
        Row.Text(null, "Used", stage => stage.IsLearned ? "records" : "first guess"),
        Row.Number(null, "Weighted", stage => stage.Weighted, Quantity.HeatsAHead),
    ];
}
