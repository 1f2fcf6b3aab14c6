using System.Collections.Immutable;
using ToolWear.Storage.Backups;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Documents;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage;

/// <summary>The one door to a shop's files. Whoever holds it is the only one who writes.</summary>
/// <remarks>
/// The journal is the truth. <see cref="Append"/> returns when an entry is durable there, after exactly one sync; the
/// documents follow behind on a thread of their own, and can be lost without loss.
/// </remarks>
public sealed class Store : IDisposable
{
    private readonly IDisposable _lock;
    private readonly DocumentKeeper _documents;
    private readonly StoreSettings _settings;
    private readonly Lock _oneAtATime = new();
    private JournalWriter? _writer;
    private ImmutableArray<StoreFinding> _atOpening = [];
    private bool _closed;

    private Store(StorePaths paths, IDisk disk, StoreSettings settings, IDisposable held)
    {
        Paths = paths;
        Disk = disk;
        _settings = settings;
        _lock = held;
        _documents = new DocumentKeeper(disk, paths, settings);
    }

    /// <summary>The shop's id, 32 lower hex digits.</summary>
    public string Shop => Writer.Shop;

    /// <summary>Where the files lie.</summary>
    public StorePaths Paths { get; }

    /// <summary>The number of the last entry accepted, 0 before the first.</summary>
    public long LastSeq => Writer.LastSeq;

    /// <summary>What was found out of order and dealt with, since the store was opened.</summary>
    public ImmutableArray<StoreFinding> Findings => [.. _atOpening, .. _documents.Findings];

    /// <summary>The disk the files lie on.</summary>
    internal IDisk Disk { get; }

    private JournalWriter Writer => _writer ?? throw new InvalidOperationException("The store has not been read.");

    /// <summary>Opens a store to write, and makes it where there is none.</summary>
    /// <param name="paths">Where.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="settings">What the store must be told.</param>
    /// <param name="each">Takes each accepted line, in order, while the journal is read; what it has made of them is void where this throws.</param>
    /// <returns>The store.</returns>
    /// <exception cref="StoreBusyException">Another has it open for writing.</exception>
    /// <exception cref="StoreRefusedException">What stands there is no store; it was left as it is.</exception>
    /// <exception cref="DamagedJournalException">The journal is not as it was written; it was left as it is.</exception>
    /// <exception cref="NewerJournalException">Only a newer program can read the journal; it was left as it is.</exception>
    /// <exception cref="IOException">The disk refused; nothing was lost.</exception>
    public static Store Open(StorePaths paths, IDisk disk, StoreSettings settings, Action<JournalLine> each)
    {
        StoreEntrance.Look(disk, paths);
        // asked again once the lock is held; asked here so that not even a lock is left beside what is no store
        _ = StoreEntrance.IsNew(disk, paths);
        return Open(paths, disk, settings, each, TakeLock(paths, disk));
    }

    /// <summary>Opens a store whose lock is held already.</summary>
    /// <param name="paths">Where.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="settings">What the store must be told.</param>
    /// <param name="each">Takes each accepted line.</param>
    /// <param name="held">The lock; it is given back with the store, or where this throws.</param>
    /// <returns>The store.</returns>
    internal static Store Open(
        StorePaths paths,
        IDisk disk,
        StoreSettings settings,
        Action<JournalLine> each,
        IDisposable held
    )
    {
        var store = new Store(paths, disk, settings, held);
        try
        {
            if (StoreEntrance.IsNew(disk, paths))
            {
                JournalWriter.Begin(disk, paths.Journal, settings.NewShopId());
            }
            store._writer = StoreOpening.Open(store, settings, store._documents, each, out store._atOpening);
            return store;
        }
        catch
        {
            store.Dispose();
            throw;
        }
    }

    /// <summary>Reads a store without holding it: the journal alone, up to its last line whose checksum is right, beside whoever writes it.</summary>
    /// <param name="paths">Where.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <param name="each">Takes each line, in order.</param>
    /// <returns>Where the reading ended.</returns>
    /// <exception cref="StoreRefusedException">There is no store there.</exception>
    /// <exception cref="DamagedJournalException">The journal is not as it was written.</exception>
    /// <exception cref="NewerJournalException">Only a newer program can read the journal.</exception>
    public static JournalPoint Read(StorePaths paths, IDisk disk, KnownKinds kinds, Action<JournalLine> each)
    {
        StoreEntrance.MustExist(disk, paths);
        using IDiskFile file = disk.OpenToRead(paths.Journal);
        var reader = new JournalReader(file, paths.Journal, kinds);
        while (reader.Next() is { } line)
        {
            each(line);
        }
        if (reader.End == JournalEnd.Unended)
        {
            // all of it is there but its line end: who opens the store to write will keep it
            each(reader.TakeUnended());
        }
        return JournalPoint.Of(reader);
    }

    /// <summary>Accepts entries: durable in the journal when this returns.</summary>
    /// <param name="day">The shop's day.</param>
    /// <param name="bodies">One entry or a batch, each a JSON object on one line with "kind" and "v"; all or none are accepted.</param>
    /// <returns>The line with its numbers.</returns>
    /// <exception cref="ArgumentException">An entry is not what an entry is, or longer than 64 KiB; nothing was written.</exception>
    /// <exception cref="StoreBrokenException">It could not be written and was not accepted; the store must be opened again.</exception>
    public JournalLine Append(DateOnly day, params ImmutableArray<string> bodies)
    {
        lock (_oneAtATime)
        {
            ObjectDisposedException.ThrowIf(_closed, this);
            JournalLine line = Writer.Append(_settings.Clock.GetUtcNow(), day, bodies);
            _documents.Add(line, new JournalPoint(Shop, line.LastSeq, line.Crc, Writer.Length));
            return line;
        }
    }

    /// <summary>Compares every document with the journal, and builds them anew where one differs.</summary>
    /// <returns>Whether they were as they should be.</returns>
    internal bool VerifyDocuments() => _documents.Verify();

    /// <summary>Makes a backup by itself, as after each closed session; what fails stops nothing.</summary>
    /// <param name="folder">A second folder the shop has set, or null for the store's own.</param>
    /// <returns>Null where a sound backup is there now, else what went wrong.</returns>
    public StoreFinding? BackUp(string? folder = null)
    {
        try
        {
            BackupFolder.Make(Disk, Paths.Journal, folder ?? Paths.Backups, _settings);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or StoreException)
        {
            return new StoreFinding(
                FindingKind.BackupFailed,
                $"No backup could be made in {folder ?? Paths.Backups} ({e.Message}). The entries themselves are safe."
            );
        }
    }

    /// <summary>Waits until the documents have followed, closes every file and gives the store back.</summary>
    public void Dispose()
    {
        lock (_oneAtATime)
        {
            if (_closed)
            {
                return;
            }
            _closed = true;
            _documents.Dispose();
            _writer?.Dispose();
            _lock.Dispose();
        }
    }

    /// <summary>Takes the lock, or says who has it.</summary>
    /// <param name="paths">The store.</param>
    /// <param name="disk">The disk.</param>
    /// <returns>The lock.</returns>
    internal static IDisposable TakeLock(StorePaths paths, IDisk disk) =>
        disk.TryLock(paths.Lock)
        ?? throw new StoreBusyException(
            $"{paths.Documents} is open in another window. Close it there, or only look: rack, card, forecast and export work beside it."
        );
}
