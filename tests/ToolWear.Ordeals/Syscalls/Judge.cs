using ToolWear.Storage;

namespace ToolWear.Ordeals.Syscalls;

/// <summary>Says whether a folder is one that a deed may leave.</summary>
/// <param name="deed">The deed.</param>
/// <param name="before">The entries before it.</param>
/// <param name="after">The entries after it.</param>
/// <param name="folder">Where a disk is laid out to be opened.</param>
internal sealed class Judge(Deed deed, IReadOnlyList<string> before, IReadOnlyList<string> after, string folder)
{
    /// <summary>Makes the judge of a run that succeeded; the shop is opened where it stands.</summary>
    /// <param name="deed">The deed.</param>
    /// <param name="run">The run.</param>
    /// <param name="world">The folder of the run.</param>
    /// <returns>The judge.</returns>
    public static Judge Of(Deed deed, Recording run, string world)
    {
        string state = Path.Combine(world, "state");
        Shelf.Put(state, run.Before);
        return new Judge(deed, deed.LedgerMended(state), deed.Ledger(Path.Combine(world, "shop")), state);
    }

    /// <summary>Lays a disk out and opens the shop on it.</summary>
    /// <param name="files">What the disk holds.</param>
    /// <param name="isAcknowledged">Whether the deed was acknowledged.</param>
    /// <returns>What is wrong, or null.</returns>
    public string? Look(IReadOnlyDictionary<string, byte[]> files, bool isAcknowledged)
    {
        Shelf.Put(folder, files);
        return Look(folder, isAcknowledged);
    }

    /// <summary>Opens the shop in a folder.</summary>
    /// <param name="where">The folder.</param>
    /// <param name="isAcknowledged">Whether the deed was acknowledged.</param>
    /// <returns>What is wrong, or null.</returns>
    public string? Look(string where, bool isAcknowledged)
    {
        try
        {
            IReadOnlyList<string> found = isAcknowledged ? deed.Ledger(where) : deed.LedgerMended(where);
            bool isAfter = found.SequenceEqual(after, StringComparer.Ordinal);
            return !isAfter && (isAcknowledged || !MayStand(found))
                ? $"{found.Count} entries; {before.Count} before, {after.Count} after"
                : deed.Beside(where, isAcknowledged);
        }
        catch (Exception e) when (e is StoreException or IOException)
        {
            return "refused: " + e.Message;
        }
    }

    // as before, or whole lines more on the way to what is after
    private bool MayStand(IReadOnlyList<string> found) =>
        found.SequenceEqual(before, StringComparer.Ordinal)
        || (
            found.Count > before.Count
            && found.Count < after.Count
            && found.SequenceEqual(after.Take(found.Count), StringComparer.Ordinal)
        );
}
