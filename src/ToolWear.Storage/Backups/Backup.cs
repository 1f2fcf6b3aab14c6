using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Backups;

/// <summary>A verified copy of a shop, out to a file of the smith's choice.</summary>
public static class Backup
{
    /// <summary>Copies the journal to a file; works beside an open screen.</summary>
    /// <param name="paths">The store.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <param name="target">The file, absent or an older backup; its folder exists.</param>
    /// <returns>What the copy holds.</returns>
    /// <exception cref="StoreRefusedException">There is no store, or the target is something else; it was left as it is.</exception>
    /// <exception cref="DamagedJournalException">The journal is not as it was written; no copy was made.</exception>
    /// <exception cref="IOException">The copy could not be made; what stood at the target still does.</exception>
    public static JournalPoint CopyOut(StorePaths paths, IDisk disk, KnownKinds kinds, string target)
    {
        StoreEntrance.MustExist(disk, paths);
        MayBeReplaced(paths, disk, kinds, target);
        JournalPoint point = JournalCopy.Read(disk, paths.Journal, kinds);
        using WholeFile copy = JournalCopy.CopyBeside(disk, paths.Journal, point, target, kinds);
        copy.IntoPlace();
        return point;
    }

    private static void MayBeReplaced(StorePaths paths, IDisk disk, KnownKinds kinds, string target)
    {
        string full = Path.GetFullPath(target);
        if (full == paths.Documents || full == paths.Journal || full == paths.Lock || full == paths.DocumentLog)
        {
            throw new StoreRefusedException($"{target} is part of the store itself; name another file.");
        }
        switch (disk.KindOf(target))
        {
            case PathKind.Nothing:
                return;
            case PathKind.PlainFile when IsJournal(disk, target, kinds):
                return;
            default:
                throw new StoreRefusedException(
                    $"{target} is no backup of ToolWear, and was left as it is; name another."
                );
        }
    }

    private static bool IsJournal(IDisk disk, string path, KnownKinds kinds)
    {
        try
        {
            using IDiskFile file = disk.OpenToRead(path);
            _ = new JournalReader(file, path, kinds);
            return true;
        }
        catch (StoreException)
        {
            return false;
        }
    }
}
