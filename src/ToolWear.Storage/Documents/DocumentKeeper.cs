using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Documents;

/// <summary>Keeps the documents behind the journal, on a thread of their own; everything about them happens there, in order.</summary>
/// <remarks>
/// Nothing that goes wrong here reaches an append: the documents are built anew, and where that fails too, what they would
/// answer is read from the journal, slower and the same.
/// </remarks>
internal sealed class DocumentKeeper : IDisposable
{
    private readonly IDisk _disk;
    private readonly StorePaths _paths;
    private readonly StoreSettings _settings;
    private readonly DocumentReplay _replay;
    private readonly BlockingCollection<Action> _work = [];
    private readonly ConcurrentQueue<StoreFinding> _findings = new();
    private readonly ConcurrentQueue<(JournalLine Line, JournalPoint Point)> _waiting = new();
    private readonly Thread _owner;
    private readonly Patience _patience;

    // for whoever asks: the end of the journal, and whether the owner thread was left behind, going round in circles
    private volatile JournalPoint? _latest;
    private volatile bool _isLost;

    // for the owner thread alone
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
        _patience = new Patience(settings.Patience ?? Documents.Patience.Usual);
        // each entry that passes is a sign of life
        _settings = settings with
        {
            ToolsOf = body =>
            {
                _patience.Beat();
                return settings.ToolsOf(body);
            },
        };
        _replay = new DocumentReplay(disk, paths, _settings);
        _owner = new Thread(Work) { IsBackground = true, Name = "documents" };
        _owner.Start();
    }

    /// <summary>What was found out of order so far.</summary>
    internal IEnumerable<StoreFinding> Findings => _findings;

    /// <summary>Opens the documents.</summary>
    /// <returns>The task that opens them, for <see cref="Opened"/>.</returns>
    internal Task<DocumentMark?> Open() => Ask(OpenFiles);

    /// <summary>Waits until the documents are open.</summary>
    /// <param name="opening">What <see cref="Open"/> gave.</param>
    /// <returns>How far they have come, or null where they are missing, not ours or not to be trusted.</returns>
    internal DocumentMark? Opened(Task<DocumentMark?> opening) =>
        IsDone(opening) ? opening.GetAwaiter().GetResult() : null;

    /// <summary>Brings the documents up to the journal, from where they are or from nothing.</summary>
    /// <param name="point">The end of the journal.</param>
    internal void Follow(JournalPoint point)
    {
        _latest = point;
        if (!_isLost)
        {
            _work.Add(() =>
            {
                _point = point;
                CatchUp(point);
                if (_isDoubtful)
                {
                    _isDoubtful = false;
                    _ = VerifyAll();
                }
            });
        }
    }

    /// <summary>Adds a line that is durable.</summary>
    /// <param name="line">The line.</param>
    /// <param name="point">The end of the journal behind it.</param>
    internal void Add(JournalLine line, JournalPoint point)
    {
        _latest = point;
        if (!_isLost)
        {
            _waiting.Enqueue((line, point));
            _work.Add(AddWaiting);
        }
    }

    /// <summary>Asks the documents, behind everything added before.</summary>
    /// <param name="ask">The question.</param>
    /// <param name="fromJournal">The same question to all entries, for when the documents cannot answer.</param>
    /// <returns>The entries, in order.</returns>
    internal ImmutableArray<StoredEntry> Find(
        Func<LedgerDocuments, ImmutableArray<StoredEntry>> ask,
        Func<IEnumerable<StoredEntry>, IEnumerable<StoredEntry>> fromJournal
    )
    {
        if (!_isLost)
        {
            Task<ImmutableArray<StoredEntry>> answer = Ask(() =>
                Answer(ask) ?? Answer(ask) ?? [.. fromJournal(Journal(_point))]
            );
            if (IsDone(answer))
            {
                return answer.GetAwaiter().GetResult();
            }
        }
        return [.. fromJournal(Journal(_latest))];
    }

    /// <summary>Compares every document with the journal, and builds all anew where one differs.</summary>
    /// <returns>Whether they were as they should be.</returns>
    internal bool Verify()
    {
        if (_isLost)
        {
            return false;
        }
        Task<bool> verifying = Ask(VerifyAll);
        return IsDone(verifying) && verifying.GetAwaiter().GetResult();
    }

    /// <summary>Waits until everything added is done, and closes the documents.</summary>
    public void Dispose()
    {
        if (!_work.IsAddingCompleted)
        {
            _work.CompleteAdding();
            if (_isLost)
            {
                return;
            }
            if (_patience.WaitFor(_owner))
            {
                _work.Dispose();
                return;
            }
            LeaveBehind();
        }
    }

    private bool IsDone(Task task)
    {
        bool isDone = _patience.WaitFor(task);
        if (!isDone)
        {
            LeaveBehind();
        }
        return isDone;
    }

    // The thread cannot be stopped and ends with the process. The files go aside, so that the next opening builds them
    // anew instead of walking into the same circle.
    private void LeaveBehind()
    {
        _isLost = true;
        Say(
            FindingKind.DocumentsUnavailable,
            $"The documents in {_paths.Documents} are damaged so that reading them does not end; they were put aside, "
                + "the journal answers instead, and the next opening builds them anew."
        );
        _ = Guarded(() => DocumentFiles.MoveAside(_disk, _paths, _settings.Clock));
    }

    private Task<T> Ask<T>(Func<T> question)
    {
        var answer = new TaskCompletionSource<T>(TaskCreationOptions.RunContinuationsAsynchronously);
        _work.Add(() =>
        {
            try
            {
                answer.SetResult(question());
            }
            catch (Exception e)
            {
                answer.SetException(e);
                throw;
            }
        });
        return answer.Task;
    }

    [SuppressMessage(
        "Design",
        "CA1031:Do not catch general exception types",
        Justification = "what a question threw is thrown again where it was asked; the thread has to live"
    )]
    private void Work()
    {
        foreach (Action piece in _work.GetConsumingEnumerable())
        {
            if (_isLost)
            {
                break;
            }
            try
            {
                _patience.Beat();
                piece();
            }
            catch (Exception e)
            {
                GiveUp(e.Message);
            }
            finally
            {
                _patience.Rest();
            }
        }
        _patience.Beat();
        Close();
        _patience.Rest();
    }

    private DocumentMark? OpenFiles()
    {
        // Who closes the documents takes their second part away. Where it is still there nobody did, and an index can lack
        // what its documents do not: it is compared whole, behind the opening.
        _isDoubtful = _disk.KindOf(_paths.DocumentLog) != PathKind.Nothing;
        switch (DocumentFiles.Look(_disk, _paths.Documents))
        {
            case DocumentFiles.Content.Documents:
                _ = Guarded(() => _documents = LedgerDocuments.Open(_disk, _paths));
                return _documents?.Mark;
            case DocumentFiles.Content.Foreign:
                _why = "were no document database";
                return null;
            default:
                _why = "were missing";
                return null;
        }
    }

    private void CatchUp(JournalPoint point)
    {
        bool caughtUp = false;
        if (_documents is { } documents && Guarded(() => caughtUp = _replay.CatchUp(documents, point)) && caughtUp)
        {
            return;
        }
        Rebuild(point);
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
            GiveUp(_why ?? "");
        }
        else
        {
            Rebuild(point);
        }
    }

    private ImmutableArray<StoredEntry>? Answer(Func<LedgerDocuments, ImmutableArray<StoredEntry>> ask)
    {
        ImmutableArray<StoredEntry>? answer = null;
        if (_documents is { } documents && !Guarded(() => answer = ask(documents)) && _point is { } point)
        {
            Rebuild(point);
        }
        return answer;
    }

    private bool VerifyAll()
    {
        if (_documents is not { } documents || _point is not { } point)
        {
            return false;
        }
        // what was compared behind the opening is not compared again for a check
        bool equal = _verified == point;
        if (equal || (Guarded(() => equal = DocumentVerification.Matches(documents, Journal(point), point)) && equal))
        {
            _verified = point;
            return true;
        }
        Rebuild(point);
        return false;
    }

    private void Rebuild(JournalPoint point)
    {
        if (_isLost)
        {
            // another may hold the files by now
            return;
        }
        Close();
        _isDoubtful = false;
        _verified = null;
        bool isNew = point.Seq == 0 && DocumentFiles.Look(_disk, _paths.Documents) == DocumentFiles.Content.Nothing;
        bool rebuilt = Guarded(() =>
        {
            DocumentFiles.MoveAside(_disk, _paths, _settings.Clock);
            _documents = LedgerDocuments.Open(_disk, _paths);
            _replay.Fill(_documents, point);
        });
        if (!rebuilt)
        {
            GiveUp(_why ?? "");
        }
        else if (!isNew)
        {
            Say(
                FindingKind.DocumentsRebuilt,
                $"The documents in {_paths.Documents} {_why ?? "did not match the journal"}; they were built anew from it."
            );
        }
        _why = null;
    }

    private IEnumerable<StoredEntry> Journal(JournalPoint? point) => point is not null ? _replay.Entries(point) : [];

    private void GiveUp(string why)
    {
        Close();
        Say(
            FindingKind.DocumentsUnavailable,
            $"The documents in {_paths.Documents} cannot be used now ({why}); the journal answers instead."
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
