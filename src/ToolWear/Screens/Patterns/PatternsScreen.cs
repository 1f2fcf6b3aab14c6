using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;
using ToolWear.Wording;

namespace ToolWear.Screens.Patterns;

/// <summary>The patterns, stage by stage, with the heats a head that they take.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class PatternsScreen(Host host) : GuidedScreen(host)
{
    private const string PatternsHeading = "Patterns";
    private const string StageOneLeft = "A pattern keeps at least one stage. Its orders can be dropped.";

    private (Shop Shop, ImmutableArray<HeatsAHead> Stages)? known;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Patterns;

    /// <inheritdoc />
    protected override string ListHeading => PatternsHeading;

    /// <inheritdoc />
    protected override int Count => Stages.Length;

    private ImmutableArray<HeatsAHead> Stages
    {
        get
        {
            if (known is not { } last || !ReferenceEquals(last.Shop, Sitting.Shop))
            {
                known = (Sitting.Shop, [.. HeatsAHead.Of(Sitting.Shop).Values.SelectMany(each => each)]);
            }

            return known.Value.Stages;
        }
    }

    private (PatternDescribed Pattern, int At) Chosen
    {
        get
        {
            int row = Math.Clamp(List.Chosen, 0, Stages.Length - 1);
            PatternDescribed pattern = Sitting.Shop.Patterns[Stages[row].Pattern];
            return (pattern, row - FirstOf(pattern.Pattern));
        }
    }

    /// <inheritdoc />
    protected override void DoInList(Act act, int which)
    {
        switch (act)
        {
            case Act.Add:
                Begin(StageSheet.NewPattern(Sitting));
                break;
            case Act.NewStage:
                Begin(StageSheet.Next(Sitting, Chosen.Pattern, Chosen.At));
                break;
            case Act.Enter:
                Begin(StageSheet.Change(Sitting, Chosen.Pattern, Chosen.At));
                break;
            case Act.LeaveOut:
                LeaveOut();
                break;
            case Act.Back:
                Host.Go(ScreenName.Orders);
                break;
            default:
                base.DoInList(act, which);
                break;
        }
    }

    /// <inheritdoc />
    protected override void ComposeList(Picture body) => PatternsText.Draw(body, Stages, List);

    /// <inheritdoc />
    protected override void Entered(GuidedEntry entered)
    {
        StageSheet sheet = (StageSheet)entered;
        (PatternDescribed pattern, int at) = (sheet.Pattern!, sheet.At);
        List.Choose(FirstOf(pattern.Pattern) + at, Stages.Length);
        Sitting.Say(PatternEntered(pattern.Pattern, pattern.Stages.Length), Ink.Done);
    }

    private int FirstOf(string pattern) => Stages.ToList().FindIndex(each => each.Pattern == pattern);

    private void LeaveOut()
    {
        (PatternDescribed pattern, int at) = Chosen;
        if (pattern.Stages.Length == 1)
        {
            Sitting.Say(StageOneLeft, Ink.Warn);
        }
        else if (Sitting.Record(pattern with { Stages = pattern.Stages.RemoveAt(at) }))
        {
            // the next stroke must not fall on a stage of another pattern
            List.Choose(FirstOf(pattern.Pattern) + Math.Min(at, pattern.Stages.Length - 2), Stages.Length);
            Sitting.Say(StageLeftOut(pattern.Pattern, pattern.Stages[at].Name), Ink.Done);
        }
    }

    private static string PatternEntered(string pattern, int stages) =>
        $"Pattern {pattern} saved, {Words.CountOf(stages, "stage")} so far: n adds the next.";

    private static string StageLeftOut(string pattern, string stage) => $"{pattern}: {stage} removed.";
}
