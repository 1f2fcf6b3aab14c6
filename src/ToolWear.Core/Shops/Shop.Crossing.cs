using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Shops;

/// <content>Entries that speak of an entry: it is crossed out, or it counts again.</content>
public sealed partial record Shop
{
    // as many as one evening may want to take back; each shares nearly all with the next
    private const int MostRecent = 64;

    // the shop before each of its last entries, the last at the end: what was just entered is taken back from there
    private ImmutableArray<Shop> recent = [];

    /// <summary>
    /// What takes an entry back: it is crossed out; what a crossing out was about counts again, and the reverse.
    /// </summary>
    /// <param name="number">The entry's number.</param>
    /// <param name="why">Why.</param>
    /// <returns>The entry to make; whether it can be is another question.</returns>
    public LedgerEntry TakingBack(long number, string why) =>
        (number < 1 || number > Ledger.Count ? null : Ledger[(int)number - 1].What) switch
        {
            EntryCrossedOut e => new EntryCountsAgain(e.Entry, why),
            EntryCountsAgain e => new EntryCrossedOut(e.Entry, why),
            _ => new EntryCrossedOut(number, why),
        };

    private Step Turn(Entered entered)
    {
        if (
            (
                FreeText.Fault(entered.What.Texts, entered.What.Notes)
                ?? Turning.Fault(entered.What, Ledger.AsSpan(), CrossedOut.ContainsKey)
            ) is
            { } fault
        )
        {
            return fault;
        }

        long number = Turning.NumberOf(entered.What)!.Value;
        if (TurnedAlone(number) is { } turned)
        {
            return TurnedBy(entered, turned);
        }

        ImmutableArray<long> falling = FallingWith(number, out Shop then);
        if (falling.IsEmpty)
        {
            return TurnedBy(entered, then);
        }

        string named =
            string.Join(", ", falling.Take(10)) + (falling.Length > 10 ? $" and {falling.Length - 10} more" : "");
        string entries = falling.Length == 1 ? $"entry {named}" : $"entries {named}";
        return entered.What is EntryCrossedOut
                ? $"entry {number} cannot be crossed out: {entries} {(falling.Length == 1 ? "rests" : "rest")} on it; cross out the last of them first"
            : falling.Contains(number) ? $"entry {number} cannot count again: what it rested on is crossed out"
            : $"entry {number} cannot count again: {entries} would not go with it; cross out the last of them first";
    }

    /// <summary>The shops before the last entries of the next one.</summary>
    private ImmutableArray<Shop> Remembered() =>
        [.. recent.Length < MostRecent ? recent : recent.RemoveAt(0), this with { recent = [] }];

    /// <summary>The shop whose ledger says that an entry is crossed out or counts again.</summary>
    /// <param name="entered">What says so.</param>
    /// <param name="turned">The shop as it is then, with another's ledger.</param>
    private Shop TurnedBy(Entered entered, Shop turned)
    {
        long number = Turning.NumberOf(entered.What)!.Value;
        return turned with
        {
            Ledger = Ledger.Add(entered),
            CrossedOut = entered.What is EntryCrossedOut ? CrossedOut.Add(number, entered) : CrossedOut.Remove(number),
            // what came to be with that entry, or without it, came otherwise
            recent = [.. recent.Where(each => each.Ledger.Count < number)],
        };
    }

    /// <summary>
    /// The shop if one entry were crossed out or stood, where all others stand as they do now: no mark changes hands and
    /// nothing falls. It is made anew from the entry on, where the shop before it is remembered.
    /// </summary>
    /// <param name="turned">The entry's number.</param>
    /// <returns>The shop; null where more hangs on the entry.</returns>
    private Shop? TurnedAlone(long turned)
    {
        Shop then = recent.LastOrDefault(each => each.Ledger.Count < turned) ?? Empty;
        foreach (Entered each in Ledger.AsSpan()[then.Ledger.Count..])
        {
            bool isTurned = each.Number == turned;
            bool stands = !CrossedOut.ContainsKey(each.Number);
            if (Turning.IsOf(each.What) || (!isTurned && !stands))
            {
                continue;
            }

            Shop? after = then.Apply(each).After;
            if (after is null || (isTurned && !after.HasMarksOf(then)))
            {
                return null;
            }

            then = isTurned && stands ? then : after;
        }

        return then;
    }

    private bool HasMarksOf(Shop other) =>
        ReferenceEquals(Marks, other.Marks) && ReferenceEquals(MarksGone, other.MarksGone);

    /// <summary>
    /// The entries that could not stand, or would speak of another tool, if one that stands were crossed out, or one
    /// that is crossed out stood: directly or because another of them falls.
    /// </summary>
    /// <param name="turned">The entry's number.</param>
    /// <param name="then">The shop then, without what falls.</param>
    private ImmutableArray<long> FallingWith(long turned, out Shop then)
    {
        bool standsThen = CrossedOut.ContainsKey(turned);
        Shop now = Empty;
        then = Empty;
        ImmutableArray<long>.Builder falling = ImmutableArray.CreateBuilder<long>();
        foreach (Entered each in Ledger)
        {
            bool isTurned = each.Number == turned;
            if (Turning.IsOf(each.What) || (!isTurned && CrossedOut.ContainsKey(each.Number)))
            {
                continue;
            }

            if (!isTurned || standsThen)
            {
                Step step = isTurned || SpeaksOfTheSame(now, then, each.What) ? then.Apply(each) : default;
                then = step.After ?? then;
                if (step.After is null)
                {
                    falling.Add(each.Number);
                }
            }

            if (!isTurned || !standsThen)
            {
                now = now.Apply(each).After ?? now;
            }
        }

        return falling.ToImmutable();
    }

    /// <summary>Whether the marks of an entry mean the same tools in two shops; one that was reused may not.</summary>
    private static bool SpeaksOfTheSame(Shop one, Shop other, LedgerEntry what) =>
        what is ToolAdded || what.Tools.All(mark => one.IdOf(mark) == other.IdOf(mark));

    private long? IdOf(ToolMark mark) => TryFind(mark, out ToolInShop? tool) ? tool.Id : null;
}
