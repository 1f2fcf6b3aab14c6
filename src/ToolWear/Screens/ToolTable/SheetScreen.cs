using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Wording;

namespace ToolWear.Screens.ToolTable;

/// <summary>A screen on which a tool is entered answer by answer: in the table, or one by itself.</summary>
/// <param name="host">Where it is shown.</param>
/// <param name="questions">What is asked, in order.</param>
internal abstract class SheetScreen(Host host, ImmutableArray<Asked> questions) : Screen(host)
{
    /// <inheritdoc />
    public override TypedLine Line => Sheet.Line;

    /// <summary>The answers of the tool that is being entered.</summary>
    protected SheetLine Sheet { get; } = new(questions);

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Recorded => Sheet.At > 0 || base.Has(need),
            Need.Choice => Sheet.Guided.HasChoice,
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        row.Act == Act.TakeBack && Sheet.At > 0 ? KeyWords.OneBack : base.WordsOf(row);

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Move:
                Sheet.Choose(which == 0 ? -1 : 1);
                break;
            case Act.Enter when Sheet.Next():
                Record();
                break;
            case Act.Enter:
                Propose();
                break;
            case Act.Back:
                Host.Go(Host.Home);
                break;
            default:
                break;
        }
    }

    /// <inheritdoc />
    public override bool StepBack() => Sheet.Back();

    /// <summary>Begins a tool.</summary>
    /// <param name="answers">What is answered already.</param>
    protected void Begin(ToolSheet answers)
    {
        Sheet.Begin(answers);
    }

    /// <summary>Goes on after the tool was recorded.</summary>
    /// <param name="entered">Its answers.</param>
    protected abstract void Entered(ToolSheet entered);

    /// <summary>What is said of the answers so far: where a proposed scrap size comes from, how the drift nests.</summary>
    /// <returns>Sentences, one a line; empty where there is nothing to say.</returns>
    protected string Remarks() => string.Join('\n', SheetRemarks.Of(Sheet.Sheet, Sitting));

    private void Propose()
    {
        if (
            Sheet.Asked == Asked.Scrap
            && Sheet.Sheet[Asked.Scrap].Length == 0
            && SheetRemarks.Scrap(Sheet.Sheet, Sitting) is { } scrap
        )
        {
            Sheet.Offer(Asked.Scrap, SizeText.Offer(scrap.Size, Sitting.Units)!);
        }
    }

    private void Record()
    {
        ImmutableArray<LedgerEntry> entries = Sheet.Sheet.Entries(
            Sitting.Units,
            Sitting.Today,
            out (Asked At, string Why)? refusal
        );
        if (refusal is { } wrong)
        {
            Sheet.Go(wrong.At);
            Sitting.Say(wrong.Why, Ink.Warn);
        }
        else if (Sitting.Record(entries))
        {
            Entered(Sheet.Sheet);
            if (MarksAlike.Of(Sitting.Shop, entries) is [var (given, other), ..])
            {
                Sitting.Say(Words.MarksAlike(given, other), Ink.Warn);
            }
        }
    }
}
