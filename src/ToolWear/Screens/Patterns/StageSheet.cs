using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.Patterns;

/// <summary>A stage of a pattern that is being entered or changed; the first one of a new pattern asks its name too.</summary>
public sealed class StageSheet : GuidedEntry
{
    private const int Stage = 0;
    private const int EyeAsked = 1;
    private const int FormAsked = 2;
    private const int PlaceAsked = 3;
    private const int WorkAsked = 4;
    private const int HeatsAsked = 5;
    private const int LoadAsked = 6;
    private const int PatternName = 7;

    private readonly PatternDescribed? pattern;
    private readonly int at;
    private readonly bool isChange;

    private StageSheet(Shop shop, PatternDescribed? pattern, int at, bool isChange)
        : base(new GuidedLine(pattern is null ? Questions(shop) : Questions(shop)[..PatternName])) =>
        (this.pattern, this.at, this.isChange) = (pattern, at, isChange);

    /// <inheritdoc />
    public override string Heading =>
        pattern is null
            ? Words.NewPatternHeading
            : Words.StageHeading(pattern.Pattern, isChange ? pattern.Stages[at].Name : null);

    /// <inheritdoc />
    public override string Below =>
        WorkAnswered is Work.Slitting or Work.Opening ? Words.OneLine(Words.BlindHoleCaution) : "";

    /// <summary>The pattern as it was entered, and where in it the stage stands; null before.</summary>
    public (PatternDescribed Pattern, int At)? Made { get; private set; }

    /// <summary>The first stage of a new pattern.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The sheet.</returns>
    public static StageSheet NewPattern(Shop shop) => new(shop, null, 0, isChange: false);

    /// <summary>A stage behind another.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="pattern">The pattern.</param>
    /// <param name="behind">The stage before it, from 0.</param>
    /// <returns>The sheet.</returns>
    public static StageSheet Next(Shop shop, PatternDescribed pattern, int behind)
    {
        StageSheet sheet = new(shop, pattern, behind + 1, isChange: false);
        sheet.Guided.Offer(EyeAsked, pattern.Stages[behind].Eye ?? "");
        sheet.Guided.Offer(FormAsked, pattern.Stages[behind].Form?.Name ?? "");
        return sheet;
    }

    /// <summary>A change of a stage.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="pattern">The pattern.</param>
    /// <param name="at">Which stage, from 0.</param>
    /// <returns>The sheet.</returns>
    public static StageSheet Change(Shop shop, PatternDescribed pattern, int at)
    {
        StageSheet sheet = new(shop, pattern, at, isChange: true);
        PatternStage stage = pattern.Stages[at];
        sheet.Guided.Offer(Stage, stage.Name);
        sheet.Guided.Offer(EyeAsked, stage.Eye ?? "");
        sheet.Guided.Offer(FormAsked, stage.Form?.Name ?? "");
        sheet.Guided.Offer(PlaceAsked, Places.Words.Word(stage.Place));
        sheet.Guided.Offer(WorkAsked, stage.Work is { } work ? Works.Words.Word(work) : "");
        sheet.Guided.Offer(HeatsAsked, AnswersRead.Offer(stage.HeatsAHead));
        sheet.Guided.Offer(LoadAsked, AnswersRead.Offer(stage.Load));
        return sheet;
    }

    /// <inheritdoc />
    public override bool Take(AnswersRead read, Sitting sitting)
    {
        ToolForm? form = FormOf(read);
        Place place = read.Word(PlaceAsked, Places.Words) ?? Place.None;
        PatternStage stage = new(
            read.Text(Stage) ?? "",
            read.Text(EyeAsked),
            form,
            place,
            read.Word(WorkAsked, Works.Words) ?? form?.MainWork(place),
            (double?)read.Number(HeatsAsked, 0.01m, 1000),
            (double?)read.Number(LoadAsked, 0.01m, 100)
        );
        string name = pattern?.Pattern ?? read.Text(PatternName) ?? "";
        if (stage.Name.Length == 0)
        {
            read.Refuse(Stage, Words.NameWanted);
        }

        if (pattern is null && sitting.Shop.Patterns.ContainsKey(name))
        {
            read.Refuse(PatternName, Words.PatternThere(name));
        }

        if (read.Refusal is not null)
        {
            return false;
        }

        ImmutableArray<PatternStage> stages = pattern?.Stages ?? [];
        PatternDescribed made = new(name, isChange ? stages.SetItem(at, stage) : stages.Insert(at, stage));
        Made = (made, at);
        return sitting.Record(made);
    }

    /// <summary>The work as it is answered so far: said, or the main work of the form and place.</summary>
    private Work? WorkAnswered
    {
        get
        {
            string Answer(int question) => Guided.At == question ? Guided.Line.Text : Guided[question];
            return Works.Words.TryParse(Answer(WorkAsked), out Work work, out string _) ? work
                : Answer(WorkAsked).Trim().Length == 0 && ToolForms.TryFind(Answer(FormAsked), out ToolForm form, out _)
                    ? form.MainWork(
                        Places.Words.TryParse(Answer(PlaceAsked), out Place place, out string _) ? place : Place.None
                    )
                : null;
        }
    }

    private static ToolForm? FormOf(AnswersRead read)
    {
        if (read.Text(FormAsked) is not { } text)
        {
            return null;
        }

        if (ToolForms.TryFind(text, out ToolForm form, out string why))
        {
            return form;
        }

        read.Refuse(FormAsked, why);
        return null;
    }

    private static ImmutableArray<Question> Questions(Shop shop) =>
        [
            new("Stage", Words.AskStage, []),
            new("Eye", Words.AskStageEye, [.. shop.Eyes.Keys]),
            new("Form", Words.AskStageForm, [.. ToolForms.All.Select(form => form.Name)]),
            new("Place", Words.AskStagePlace, Places.Words.All),
            new("Work", Words.AskStageWork, Works.Words.All),
            new("Heats a head", Words.AskStageHeats, []),
            new("Load", Words.AskStageLoad, []),
            new("Pattern", Words.AskPattern, []),
        ];
}
