using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Documents;

/// <summary>Keeps the documents behind the journal, on a thread of their own; everything about them happens there, in order.</summary>
/// <remarks>Nothing that goes wrong here reaches an append: the documents are built anew, and where that fails too, stand still.</remarks>
internal sealed class DocumentKeeper : IDisposable
{
    private readonly IDisk _disk;
    private readonly StorePaths _paths;
    private readonly TimeProvider _clock;
    private readonly DocumentReplay _replay;
    private readonly WatchedThread _thread;
    private readonly ConcurrentQueue<StoreFinding> _findings = new();
    private readonly ConcurrentQueue<(JournalLine Line, JournalPoint Point)> _waiting = new();
    private bool _isClosed;

    // for the thread alone
    private LedgerDocuments? _documents;
    private JournalPoint? _point;
    private string? _why;
    private bool _isDiskTrouble;
    private bool _isDoubtful;
    private JournalPoint? _verified;

    /// <summary>Starts the thread; the files are not touched yet.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="paths">The store.</param>
    /// <param name="settings">What the store was told.</param>
    internal DocumentKeeper(IDisk disk, StorePaths paths, StoreSettings settings)
    {
        _disk = disk;
        _paths = paths;
        _clock = settings.Clock;
        _thread = new WatchedThread(settings.WatchLimit ?? WatchedThread.UsualLimit);
        _replay = new DocumentReplay(disk, paths.Journal, settings.Kinds, _thread.Beat);
    }

    /// <summary>What was found out of order so far.</summary>
    internal IEnumerable<StoreFinding> Findings => _findings;

    /// <summary>Opens the documents.</summary>
    /// <returns>What opens them, for <see cref="Opened"/>.</returns>
    internal Task Open() => _thread.Post(OpenFiles);

    /// <summary>Waits until the documents are open.</summary>
    /// <param name="opening">What <see cref="Open"/> gave.</param>
    /// <returns>How far they have come, or null where they are missing, not ours or not to be trusted.</returns>
    internal DocumentMark? Opened(Task opening) => IsDone(opening) ? _documents?.Mark : null;

    /// <summary>Brings the documents up to the journal, from where they are or from nothing.</summary>
    /// <param name="point">The end of the journal.</param>
    internal void Follow(JournalPoint point) => _ = _thread.Post(() => CatchUp(point));

    /// <summary>Opens documents that another has kept until now and brings them up to the journal; nobody waits for it.</summary>
    /// <param name="point">The end of the journal.</param>
    internal void TakeOver(JournalPoint point) =>
        _ = _thread.Post(() =>
        {
            OpenFiles();
            if (_documents?.Mark is { } mark && mark.Shop == point.Shop && mark.Seq > point.Seq)
            {
                _why =
                    $"know entry {mark.Seq}, the journal ends with entry {point.Seq}: \"toolwear check\" brings back what is missing";
                GiveUp();
                return;
            }
            CatchUp(point);
        });

    /// <summary>Adds a line that is durable.</summary>
    /// <param name="line">The line.</param>
    /// <param name="point">The end of the journal behind it.</param>
    internal void Add(JournalLine line, JournalPoint point)
    {
        _waiting.Enqueue((line, point));
        _ = _thread.Post(AddWaiting);
    }

    /// <summary>Compares every document with the journal, and builds all anew where one differs.</summary>
    /// <returns>Whether they were as they should be.</returns>
    internal bool Verify()
    {
        bool equal = false;
        return IsDone(_thread.Post(() => equal = VerifyAll())) && equal;
    }

    /// <summary>Waits until everything added is done, and closes the documents.</summary>
    public void Dispose()
    {
        if (!_isClosed)
        {
            _isClosed = true;
            _ = IsDone(_thread.Post(Close));
            _thread.Dispose();
        }
    }

    private bool IsDone(Task step)
    {
        bool wasStuck = _thread.IsStuck;
        bool isDone = _thread.Wait(step);
        if (_thread.IsStuck && !wasStuck)
        {
            LeaveBehind();
        }
        return isDone;
    }

    // The thread cannot be stopped and ends with the process. The files go aside, so that the next opening builds them
    // anew instead of walking into the same circle.
    private void LeaveBehind()
    {
        Say(
            FindingKind.DocumentsUnavailable,
            $"The documents in {_paths.Documents} are damaged so that reading them does not end; they were put aside, and "
                + "the next opening builds them anew."
        );
        _ = Guarded(() => DocumentFiles.MoveAside(_disk, _paths, _clock));
    }

    private void OpenFiles()
    {
        // Who closes the documents takes their second part away. Where it is still there nobody did, and they are
        // compared whole, behind the opening.
        _isDoubtful = _disk.KindOf(_paths.DocumentLog) != PathKind.Nothing;
        switch (DocumentFiles.Look(_disk, _paths.Documents))
        {
            case DocumentFiles.Content.Documents:
                _ = Guarded(() => _documents = LedgerDocuments.Open(_disk, _paths));
                return;
            case DocumentFiles.Content.Foreign:
                _why = "were no document database";
                return;
            default:
                _why = "were missing";
                return;
        }
    }

    private void CatchUp(JournalPoint point)
    {
        _point = point;
        if (_documents is not { } documents || !Guarded(() => _replay.CatchUp(documents, point)))
        {
            Rebuild(point);
        }
        if (_isDoubtful)
        {
            _isDoubtful = false;
            _ = VerifyAll();
        }
    }

    // Whatever waits goes into one transaction: a transaction costs more than a document.
    private void AddWaiting()
    {
        var lines = new List<JournalLine>();
        int entries = 0;
        JournalPoint? point = null;
        while (entries < LedgerDocuments.Batch && _waiting.TryDequeue(out (JournalLine Line, JournalPoint Point) next))
        {
            lines.Add(next.Line);
            entries += next.Line.Bodies.Count;
            point = next.Point;
        }
        if (point is null)
        {
            return;
        }
        _point = point;
        if (_documents is not { } documents || Guarded(() => _replay.Add(documents, lines, point.Shop)))
        {
            return;
        }
        if (_isDiskTrouble)
        {
            // a full disk is no reason to build anew on it: the next opening goes on from here
            GiveUp();
        }
        else
        {
            Rebuild(point);
        }
    }

    private bool VerifyAll()
    {
        if (_documents is not { } documents || _point is not { } point)
        {
            return false;
        }
        // what was compared behind the opening is not compared again for a check
        bool equal = _verified == point;
        if (equal || (Guarded(() => equal = _replay.Matches(documents, point)) && equal))
        {
            _verified = point;
            return true;
        }
        Rebuild(point);
        return false;
    }

    private void Rebuild(JournalPoint point)
    {
        Close();
        _isDoubtful = false;
        _verified = null;
        bool isNew = point.Seq == 0 && DocumentFiles.Look(_disk, _paths.Documents) == DocumentFiles.Content.Nothing;
        string why = _why ?? "did not match the journal";
        bool rebuilt = Guarded(() =>
        {
            DocumentFiles.MoveAside(_disk, _paths, _clock);
            _documents = LedgerDocuments.Open(_disk, _paths);
            _replay.CatchUp(_documents, point);
        });
        if (!rebuilt)
        {
            GiveUp();
        }
        else if (!isNew)
        {
            Say(
                FindingKind.DocumentsRebuilt,
                $"The documents in {_paths.Documents} {why}; they were built anew from the journal."
            );
        }
        _why = null;
    }

    private void GiveUp()
    {
        string why = _why ?? "";
        Close();
        Say(
            FindingKind.DocumentsUnavailable,
            $"The documents in {_paths.Documents} {why}; they stand still, the journal has everything."
        );
    }

    private void Say(FindingKind kind, string sentence) => _findings.Enqueue(new StoreFinding(kind, sentence));

    private void Close()
    {
        if (_documents is { } documents)
        {
            _documents = null;
            _ = Guarded(documents.Dispose);
            _ = Guarded(() => DocumentFiles.DropEmptyLog(_disk, _paths));
        }
    }

    [SuppressMessage(
        "Design",
        "CA1031:Do not catch general exception types",
        Justification = "a rotten database throws anything, from a null reference to an overflow; none of it is worth more than building it anew"
    )]
    private bool Guarded(Action step)
    {
        try
        {
            step();
            return true;
        }
        catch (Exception e)
        {
            _why = $"could not be read or written ({e.Message})";
            _isDiskTrouble = e is IOException;
            return false;
        }
    }
}
