using ToolWear.Storage.Backups;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Stores;

/// <summary>A verified copy of a shop, out to a file of the smith's choice.</summary>
public static class Backup
{
    /// <summary>Copies the journal to a file; works beside an open screen.</summary>
    /// <param name="paths">The store.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <param name="target">The file, absent or an older backup of this shop; its folder exists.</param>
    /// <param name="isForced">Whether a foreign file may be replaced; a shop or another's backup never is.</param>
    /// <returns>What the copy holds.</returns>
    /// <exception cref="StoreRefusedException">There is no store, or the target is something else; it was left as it is.</exception>
    /// <exception cref="DamagedJournalException">The journal is not as it was written; no copy was made.</exception>
    /// <exception cref="IOException">The copy could not be made; what stood at the target still does.</exception>
    public static JournalHeld CopyOut(
        StorePaths paths,
        IDisk disk,
        KnownKinds kinds,
        string target,
        bool isForced = false
    )
    {
        StoreEntrance.MustExist(disk, paths);
        JournalHeld held = JournalCopy.Held(disk, paths.Journal, kinds);
        Replacing.MustBeAllowed(disk, target, JournalFormat.FirstLine(held.Point.Shop).Bytes, isForced);
        using WholeFile copy = JournalCopy.CopyBeside(disk, paths.Journal, held.Point, target, kinds);
        copy.IntoPlace();
        return held;
    }
}
