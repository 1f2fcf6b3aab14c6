using System.Collections.Immutable;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Documents;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Backups;

/// <summary>What a check came to.</summary>
/// <param name="Entries">How many entries the store holds now, and can be read.</param>
/// <param name="Findings">What was out of order; empty where nothing was.</param>
public sealed record CheckReport(long Entries, ImmutableArray<StoreFinding> Findings)
{
    /// <summary>Whether something that was accepted is gone.</summary>
    public bool IsAnythingGone => Findings.Any(finding => finding.Kind == FindingKind.EntriesGone);
}

/// <summary>Verifies a store from end to end and puts right what can be put right.</summary>
public static class StoreCheck
{
    /// <summary>Tests every line of the journal and every document, mends and rebuilds.</summary>
    /// <param name="paths">The store.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="settings">What the store must be told.</param>
    /// <returns>What was found and done. Where something is gone, the journal is left as it is.</returns>
    /// <exception cref="StoreBusyException">Another has been writing for too long, or a window is open where something has to be mended.</exception>
    /// <exception cref="StoreRefusedException">There is no store there.</exception>
    /// <exception cref="NewerJournalException">Only a newer program can read the journal.</exception>
    public static CheckReport Run(StorePaths paths, IDisk disk, StoreSettings settings)
    {
        StoreEntrance.Look(disk, paths);
        MustBeAStore(paths, disk);
        using IDiskLock held = Store.TakeLock(paths, disk, settings);
        using (Store? whole = TryOpen(paths, disk, settings, held))
        {
            if (whole is not null)
            {
                return Report(whole, [], settings);
            }
        }
        ImmutableArray<StoreFinding> mended = Journal(paths, disk, settings, out long readable);
        if (mended.Any(finding => finding.Kind == FindingKind.EntriesGone))
        {
            return new CheckReport(readable, mended);
        }
        using Store store = Open(paths, disk, settings, held);
        return Report(store, mended, settings);
    }

    private static CheckReport Report(Store store, ImmutableArray<StoreFinding> mended, StoreSettings settings)
    {
        _ = store.VerifyDocuments();
        return new CheckReport(
            store.LastSeq,
            [.. mended, .. store.Findings, .. Backups(store.Paths, store.Disk, settings)]
        );
    }

    // opening tests every line, and that the documents know no more: where it succeeds there is nothing to mend
    private static Store? TryOpen(StorePaths paths, IDisk disk, StoreSettings settings, IDiskLock held)
    {
        try
        {
            return Open(paths, disk, settings, held);
        }
        catch (DamagedJournalException)
        {
            return null;
        }
    }

    private static Store Open(StorePaths paths, IDisk disk, StoreSettings settings, IDiskLock held) =>
        Store.Open(paths, disk, settings, _ => { }, held);

    private static void MustBeAStore(StorePaths paths, IDisk disk)
    {
        try
        {
            StoreEntrance.MustExist(disk, paths);
        }
        catch (DamagedJournalException)
        {
            // the journal is gone, what was made of it is there: that is what mending is for
            return;
        }
    }

    private static ImmutableArray<StoreFinding> Journal(
        StorePaths paths,
        IDisk disk,
        StoreSettings settings,
        out long readable
    )
    {
        DamagedJournalException? damage = Damage(paths, disk, settings.Kinds, out readable, out string? shop);
        JournalMending.Result? mended;
        using WholeFile whole = WholeFile.Begin(disk, paths.Journal);
        using (Store.TakeDocumentsLock(paths, disk))
        using (var source = new LineSource(disk, paths, settings.Kinds))
        {
            bool isShort = source.Mark is { } mark && mark.Shop == shop && mark.Seq > readable;
            if (damage is null && !isShort)
            {
                return [];
            }
            mended = JournalMending.Mend(disk, paths.Journal, source, whole.File);
        }
        string what = damage?.Message ?? $"{paths.Journal} ends too early: the documents know more entries.";
        if (mended is null || !mended.IsWhole)
        {
            return [Gone(what, Math.Max(readable, mended?.LastSeq ?? 0))];
        }
        string aside = DocumentFiles.AsideOf(disk, paths.Journal, settings.Clock);
        JournalCopy.KeepAside(disk, paths.Journal, aside);
        whole.IntoPlace();
        readable = mended.LastSeq;
        return
        [
            new(
                FindingKind.JournalMended,
                $"{paths.Journal} was damaged and was mended, {mended.Mended} lines from the documents or a backup; it "
                    + $"holds {mended.LastSeq} entries. As it was it is kept in {aside}."
            ),
        ];
    }

    private static DamagedJournalException? Damage(
        StorePaths paths,
        IDisk disk,
        KnownKinds kinds,
        out long readable,
        out string? shop
    )
    {
        readable = 0;
        shop = null;
        if (disk.KindOf(paths.Journal) == PathKind.Nothing)
        {
            return new DamagedJournalException(0, $"{paths.Journal} is gone.");
        }
        try
        {
            using IDiskFile file = disk.OpenToRead(paths.Journal);
            var reader = new JournalReader(file, paths.Journal, kinds);
            shop = reader.Shop;
            while (reader.Next() is { } line)
            {
                readable = line.LastSeq;
            }
            readable = reader.End == JournalEnd.Unended ? reader.TakeUnended().LastSeq : readable;
            return null;
        }
        catch (DamagedJournalException damage)
        {
            return damage;
        }
    }

    private static StoreFinding Gone(string what, long readable) =>
        new(
            FindingKind.EntriesGone,
            $"{what} Neither the documents nor the newest backups hold what is missing; up to entry {readable} all is "
                + "there. Nothing was changed. \"toolwear restore FILE\" puts a backup in its place."
        );

    private static IEnumerable<StoreFinding> Backups(StorePaths paths, IDisk disk, StoreSettings settings)
    {
        foreach ((string path, _) in BackupFolder.Of(disk, paths.Backups, shop: null))
        {
            string? wrong = null;
            try
            {
                _ = JournalCopy.Read(disk, path, settings.Kinds);
            }
            catch (Exception e) when (e is StoreException or IOException or UnauthorizedAccessException)
            {
                wrong = e.Message;
            }
            if (wrong is not null)
            {
                yield return new StoreFinding(FindingKind.BackupFailed, $"The backup {path} is not sound: {wrong}");
            }
        }
    }
}
