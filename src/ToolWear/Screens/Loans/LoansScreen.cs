using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;
using ToolWear.Wording;

namespace ToolWear.Screens.Loans;

/// <summary>The tools that are lent out; one that comes back is looked over at once.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class LoansScreen(Host host) : GuidedScreen(host)
{
    private const string LoansHeading = "Loans";
    private const string LookLater = "look it over later";

    // the tool that came back and is to be looked over
    private LookQuestion? back;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Loans;

    /// <inheritdoc />
    protected override string ListHeading => LoansHeading;

    /// <inheritdoc />
    protected override int Count => back is null ? Loans.Length : 0;

    private ImmutableArray<Loan> Loans => Loan.All(Sitting.Shop, Sitting.Today);

    /// <inheritdoc />
    public override void Open()
    {
        base.Open();
        back = null;
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.InHand => Entry is null && back is not null,
            Need.Asked => back is { AsksPart: true },
            Need.Row when back is not null => true,
            Need.Tools => back is null && base.Has(need),
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        back is null ? base.WordsOf(row)
        : row.Act == Act.Back
            ? back.AsksPart ? KeyWords.OneBack
                : LookLater
        : row.Act == Act.Enter
            ? back.AsksPart ? "not known"
                : back.HasAnswer ? "done"
                : "sound"
        : base.WordsOf(row);

    /// <inheritdoc />
    public override void TakenBack(ImmutableArray<Core.Ledger.Entered> entries) => back = null;

    /// <inheritdoc />
    protected override void DoInList(Act act, int which)
    {
        switch (act)
        {
            case Act.Add:
                Begin(new LendSheet(Sitting));
                break;
            case Act.Enter when back is not null:
                Answered(back.Enter(Sitting, null));
                break;
            case Act.Enter:
                TakeBack();
                break;
            case Act.Find:
                _ = ToolLookedOver.FindingWords.TryParse(
                    ToolLookedOver.FindingWords.All[which],
                    out Finding found,
                    out _
                );
                Answered(back!.Find(found, Sitting, null));
                break;
            case Act.Part:
                back!.Place(which, Sitting, null);
                break;
            case Act.Back when back is not null:
                back = back.Back() ? back : null;
                break;
            default:
                base.DoInList(act, which);
                break;
        }
    }

    /// <inheritdoc />
    protected override void ComposeList(Picture body)
    {
        if (back is not null)
        {
            LoansText.DrawReturn(body, Sitting.Shop.Tools[back.Tool], back);
        }
        else
        {
            LoansText.Draw(body, Loans, List);
        }
    }

    /// <inheritdoc />
    protected override void Entered(GuidedEntry entered) { }

    private void TakeBack()
    {
        List.Choose(List.Chosen, Loans.Length);
        ToolInShop tool = Loans[List.Chosen].Tool;
        if (Sitting.Record(new ToolTakenBack(tool.Mark, Sitting.Today, null)))
        {
            back = new LookQuestion(tool.Id);
            Sitting.Say(Words.BackNow(tool.Mark.Text), Ink.Done);
        }
    }

    private void Answered(bool isDone) => back = isDone ? null : back;
}
