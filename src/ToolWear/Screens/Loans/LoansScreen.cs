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
    private long? back;

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
            Need.Tools => back is null && base.Has(need),
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        row.Act == Act.Back && back is not null ? LookLater : base.WordsOf(row);

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
            case Act.Enter:
                TakeBack();
                break;
            case Act.Find:
                Find(ToolLookedOver.FindingWords.All[which]);
                break;
            case Act.Back when back is not null:
                back = null;
                break;
            default:
                base.DoInList(act, which);
                break;
        }
    }

    /// <inheritdoc />
    protected override void ComposeList(Picture body)
    {
        if (back is { } id)
        {
            LoansText.DrawReturn(body, Sitting.Shop.Tools[id]);
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
            back = tool.Id;
            Sitting.Say(Words.BackNow(tool.Mark.Text), Ink.Done);
        }
    }

    private void Find(string word)
    {
        _ = ToolLookedOver.FindingWords.TryParse(word, out Finding finding, out _);
        ToolInShop tool = Sitting.Shop.Tools[back!.Value];
        if (Sitting.Record(new ToolLookedOver(tool.Mark, Sitting.Today, finding, null, null)))
        {
            back = null;
            Sitting.Say(Words.Found(tool.Mark.Text, finding), finding == Finding.Sound ? Ink.Done : Ink.Warn);
        }
    }
}
