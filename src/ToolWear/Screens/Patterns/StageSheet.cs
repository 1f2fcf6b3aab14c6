using System.Collections.Immutable;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Screens.Guided;
using ToolWear.Wording;

namespace ToolWear.Screens.Patterns;

/// <summary>A stage of a pattern that is being entered or changed; the first one of a new pattern asks its name too.</summary>
internal sealed class StageSheet : FieldSheet<StageOf>
{
    private const string NewPatternHeading = "A new pattern: its first stage";

    private readonly PatternDescribed? pattern;
    private readonly bool isChange;

    private StageSheet(Sitting sitting, PatternDescribed? pattern, int at, StageOf start, bool isChange)
        : base(PatternFields.Table, sitting, start, pattern is null) =>
        (this.pattern, At, this.isChange) = (pattern, at, isChange);

    /// <inheritdoc />
    public override string Heading =>
        pattern is null ? NewPatternHeading : StageHeading(pattern.Pattern, isChange ? pattern.Stages[At].Name : null);

    /// <inheritdoc />
    public override string Below => WorkAnswered is Work.Slitting or Work.Opening ? Cautions.BlindHoleCaution : "";

    /// <summary>Where in the pattern the stage stands, from 0.</summary>
    public int At { get; }

    /// <summary>The pattern as it was entered; null before.</summary>
    public PatternDescribed? Pattern { get; private set; }

    /// <summary>The first stage of a new pattern.</summary>
    /// <param name="sitting">The sitting.</param>
    /// <returns>The sheet.</returns>
    public static StageSheet NewPattern(Sitting sitting) =>
        new(sitting, null, 0, PatternFields.Table.Blank, isChange: false);

    /// <summary>A stage behind another.</summary>
    /// <param name="sitting">The sitting.</param>
    /// <param name="pattern">The pattern.</param>
    /// <param name="behind">The stage before it, from 0.</param>
    /// <returns>The sheet.</returns>
    public static StageSheet Next(Sitting sitting, PatternDescribed pattern, int behind)
    {
        (string? eye, ToolForm? form) = (pattern.Stages[behind].Eye, pattern.Stages[behind].Form);
        PatternStage next = PatternFields.Table.Blank.Stage with { Eye = eye, Form = form };
        return new(sitting, pattern, behind + 1, new(pattern.Pattern, next), isChange: false);
    }

    /// <summary>A change of a stage.</summary>
    /// <param name="sitting">The sitting.</param>
    /// <param name="pattern">The pattern.</param>
    /// <param name="at">Which stage, from 0.</param>
    /// <returns>The sheet.</returns>
    public static StageSheet Change(Sitting sitting, PatternDescribed pattern, int at) =>
        new(sitting, pattern, at, new(pattern.Pattern, pattern.Stages[at]), isChange: true);

    /// <inheritdoc />
    protected override FieldFault? FaultIn(StageOf thing, Shop shop) =>
        IsNew && shop.Patterns.ContainsKey(thing.Pattern) ? new("pattern", PatternThere(thing.Pattern)) : null;

    /// <inheritdoc />
    protected override bool Record(StageOf thing)
    {
        PatternStage stage = thing.Stage with
        {
            Work = thing.Stage.Work ?? thing.Stage.Form?.MainWork(thing.Stage.Place),
        };
        ImmutableArray<PatternStage> stages = pattern?.Stages ?? [];
        Pattern = new(thing.Pattern, isChange ? stages.SetItem(At, stage) : stages.Insert(At, stage));
        return Sitting.Record(Pattern);
    }

    /// <summary>The work as it is answered so far: said, or the main work of the form and place.</summary>
    private Work? WorkAnswered =>
        Works.Words.TryParse(Answer("work"), out Work work, out string _) ? work
        : Answer("work").Length == 0 && ToolForms.TryFind(Answer("form"), out ToolForm form, out _)
            ? form.MainWork(Places.Words.TryParse(Answer("place"), out Place place, out string _) ? place : Place.None)
        : null;

    private static string StageHeading(string pattern, string? stage) =>
        stage is null ? $"{pattern}: one more stage" : $"{pattern}: {stage}";

    private static string PatternThere(string pattern) => $"there is a pattern {pattern} already: n adds a stage to it";
}
