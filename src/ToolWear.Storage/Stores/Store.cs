using System.Collections.Immutable;
using ToolWear.Storage.Backups;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Documents;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Stores;

/// <summary>The one door to a shop's files, for as many processes at once as there are windows.</summary>
/// <remarks>
/// The journal is the truth. <see cref="Append(DateOnly, ImmutableArray{string})"/> returns when an entry is durable there,
/// after exactly one sync; the lock is held only meanwhile, and what others have added is read first. The documents
/// belong to whichever process holds their own lock; they follow behind on a thread of theirs, and can be lost without loss.
/// </remarks>
public sealed class Store : IDisposable
{
    // a smith stands at the screen while another's entry is waited for
    private const int LongestWaitMs = 2000;
    private const int PauseMs = 2;

    private readonly IDiskLock? _held;
    private readonly StoreSettings _settings;
    private readonly Lock _oneAtATime = new();
    private readonly List<StoreFinding> _findings = [];
    private readonly List<JournalLine> _untold = [];
    private DocumentKeeper? _documents;
    private IDiskLock? _documentsLock;
    private JournalWriter? _writer;
    private bool _closed;

    private Store(StorePaths paths, IDisk disk, StoreSettings settings, IDiskLock? held)
    {
        Paths = paths;
        Disk = disk;
        _settings = settings;
        _held = held;
    }

    /// <summary>The shop's id, 32 lower hex digits; null before its first entry.</summary>
    public string? Shop => _writer?.End.Shop;

    /// <summary>Where the files lie.</summary>
    public StorePaths Paths { get; }

    /// <summary>The number of the last entry known here, 0 before the first.</summary>
    public long LastSeq => _writer?.End.Seq ?? 0;

    /// <summary>What was found out of order and dealt with, since the store was opened.</summary>
    public ImmutableArray<StoreFinding> Findings => [.. _findings, .. _documents?.Findings ?? []];

    /// <summary>The disk the files lie on.</summary>
    internal IDisk Disk { get; }

    /// <summary>Whether this process keeps the documents: else another window is open.</summary>
    public bool HasDocuments => _documents is not null;

    /// <summary>Opens a store to write. Where there is none, nothing is made before the first entry.</summary>
    /// <param name="paths">Where.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="settings">What the store must be told.</param>
    /// <param name="each">Takes each accepted line, in order, while the journal is read; what it has made of them is void where this throws.</param>
    /// <returns>The store.</returns>
    /// <exception cref="StoreBusyException">Another has held the lock for too long.</exception>
    /// <exception cref="StoreRefusedException">What stands there is no store, or must not be written on; it was left as it is.</exception>
    /// <exception cref="DamagedJournalException">The journal is not as it was written; it was left as it is.</exception>
    /// <exception cref="NewerJournalException">Only a newer program can read the journal; it was left as it is.</exception>
    /// <exception cref="IOException">The disk refused; nothing was lost.</exception>
    public static Store Open(StorePaths paths, IDisk disk, StoreSettings settings, Action<JournalLine> each) =>
        Open(paths, disk, settings, each, held: null);

    /// <summary>Opens a store whose lock may be held already.</summary>
    /// <param name="paths">Where.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="settings">What the store must be told.</param>
    /// <param name="each">Takes each accepted line.</param>
    /// <param name="held">The lock, as long as the store is open, or null to take it when needed.</param>
    /// <returns>The store.</returns>
    internal static Store Open(
        StorePaths paths,
        IDisk disk,
        StoreSettings settings,
        Action<JournalLine> each,
        IDiskLock? held
    )
    {
        StoreEntrance.Look(disk, paths);
        var store = new Store(paths, disk, settings, held);
        try
        {
            if (!StoreEntrance.IsNew(disk, paths))
            {
                store.OpenJournal(each);
            }
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
    /// <exception cref="StoreBusyException">Another has held the lock for too long; nothing was written.</exception>
    /// <exception cref="StoreBrokenException">It could not be written and was not accepted; the store must be opened again.</exception>
    public JournalLine Append(DateOnly day, params ImmutableArray<string> bodies) =>
        Append(day, _ => bodies) ?? throw new ArgumentException("A line has at least one entry.", nameof(bodies));

    /// <summary>Accepts entries that are asked for once it is known what others have added.</summary>
    /// <param name="day">The shop's day.</param>
    /// <param name="ask">Takes the lines that others have added since this was last told of them, and gives the entries, or none.</param>
    /// <returns>The line with its numbers; null where there were no entries: then nothing was written.</returns>
    /// <inheritdoc cref="Append(DateOnly, ImmutableArray{string})" path="/exception"/>
    public JournalLine? Append(DateOnly day, Func<ImmutableArray<JournalLine>, ImmutableArray<string>> ask)
    {
        return Civil(() =>
        {
            ObjectDisposedException.ThrowIf(_closed, this);
            // a shop that is refused its first entry leaves nothing behind
            if (_writer is null && StoreEntrance.IsNew(Disk, Paths) && Asked(ask, []).IsEmpty)
            {
                return null;
            }
            Begin();
            using IDisposable held = Lock();
            ImmutableArray<string> bodies = Asked(ask, CatchUp());
            if (bodies.IsEmpty)
            {
                return null;
            }
            JournalLine line = _writer!.Append(_settings.Clock.GetUtcNow(), day, bodies);
            _documents?.Add(line, _writer.End);
            TakeDocuments();
            return line;
        });
    }

    /// <summary>Looks whether others have added anything; waits for nobody.</summary>
    /// <returns>The lines that others have added since this was last told of them.</returns>
    /// <exception cref="StoreException">The journal is not the one that was opened.</exception>
    public ImmutableArray<JournalLine> Look()
    {
        return Civil(() =>
        {
            bool isQuiet =
                _closed
                || (
                    _writer is null
                        ? Disk.KindOf(Paths.Journal) == PathKind.Nothing
                        : HasDocuments && !_writer.HasChanged
                );
            if (isQuiet)
            {
                return [];
            }
            Begin();
            using IDisposable? held = TryBoth();
            if (held is null)
            {
                return [];
            }
            ImmutableArray<JournalLine> added = CatchUp();
            TakeDocuments();
            return added;
        });
    }

    /// <summary>Compares every document with the journal, and builds them anew where one differs.</summary>
    /// <returns>Whether they were as they should be; true where another keeps them.</returns>
    internal bool VerifyDocuments() => _documents?.Verify() ?? true;

    /// <summary>Refuses to go on where a second folder of backups knows more of the shop than its journal does.</summary>
    /// <param name="folder">The folder, or nothing.</param>
    /// <exception cref="DamagedJournalException">The journal is an older one.</exception>
    public void HoldAgainst(string folder)
    {
        if (_writer is { } writer && HighWater.Behind(Disk, folder, Paths.Journal, writer.End) is { } fault)
        {
            throw new DamagedJournalException(0, fault);
        }
    }

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

    /// <summary>Waits until the documents have followed, and closes every file.</summary>
    public void Dispose()
    {
        lock (_oneAtATime)
        {
            if (_closed)
            {
                return;
            }
            _closed = true;
            _documents?.Dispose();
            _documentsLock?.Dispose();
            _writer?.Dispose();
        }
    }

    /// <summary>Takes the lock, waiting a little for whoever has it.</summary>
    /// <param name="paths">The store.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="settings">What the store was told.</param>
    /// <returns>The lock.</returns>
    /// <exception cref="StoreBusyException">Another has held it for two seconds.</exception>
    /// <exception cref="StoreRefusedException">There can be no lock here.</exception>
    internal static IDiskLock TakeLock(StorePaths paths, IDisk disk, StoreSettings settings) =>
        Await(paths, () => TryNamed(paths, disk, settings));

    /// <summary>Takes the lock of the documents, where no open window has it.</summary>
    /// <param name="paths">The store.</param>
    /// <param name="disk">The disk.</param>
    /// <returns>The lock.</returns>
    /// <exception cref="StoreBusyException">A window is open.</exception>
    internal static IDiskLock TakeDocumentsLock(StorePaths paths, IDisk disk) =>
        TryLock(disk, paths.DocumentsLock)
        ?? throw new StoreBusyException(
            $"{paths.Documents} is open in another window. Nothing was changed. Close it there, then try again."
        );

    private static IDiskLock? TryLock(IDisk disk, string path)
    {
        try
        {
            return disk.TryLock(path);
        }
        catch (DirectoryNotFoundException e)
        {
            throw new StoreBrokenException(
                $"The folder of {path} was moved or deleted while it was open here. Nothing was recorded. Put it back, or close "
                    + "this window and open the shop where it lies now.",
                e
            );
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreRefusedException(
                $"Nothing can be recorded: {path} cannot be written ({e.Message}). rack, card, forecast, export and check --read-only still work.",
                e
            );
        }
    }

    private static IDiskLock? TryNamed(StorePaths paths, IDisk disk, StoreSettings settings)
    {
        IDiskLock? held = TryLock(disk, paths.Lock);
        if (held is { IsKept: false } && !settings.Alone)
        {
            held.Dispose();
            throw new StoreRefusedException(
                $"{paths.Folder} lies on a file system without locks: two windows could overwrite each other's entries. "
                    + "Nothing was recorded. Put the shop on another disk, or add --alone where nobody else has it open."
            );
        }
        if (held is { IsInPlace: false })
        {
            held.Dispose();
            return null;
        }
        return held;
    }

    private static T Await<T>(StorePaths paths, Func<T?> take)
        where T : class
    {
        for (long until = Environment.TickCount64 + LongestWaitMs; ; Thread.Sleep(PauseMs))
        {
            if (take() is { } taken)
            {
                return taken;
            }
            if (Environment.TickCount64 >= until)
            {
                throw new StoreBusyException(
                    $"Another window or command has been writing to {paths.Documents} for two seconds. Nothing was recorded. "
                        + "Try again when it is done; rack, card, forecast and export work beside it."
                );
            }
        }
    }

    private BothLocks Lock() => Await(Paths, TryBoth);

    // The named lock keeps out whoever begins, restores or mends a journal; the journal's own whoever adds to this one.
    private BothLocks? TryBoth()
    {
        IDiskLock? named = _held is null ? TryNamed(Paths, Disk, _settings) : null;
        if (named is null && _held is null)
        {
            return null;
        }
        if (_writer!.TryLock() is { } own)
        {
            return new BothLocks(named, own);
        }
        named?.Dispose();
        return null;
    }

    private ImmutableArray<string> Asked(
        Func<ImmutableArray<JournalLine>, ImmutableArray<string>> ask,
        ImmutableArray<JournalLine> added
    )
    {
        ImmutableArray<string> bodies = ask(added);
        JournalWriter.Test(bodies, _settings.Kinds);
        return bodies;
    }

    private void OpenJournal(Action<JournalLine> each)
    {
        // the documents open on their thread while the journal is read on this one
        Task? opening = OwnDocuments()?.Open();
        var water = new HighWater(Disk, Paths.Backups);
        Action<JournalLine> told = line =>
        {
            water.Take(line);
            each(line);
        };
        _writer = JournalWriter.Open(Disk, Paths.Journal, _settings.Kinds, told);
        DocumentMark? mark = opening is null ? null : _documents!.Opened(opening);
        using IDisposable held = Lock();
        JournalPoint? known = mark is null ? null : new JournalPoint(mark.Shop, mark.Seq, mark.Crc, 0);
        bool isDurable = known == _writer.End with { Length = 0 };
        foreach ((JournalLine line, _) in _writer.CatchUp(known, isDurable, _findings))
        {
            told(line);
        }
        if (water.Fault(Paths.Journal, _writer.End) is { } fault)
        {
            throw new DamagedJournalException(0, fault);
        }
        _documents?.Follow(_writer.End);
    }

    private void Begin()
    {
        if (_writer is not null)
        {
            return;
        }
        using IDiskLock? held = _held is null ? TakeLock(Paths, Disk, _settings) : null;
        if (StoreEntrance.IsNew(Disk, Paths))
        {
            JournalWriter.Begin(Disk, Paths.Journal, _settings.NewShopId());
        }
        _writer = JournalWriter.Open(Disk, Paths.Journal, _settings.Kinds, _untold.Add);
    }

    // one thread at a time, and whatever the disk says is a sentence
    private T Civil<T>(Func<T> work)
    {
        lock (_oneAtATime)
        {
            try
            {
                return work();
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                throw JournalWriter.Broken(e);
            }
        }
    }

    // under the lock
    private ImmutableArray<JournalLine> CatchUp()
    {
        foreach ((JournalLine line, JournalPoint end) in _writer!.CatchUp(known: null, _untold.Count == 0, _findings))
        {
            _untold.Add(line);
            _documents?.Add(line, end);
        }
        ImmutableArray<JournalLine> added = [.. _untold];
        _untold.Clear();
        return added;
    }

    private DocumentKeeper? OwnDocuments()
    {
        _documentsLock = TryLock(Disk, Paths.DocumentsLock);
        return _documents = _documentsLock is null ? null : new DocumentKeeper(Disk, Paths, _settings);
    }

    // under the lock: whoever had them before has brought them no further than the journal
    private void TakeDocuments()
    {
        try
        {
            if (_documents is null && _writer is { } writer)
            {
                OwnDocuments()?.TakeOver(writer.End);
            }
        }
        catch (StoreException)
        {
            // what was recorded is durable whatever becomes of its documents: the next time, or the next opening, takes them
            return;
        }
    }
}
