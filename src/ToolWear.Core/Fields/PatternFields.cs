using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Core.Fields;

/// <summary>A stage with the pattern that it belongs to.</summary>
/// <param name="Pattern">The pattern's name.</param>
/// <param name="Stage">The stage.</param>
public sealed record StageOf(string Pattern, PatternStage Stage)
{
    /// <summary>The stages of a pattern.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <returns>Each with the pattern's name, in order.</returns>
    public static IEnumerable<StageOf> All(PatternDescribed pattern) =>
        pattern.Stages.Select(stage => new StageOf(pattern.Pattern, stage));
}

/// <summary>The fields of a stage of a pattern.</summary>
public static class PatternFields
{
    /// <summary>The table.</summary>
    public static FieldTable<StageOf> Table { get; } =
        new FieldTable<StageOf>("patterns.csv", new("", new("", null, null, Place.None, null, null, null)))
            .Key("pattern", Name, s => s.Pattern, (s, v) => s with { Pattern = v! })
            .Means("what is forged, such as hatchet", "Pattern")
            .Needs("stage", Name, s => s.Stage.Name, (s, v) => s with { Stage = s.Stage with { Name = v! } })
            .Means("what the stage is called, such as slit, cheeks or finish", "Stage")
            .Maybe("eye", Text, s => s.Stage.Eye, (s, v) => s with { Stage = s.Stage with { Eye = v } })
            .Means("the eye it works on or for, such as H; empty where it serves every eye", "Eye", Kept.Eyes)
            .Maybe("form", Form, s => s.Stage.Form, (s, v) => s with { Stage = s.Stage with { Form = v } })
            .Means("the form of tool; empty where none is used", "Form")
            .Maybe(
                "place",
                InSeries,
                s => SeriesFields.OrNone(s.Stage.Place),
                (s, v) => s with { Stage = s.Stage with { Place = v ?? Place.None } }
            )
            .Means("its place in the series", "Place")
            .Maybe("work", Word(Works.Words), s => s.Stage.Work, (s, v) => s with { Stage = s.Stage with { Work = v } })
            .Means("the work done; empty for the tool's main work", "Work")
            .Maybe(
                "heats_a_head",
                AboveZero(1000) with
                {
                    Unit = "heats",
                },
                s => s.Stage.HeatsAHead,
                (s, v) => s with { Stage = s.Stage with { HeatsAHead = v } }
            )
            .Means("how many heats a head takes there, by your first guess; halves may be", "Heats a head")
            .Maybe("load", AboveZero(100), s => s.Stage.Load, (s, v) => s with { Stage = s.Stage with { Load = v } })
            .Means("how much harder than usual it is on the tool; empty counts as 1", "Load");
}
