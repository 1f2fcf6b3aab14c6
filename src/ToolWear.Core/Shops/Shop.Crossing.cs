using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Shops;

/// <content>Entries that speak of an entry: it is crossed out, or it counts again.</content>
public sealed partial record Shop
{
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
                ?? TurningFault(entered.What, Ledger.AsSpan(), CrossedOut.ContainsKey)
            ) is
            { } fault
        )
        {
            return fault;
        }

        long number = NumberOf(entered.What)!.Value;
        ImmutableArray<long> falling = FallingWith(number);
        if (falling.IsEmpty)
        {
            return Fold([.. Ledger, entered]);
        }

        string named =
            string.Join(", ", falling.Take(10)) + (falling.Length > 10 ? $" and {falling.Length - 10} more" : "");
        string entries = falling.Length == 1 ? $"entry {named}" : $"entries {named}";
        return entered.What is EntryCrossedOut
                ? $"entry {number} cannot be crossed out: {entries} {(falling.Length == 1 ? "rests" : "rest")} on it; cross out the last of them first"
            : falling.Contains(number) ? $"entry {number} cannot count again: what it rested on is crossed out"
            : $"entry {number} cannot count again: {entries} would not go with it; cross out the last of them first";
    }

    private static bool IsOfAnEntry(LedgerEntry what) => NumberOf(what) is not null;

    /// <summary>The number of the entry that an entry speaks of, null for all others.</summary>
    private static long? NumberOf(LedgerEntry what) =>
        what switch
        {
            EntryCrossedOut e => e.Entry,
            EntryCountsAgain e => e.Entry,
            _ => null,
        };

    /// <summary>Why an entry cannot be crossed out or count again, whatever else there is.</summary>
    private static string? TurningFault(LedgerEntry what, ReadOnlySpan<Entered> before, Func<long, bool> isCrossedOut)
    {
        long number = NumberOf(what)!.Value;
        return before.IsEmpty ? $"there is no entry {number}: the ledger is empty"
            : number < 1 || number > before.Length
                ? $"there is no entry {number}: the ledger holds 1 to {before.Length}"
            : what is EntryCountsAgain ? (isCrossedOut(number) ? null : $"entry {number} is not crossed out")
            : isCrossedOut(number) ? $"entry {number} is crossed out already"
            : before[(int)number - 1].What switch
            {
                EntryCrossedOut e =>
                    $"entry {number} is itself a crossing out: say that entry {e.Entry} counts again instead",
                EntryCountsAgain e =>
                    $"entry {number} only says that entry {e.Entry} counts again: cross out that one instead",
                _ => null,
            };
    }

    /// <summary>
    /// The entries that could not stand, or would speak of another tool, if one that stands were crossed out, or one
    /// that is crossed out stood: directly or because another of them falls.
    /// </summary>
    private ImmutableArray<long> FallingWith(long turned)
    {
        bool standsThen = CrossedOut.ContainsKey(turned);
        Shop now = Empty;
        Shop then = Empty;
        ImmutableArray<long>.Builder falling = ImmutableArray.CreateBuilder<long>();
        foreach (Entered each in Ledger)
        {
            bool isTurned = each.Number == turned;
            if (IsOfAnEntry(each.What) || (!isTurned && CrossedOut.ContainsKey(each.Number)))
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
