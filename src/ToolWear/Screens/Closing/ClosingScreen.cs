using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Closing;

/// <summary>Asks for heads by stage and closes the session.</summary>
/// <param name="host">Where it is shown.</param>
public sealed class ClosingScreen(Host host) : Screen(host)
{
    private ImmutableArray<TypedLine> lines = [];
    private ImmutableArray<(OrderDescribed Before, OrderDescribed After)> orders = [];
    private int at;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Closing;

    /// <inheritdoc />
    public override string Heading => Words.ClosingHeading(Sitting.Shop.OpenSession);

    /// <inheritdoc />
    public override TypedLine? Line => orders.IsEmpty && at < lines.Length ? lines[at] : null;

    /// <inheritdoc />
    public override void Open()
    {
        lines = [.. ClosingText.Rows(Sitting.Shop, Host.Board).Select(MakeLine)];
        orders = [];
        at = 0;
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Choice => lines.Length > 1 && orders.IsEmpty,
            Need.Asked => !orders.IsEmpty,
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        row.Act == Act.Enter && at < lines.Length - 1 ? Words.NextOne : base.WordsOf(row);

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Move:
                at = Math.Clamp(at + (which == 0 ? -1 : 1), 0, lines.Length - 1);
                break;
            case Act.Enter when !orders.IsEmpty:
                Close([.. orders.Select(order => order.After)]);
                break;
            case Act.Drop:
                Close([]);
                break;
            case Act.Enter when at < lines.Length - 1:
                at++;
                break;
            case Act.Enter:
                AskOrClose();
                break;
            case Act.Back when !orders.IsEmpty:
                orders = [];
                break;
            default:
                Host.Go(ScreenName.Hammer);
                break;
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        if (Sitting.Shop.OpenSession is { } open)
        {
            ImmutableArray<string> typed = [.. lines.Select(line => line.Text)];
            string? question = orders.IsEmpty ? null : Words.AskCountOff(orders);
            ClosingText.Draw(body, Sitting.Shop, open.Name, Host.Board, typed, at, question);
        }
    }

    private TypedLine MakeLine(string stage)
    {
        TypedLine line = new(typed => char.IsAsciiDigit(typed[0]));
        int counted = Sitting.Shop.OpenSession!.HeadsByStage.GetValueOrDefault(stage);
        line.Offer(counted > 0 ? counted.ToString(CultureInfo.InvariantCulture) : "");
        return line;
    }

    private void AskOrClose()
    {
        if (Wrong() is { } wrong)
        {
            at = wrong;
            Sitting.Say(Words.NoHeads(lines[wrong].Text), Ink.Warn);
            return;
        }

        Shop shop = Sitting.Shop;
        orders =
        [
            .. OrderCountOff
                .Of(shop, shop.OpenSession!.Opened.Pattern, Finished)
                .Select(after => (shop.Orders[after.Order], after)),
        ];
        if (orders.IsEmpty)
        {
            Close([]);
        }
    }

    // the last stage that was counted is as far as heads came
    private int? Finished => lines.Select(line => ClosingText.Heads(line.Text)).LastOrDefault(each => each is not null);

    private void Close(ImmutableArray<OrderDescribed> counted)
    {
        Session open = Sitting.Shop.OpenSession!;
        ImmutableArray<int?> typed = [.. lines.Select(line => ClosingText.Heads(line.Text))];
        ImmutableArray<LedgerEntry> estimated =
        [
            .. ClosingText.Estimated(Sitting.Shop, open.Name, Host.Board, typed).Select(each => each.Heats),
        ];
        ImmutableArray<LedgerEntry> heads = ClosingText.Counted(Sitting.Shop, open, Host.Board, typed);
        if (!Sitting.Record([.. heads, .. estimated, new SessionClosed(open.Name, Finished), .. counted]))
        {
            return;
        }

        string[] used = [.. SessionTools.Marks(Sitting.Shop, open.Name)];
        Sitting.BackUp();
        Host.Go(Host.Home);
        Sitting.Say(Words.SessionClosed(open.Name, used), Ink.Done);
    }

    private int? Wrong()
    {
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i].Text.Length > 0 && ClosingText.Heads(lines[i].Text) is null)
            {
                return i;
            }
        }

        return null;
    }
}
