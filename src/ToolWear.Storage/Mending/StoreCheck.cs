using System.Collections.Immutable;
using ToolWear.Storage.Backups;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Documents;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;

namespace ToolWear.Storage.Mending;

/// <summary>What a check came to.</summary>
/// <param name="Entries">How many entries the store holds now, and can be read.</param>
/// <param name="Findings">What was out of order; empty where nothing was.</param>
/// <param name="HasDocuments">Whether the documents were compared: not where a window keeps them.</param>
public sealed record CheckReport(long Entries, ImmutableArray<StoreFinding> Findings, bool HasDocuments = false)
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
    /// <param name="folders">Where the shop's backups lie besides its own folder.</param>
    /// <returns>What was found and done. Where something is gone, the journal is left as it is.</returns>
    /// <exception cref="StoreBusyException">Another has been writing for too long, or a window is open where something has to be mended.</exception>
    /// <exception cref="StoreRefusedException">There is no store there.</exception>
    /// <exception cref="NewerJournalException">Only a newer program can read the journal.</exception>
    public static CheckReport Run(
        StorePaths paths,
        IDisk disk,
        StoreSettings settings,
        params IReadOnlyCollection<string> folders
    )
    {
        StoreEntrance.Look(disk, paths);
        MustBeAStore(paths, disk);
        using IDiskLock held = Store.TakeLock(paths, disk, settings);
        using (Store? whole = TryOpen(paths, disk, settings, held, folders))
        {
            if (whole is not null)
            {
                return Report(whole, [], settings, folders);
            }
        }
        ImmutableArray<StoreFinding> mended = Journal(paths, disk, settings, folders, out long readable);
        if (mended.Any(finding => finding.Kind == FindingKind.EntriesGone))
        {
            return new CheckReport(readable, mended);
        }
        using Store store = Open(paths, disk, settings, held);
        return Report(store, mended, settings, folders);
    }

    /// <summary>Tests every line of the journal and of its backups and changes nothing; the documents are not opened.</summary>
    /// <param name="paths">The store.</param>
    /// <param name="disk">The disk, which need not be writable.</param>
    /// <param name="settings">What the store must be told.</param>
    /// <param name="folders">Where the shop's backups lie besides its own folder.</param>
    /// <returns>What was found.</returns>
    /// <exception cref="StoreRefusedException">There is no store there.</exception>
    /// <exception cref="NewerJournalException">Only a newer program can read the journal.</exception>
    public static CheckReport Look(
        StorePaths paths,
        IDisk disk,
        StoreSettings settings,
        params IReadOnlyCollection<string> folders
    )
    {
        StoreEntrance.Look(disk, paths);
        MustBeAStore(paths, disk);
        HighWater[] waters = [.. folders.Prepend(paths.Backups).Select(folder => new HighWater(disk, folder))];
        DamagedJournalException? damage = Damage(
            paths,
            disk,
            settings.Kinds,
            out JournalPoint? end,
            line => Array.ForEach(waters, water => water.Take(line))
        );
        IEnumerable<string> faults = damage is not null
            ? [damage.Message]
            : waters.Select(water => water.Fault(paths.Journal, end!)).OfType<string>();
        return new CheckReport(
            end?.Seq ?? 0,
            [
                .. faults.Select(fault => new StoreFinding(FindingKind.EntriesGone, fault)),
                .. Backups(paths, disk, settings, folders, end?.Shop),
            ]
        );
    }

    private static CheckReport Report(
        Store store,
        ImmutableArray<StoreFinding> mended,
        StoreSettings settings,
        IReadOnlyCollection<string> folders
    )
    {
        _ = store.VerifyDocuments();
        return new CheckReport(
            store.LastSeq,
            [.. mended, .. store.Findings, .. Backups(store.Paths, store.Disk, settings, folders, store.Shop)],
            store.HasDocuments
        );
    }

    // opening tests every line, and that documents and backups know no more: where it succeeds there is nothing to mend
    private static Store? TryOpen(
        StorePaths paths,
        IDisk disk,
        StoreSettings settings,
        IDiskLock held,
        IReadOnlyCollection<string> folders
    )
    {
        Store? store = null;
        try
        {
            store = Open(paths, disk, settings, held);
            foreach (string folder in folders)
            {
                store.HoldAgainst(folder);
            }
            return store;
        }
        catch (DamagedJournalException)
        {
            store?.Dispose();
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
        IReadOnlyCollection<string> folders,
        out long readable
    )
    {
        DamagedJournalException? damage = Damage(paths, disk, settings.Kinds, out JournalPoint? end);
        readable = end?.Seq ?? 0;
        JournalMending.Result? mended;
        using WholeFile whole = WholeFile.Begin(disk, paths.Journal);
        using (Store.TakeDocumentsLock(paths, disk))
        using (var source = new LineSource(disk, paths, settings.Kinds, end?.Shop, folders))
        {
            if (damage is null && source.LastSeq(end?.Shop) <= readable)
            {
                return [];
            }
            mended = JournalMending.Mend(disk, paths.Journal, source, whole.File);
        }
        string what = damage?.Message ?? $"{paths.Journal} ends too early: documents or backups know more entries.";
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
        out JournalPoint? end,
        Action<JournalLine>? each = null
    )
    {
        end = null;
        if (disk.KindOf(paths.Journal) == PathKind.Nothing)
        {
            return new DamagedJournalException(0, $"{paths.Journal} is gone.");
        }
        try
        {
            using IDiskFile file = disk.OpenToRead(paths.Journal);
            var reader = new JournalReader(file, paths.Journal, kinds);
            end = JournalPoint.Of(reader);
            while (reader.Next() is { } line)
            {
                end = JournalPoint.Of(reader);
                each?.Invoke(line);
            }
            if (reader.End == JournalEnd.Unended)
            {
                each?.Invoke(reader.TakeUnended());
                end = JournalPoint.Of(reader);
            }
            return reader.End == JournalEnd.Junk ? reader.Damaged() : null;
        }
        catch (DamagedJournalException damage)
        {
            return damage;
        }
    }

    private static StoreFinding Gone(string what, long readable) =>
        new(
            FindingKind.EntriesGone,
            $"{what} Neither the documents nor any backup holds what is missing; up to entry {readable} all is there. Nothing "
                + "was changed. \"toolwear check --salvage FILE\" saves every other entry into a new shop; \"toolwear restore "
                + "FILE\" puts a backup in its place."
        );

    private static IEnumerable<StoreFinding> Backups(
        StorePaths paths,
        IDisk disk,
        StoreSettings settings,
        IReadOnlyCollection<string> folders,
        string? shop
    )
    {
        // a second folder may hold other shops' backups, which are theirs to check
        IEnumerable<(string Path, BackupName Name)> all = BackupFolder
            .Of(disk, paths.Backups, shop: null)
            .Concat(folders.SelectMany(folder => BackupFolder.Of(disk, folder, shop)));
        foreach ((string path, _) in all)
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
