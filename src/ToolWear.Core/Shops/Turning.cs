using ToolWear.Core.Ledger;

namespace ToolWear.Core.Shops;

/// <summary>Entries that speak of an entry: it is crossed out, or it counts again.</summary>
internal static class Turning
{
    /// <summary>Whether it speaks of an entry.</summary>
    public static bool IsOf(LedgerEntry what) => NumberOf(what) is not null;

    /// <summary>The number of the entry that an entry speaks of, null for all others.</summary>
    public static long? NumberOf(LedgerEntry what) =>
        what switch
        {
            EntryCrossedOut e => e.Entry,
            EntryCountsAgain e => e.Entry,
            _ => null,
        };

    /// <summary>Why an entry cannot be crossed out or count again, whatever else there is.</summary>
    public static string? Fault(LedgerEntry what, ReadOnlySpan<Entered> before, Func<long, bool> isCrossedOut)
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
}
