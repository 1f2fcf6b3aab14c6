using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.LedgerPages;

/// <summary>Every entry; finding and crossing out.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class LedgerPagesScreen(Host host) : Screen(host)
{
    private const string LedgerHeading = "Ledger";
    private const string UsualWhy = "slip of the finger";
    private const string WhyCrossOut = "Crossed out, because:";
    private const string WhyCountAgain = "It counts again, because:";
    private const string Find = "Find:";

    private TypedLine? why;
    private TypedLine? search;
    private string words = "";
    private (Shop Shop, string Words, ImmutableArray<Entered> Entries) found;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.LedgerPages;

    /// <inheritdoc />
    public override string Heading => words.Length == 0 ? LedgerHeading : $"{LedgerHeading}: {words}";

    /// <inheritdoc />
    public override TypedLine? Line => why ?? search;

    private ImmutableArray<Entered> Entries
    {
        get
        {
            string wanted = search?.Text ?? words;
            if (!ReferenceEquals(found.Shop, Sitting.Shop) || found.Words != wanted)
            {
                found = (Sitting.Shop, wanted, LedgerTable.Found(Sitting.Shop, wanted));
            }

            return found.Entries;
        }
    }

    /// <inheritdoc />
    public override void Open()
    {
        words = "";
        why = search = null;
        List.Choose(0, 1);
    }

    // while a reason is typed, the chosen entry stays the one it is for
    /// <inheritdoc />
    protected override int Count => why is null ? Entries.Length : 0;

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.CrossOut:
                why = new TypedLine();
                why.Offer(UsualWhy);
                break;
            case Act.Search:
                search = new TypedLine();
                break;
            case Act.Enter when why is not null:
                CrossOut(why.Text);
                break;
            case Act.Enter:
                words = search?.Text ?? words;
                search = null;
                break;
            case Act.Back when why is not null || search is not null || words.Length > 0:
                words = why is null ? "" : words;
                why = search = null;
                break;
            default:
                base.Do(act, which);
                break;
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        string prompt =
            why is not null ? (IsCrossedOut ? WhyCountAgain : WhyCrossOut)
            : search is not null ? Find
            : "";
        LedgerPagesText.Draw(body, Sitting.Shop, Entries, List, prompt, Line?.Text ?? "");
    }

    private bool IsCrossedOut => Sitting.Shop.CrossedOut.ContainsKey(Entries[List.Chosen].Number);

    private void CrossOut(string reason)
    {
        long number = Entries[List.Chosen].Number;
        LedgerEntry turning = IsCrossedOut
            ? new EntryCountsAgain(number, reason)
            : Sitting.Shop.TakingBack(number, reason);
        if (Sitting.Record(turning))
        {
            Sitting.Say(EntryTurned(turning), Ink.Done);
            why = null;
        }
    }

    private static string EntryTurned(LedgerEntry turning) =>
        turning switch
        {
            EntryCountsAgain again => $"Entry {again.Entry} counts again.",
            EntryCrossedOut crossing => $"Entry {crossing.Entry} is crossed out.",
            _ => "",
        };
}
