using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Plans;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Closing;

/// <summary>Asks for heads by stage and closes the session.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class ClosingScreen(Host host) : Screen(host)
{
    private ImmutableArray<TypedLine> lines = [];

    // what is recorded once it is answered whether orders are counted down
    private ClosingSession? asked;

    // what is recorded once it is answered whether the heats that are missing are filled in
    private ClosingSession? shortOf;
    private int at;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Closing;

    /// <inheritdoc />
    public override string Heading => ClosingHeading(Sitting.Shop.OpenSession);

    /// <inheritdoc />
    public override TypedLine? Line => !IsAsked && at < lines.Length ? lines[at] : null;

    private bool IsAsked => (asked ?? shortOf) is not null;

    /// <inheritdoc />
    public override void Open()
    {
        lines = [.. ClosingText.Rows(Sitting.Shop, Host.Board).Select(MakeLine)];
        (asked, shortOf) = (null, null);
        at = 0;
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Choice => lines.Length > 1 && !IsAsked,
            Need.Asked => IsAsked,
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        row.Act switch
        {
            Act.Enter when shortOf is { Short: var all } => all.All(each => each.Missing.IsEmpty)
                ? "close all the same"
                : "fill in",
            Act.Drop when shortOf is not null => "as tallied",
            Act.Enter when at < lines.Length - 1 => KeyWords.NextOne,
            _ => base.WordsOf(row),
        };

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Move:
                at = Math.Clamp(at + (which == 0 ? -1 : 1), 0, lines.Length - 1);
                break;
            case Act.Enter when shortOf is not null:
                CountOffOrClose(shortOf.Filled);
                break;
            case Act.Drop when shortOf is not null:
                CountOffOrClose(shortOf);
                break;
            case Act.Enter when asked is not null:
                Close(asked.CountingOff);
                break;
            case Act.Drop:
                Close(asked!.Entries);
                break;
            case Act.Enter when at < lines.Length - 1:
                at++;
                break;
            case Act.Enter:
                AskOrClose();
                break;
            case Act.Back when IsAsked:
                (asked, shortOf) = (null, null);
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
            string? question =
                shortOf is not null ? AskFill(shortOf.Short)
                : asked is not null ? AskCountOff(asked.Orders)
                : null;
            ClosingText.Draw(
                body,
                Sitting.Shop,
                open.Name,
                Host.Board,
                typed,
                at,
                question,
                FindingWords.UsedAllTheSame(Sitting.Shop, Sitting.Forecasts, open.Name)
            );
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
            Sitting.Say(NoHeads(lines[wrong].Text), Ink.Warn);
            return;
        }

        ImmutableArray<int?> heads = [.. lines.Select(line => ClosingText.Heads(line.Text))];
        ClosingSession deed = ClosingSession.Of(Sitting.Shop, Sitting.Shop.OpenSession!, Host.Board, heads);
        if (!deed.Short.IsEmpty)
        {
            shortOf = deed;
        }
        else
        {
            CountOffOrClose(deed);
        }
    }

    private void CountOffOrClose(ClosingSession deed)
    {
        shortOf = null;
        if (deed.Orders.IsEmpty)
        {
            Close(deed.Entries);
        }
        else
        {
            asked = deed;
        }
    }

    private void Close(ImmutableArray<LedgerEntry> entries)
    {
        string session = Sitting.Shop.OpenSession!.Name;
        if (!Sitting.Record(entries))
        {
            return;
        }

        Sitting.BackUp();
        Host.Go(Host.Home);
        Sitting.Say(SessionClosed(session, ClosingSession.Used(Sitting.Shop, session)), Ink.Done);
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

    private static string ClosingHeading(Session? open) => $"Close the session {open?.Name}";

    private static string SessionClosed(string name, ImmutableArray<string> used) =>
        used.IsEmpty
            ? $"Session {name} is closed; no tool worked in it."
            : $"Session {name} is closed. To look over, and to measure once cold: {string.Join(", ", used)}";

    private static string NoHeads(string text) => $"heads \"{text}\": a whole number up to 10000, or nothing";

    private static string AskFill(ImmutableArray<ShortTally> all) =>
        string.Join(' ', all.Select(EntryWords.FallsShort))
        + (
            all.All(each => each.Missing.IsEmpty)
                ? " Esc goes back: press t at the hammer and choose it. Enter closes all the same."
                : " Enter adds the missing heats as estimated, n closes with the tally as it is."
        );

    private static string AskCountOff(ImmutableArray<(OrderDescribed Before, OrderDescribed After)> orders) =>
        "Count them off the orders? "
        + string.Join("; ", orders.Select(each => PlanWords.CountedOff(each.Before, each.After)))
        + ". Enter: yes. n: leave the orders as they are.";
}
