using System.Collections.Immutable;
using ToolWear.Storage.Backups;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Documents;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;

namespace ToolWear.Storage.Mending;

/// <summary>What putting a backup in place would mean.</summary>
/// <param name="Then">What the shop would hold.</param>
/// <param name="Gone">How many of the entries that can be read now would not be there any more.</param>
/// <param name="IsOtherShop">Whether the backup is of another shop than the one that is here.</param>
public sealed record RestoreOutlook(JournalHeld Then, long Gone, bool IsOtherShop);

/// <summary>Puts a backup in a store's place; what was there is kept beside under another name.</summary>
public static class Restore
{
    /// <summary>Looks what would go, so that the smith can be asked.</summary>
    /// <param name="paths">The store; there may be none yet.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <param name="backup">A backup.</param>
    /// <returns>What it would mean; nothing was changed.</returns>
    /// <exception cref="StoreRefusedException">The file is no backup, or the shop itself.</exception>
    /// <exception cref="DamagedJournalException">The backup is not as it was written.</exception>
    /// <exception cref="NewerJournalException">Only a newer program can read the backup.</exception>
    /// <exception cref="FileNotFoundException">There is no such backup.</exception>
    public static RestoreOutlook Look(StorePaths paths, IDisk disk, KnownKinds kinds, string backup)
    {
        MustBeABackup(paths, disk, backup);
        var inBackup = new HashSet<(long, uint)>();
        JournalHeld then = JournalCopy.Held(disk, backup, kinds, line => inBackup.Add((line.Seq, line.Crc)));
        if (disk.KindOf(paths.Journal) != PathKind.PlainFile)
        {
            return new RestoreOutlook(then, 0, IsOtherShop: false);
        }
        long gone = 0;
        string? shop = Lines(
            disk,
            paths.Journal,
            kinds,
            line => gone += inBackup.Contains((line.Seq, line.Crc)) ? 0 : line.Bodies.Count
        );
        bool isOther = shop is not null && shop != then.Point.Shop;
        return new RestoreOutlook(then, gone, isOther);
    }

    /// <summary>Puts the backup in place. Whenever the power goes, the old shop or the new one is there, whole.</summary>
    /// <param name="paths">The store.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="settings">What the store must be told.</param>
    /// <param name="backup">A backup.</param>
    /// <param name="folders">Where the shop's backups lie besides its own folder.</param>
    /// <returns>What is now in place.</returns>
    /// <exception cref="StoreBusyException">A window is open on the store.</exception>
    /// <exception cref="StoreRefusedException">What stands there is no store; it was left as it is.</exception>
    /// <exception cref="StoreException">The backup cannot be used; nothing was changed.</exception>
    public static JournalPoint PutInPlace(
        StorePaths paths,
        IDisk disk,
        StoreSettings settings,
        string backup,
        params IEnumerable<string> folders
    )
    {
        StoreEntrance.Look(disk, paths);
        bool isForeign =
            disk.KindOf(paths.Journal) == PathKind.Nothing
            && DocumentFiles.Look(disk, paths.Documents) == DocumentFiles.Content.Foreign;
        if (isForeign)
        {
            throw new StoreRefusedException($"{paths.Documents} is no store of ToolWear, and was left as it is.");
        }
        using IDiskLock documents = Store.TakeDocumentsLock(paths, disk);
        using IDiskLock held = Store.TakeLock(paths, disk, settings);
        MustBeABackup(paths, disk, backup);
        var inBackup = new HashSet<(long, uint)>();
        JournalPoint point = JournalCopy
            .Held(disk, backup, settings.Kinds, line => inBackup.Add((line.LastSeq, line.Crc)))
            .Point;
        using WholeFile copy = JournalCopy.CopyBeside(disk, backup, point, paths.Journal, settings.Kinds);
        JournalCopy.KeepAside(disk, paths.Journal, DocumentFiles.AsideOf(disk, paths.Journal, settings.Clock));
        foreach (string folder in folders.Prepend(paths.Backups))
        {
            OtherBackupsAside(disk, folder, point.Shop, inBackup);
        }
        // before the journal: documents that know more than the journal would be called its damage
        DocumentFiles.MoveAside(disk, paths, settings.Clock);
        copy.IntoPlace();
        return point;
    }

    // A file that a killed restore or a careless hand left is no less a backup for its name; the shop itself is none.
    private static void MustBeABackup(StorePaths paths, IDisk disk, string backup)
    {
        if (Path.GetFullPath(backup) == paths.Journal)
        {
            throw new StoreRefusedException($"{backup} is the shop's own journal. Nothing was changed; name a backup.");
        }
        if (!Replacing.IsJournal(disk, backup))
        {
            throw new StoreRefusedException(
                $"{backup} is no backup of ToolWear. Nothing was changed; name a file that \"toolwear backup\" wrote."
            );
        }
    }

    // What the smith chose to go back behind, or from, must neither come back by itself when a line is mended nor be
    // held against the shop at its next opening. It stays in the folder; the backup itself ends where the shop now does.
    private static void OtherBackupsAside(IDisk disk, string folder, string shop, HashSet<(long, uint)> kept)
    {
        ImmutableArray<(string Path, BackupName Name)> all = BackupFolder.Of(disk, folder, shop);
        foreach ((string path, BackupName name) in all)
        {
            if (!kept.Contains((name.Seq, name.Crc)))
            {
                disk.Move(path, path + ".aside");
            }
        }
        if (all.Length > 0)
        {
            disk.SyncFolder(folder);
        }
    }

    private static string? Lines(IDisk disk, string path, KnownKinds kinds, Action<JournalLine> each)
    {
        string? shop = null;
        try
        {
            using IDiskFile file = disk.OpenToRead(path);
            var reader = new JournalReader(file, path, kinds);
            shop = reader.Shop;
            while (reader.Next() is { } line)
            {
                each(line);
            }
        }
        catch (StoreException)
        {
            // the present journal may be the very reason to restore: what of it can be read is counted
            return shop;
        }
        return shop;
    }
}
