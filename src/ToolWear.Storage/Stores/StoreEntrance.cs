using ToolWear.Storage.Disks;
using ToolWear.Storage.Documents;

namespace ToolWear.Storage.Stores;

/// <summary>Looks at what stands where a store is to be, before anything is written there.</summary>
internal static class StoreEntrance
{
    /// <summary>Refuses what cannot be a store.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="paths">The store.</param>
    /// <exception cref="StoreRefusedException">A folder, a device, another program's file; it was left as it is.</exception>
    internal static void Look(IDisk disk, StorePaths paths)
    {
        if (disk.KindOf(paths.Folder) != PathKind.Folder)
        {
            throw new StoreRefusedException(
                $"The folder {paths.Folder} does not exist; make it, or name another store."
            );
        }
        RefuseOddKinds(disk, paths.Documents);
        RefuseOddKinds(disk, paths.Journal);
        RefuseOddKinds(disk, paths.Lock);
    }

    /// <summary>Whether a store begins here.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="paths">The store, looked at.</param>
    /// <returns>True where nothing of a store stands here, false where there is a journal.</returns>
    /// <exception cref="StoreRefusedException">Another program's file stands there.</exception>
    /// <exception cref="DamagedJournalException">There is a store, but its journal is gone.</exception>
    internal static bool IsNew(IDisk disk, StorePaths paths)
    {
        if (disk.KindOf(paths.Journal) != PathKind.Nothing)
        {
            return false;
        }
        switch (DocumentFiles.Look(disk, paths.Documents))
        {
            case DocumentFiles.Content.Foreign:
                throw new StoreRefusedException(
                    $"{paths.Documents} is no store of ToolWear, and was left as it is; name another file."
                );
            case DocumentFiles.Content.Documents:
                throw JournalGone(paths, $"{paths.Documents} is there");
            default:
                if (disk.FilesIn(paths.Backups).Any(file => file.EndsWith(".journal", StringComparison.Ordinal)))
                {
                    throw JournalGone(paths, "its backups are there");
                }
                return true;
        }
    }

    /// <summary>Refuses to read where there is no store.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="paths">The store.</param>
    /// <exception cref="StoreRefusedException">There is none.</exception>
    internal static void MustExist(IDisk disk, StorePaths paths)
    {
        Look(disk, paths);
        if (IsNew(disk, paths))
        {
            throw new StoreRefusedException($"There is no store {paths.Documents} yet.");
        }
    }

    private static void RefuseOddKinds(IDisk disk, string path)
    {
        switch (disk.KindOf(path))
        {
            case PathKind.Folder:
                throw new StoreRefusedException($"{path} is a folder; a store is a file. Name another.");
            case PathKind.Link:
                throw new StoreRefusedException(
                    $"{path} is a symbolic link; a store is the file itself. Name the file it leads to."
                );
            case PathKind.Other:
                throw new StoreRefusedException($"{path} is no plain file; a store is one. Name another.");
            default:
                return;
        }
    }

    private static DamagedJournalException JournalGone(StorePaths paths, string what) =>
        new(
            0,
            $"{paths.Journal} is gone, though {what}. Nothing was changed. \"toolwear check\" makes it anew from the "
                + "documents; \"toolwear restore FILE\" puts a backup in its place. If what is there is another program's, name "
                + "another store."
        );
}
