using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using LiteDB;
using ToolWear.Storage.Backups;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Documents;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Mending;

/// <summary>Where a damaged line can be had from: the documents, and every backup of the same shop.</summary>
[SuppressMessage(
    "Usage",
    "CA2213:Disposable fields should be disposed",
    Justification = "it is disposed of on the thread that made it"
)]
internal sealed class LineSource : IDisposable
{
    private readonly List<(IDiskFile File, JournalReader Reader)> _backups = [];
    private readonly List<JournalLine?> _at = [];
    private readonly ImmutableArray<(string Path, BackupName Name)> _names;
    private readonly WatchedThread _atDocuments = new(WatchedThread.UsualLimit);
    private readonly LedgerDocuments? _documents;
    private IEnumerator<BsonDocument>? _stored;
    private bool _hasStored;

    /// <summary>Opens what there is; what cannot be opened is not there.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="paths">The store, its lock held and nothing else of it open.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <param name="shop">The shop's id, null where the journal does not say.</param>
    /// <param name="folders">Where backups lie besides the store's own folder.</param>
    internal LineSource(IDisk disk, StorePaths paths, KnownKinds kinds, string? shop, IEnumerable<string> folders)
    {
        LedgerDocuments? documents = null;
        _ = _atDocuments.TryRun(() =>
        {
            if (DocumentFiles.Look(disk, paths.Documents) == DocumentFiles.Content.Documents)
            {
                documents = LedgerDocuments.Open(disk, paths);
            }
        });
        _documents = documents;
        _names =
        [
            .. folders.Prepend(paths.Backups).SelectMany(folder => BackupFolder.Of(disk, folder, shop ?? Mark?.Shop)),
        ];
        foreach ((string path, _) in _names)
        {
            _ = Guarded(() =>
            {
                IDiskFile file = disk.OpenToRead(path);
                _backups.Add((file, new JournalReader(file, path, kinds)));
                _at.Add(null);
            });
        }
    }

    /// <summary>How far the documents have come, or null where there are none.</summary>
    internal DocumentMark? Mark => _documents?.Mark;

    /// <summary>The number of the last entry of a shop that documents or the names of backups know.</summary>
    /// <param name="shop">The shop's id.</param>
    /// <returns>The number, 0 where none is known.</returns>
    internal long LastSeq(string? shop) =>
        shop is null
            ? 0
            : _names
                .Where(each => each.Name.Shop == BackupName.ShopOf(shop))
                .Select(each => each.Name.Seq)
                .Append(Mark?.Shop == shop ? Mark.Seq : 0)
                .Max();

    /// <summary>The ids of the shops whose lines are here, the likeliest first.</summary>
    internal IEnumerable<string> Shops =>
        (Mark is { } mark ? new[] { mark.Shop } : [])
            .Concat(_backups.Select(backup => backup.Reader.Shop))
            .Distinct(StringComparer.Ordinal);

    /// <summary>The line that follows a place, made again letter for letter and proven by its checksum.</summary>
    /// <param name="shop">The shop's id.</param>
    /// <param name="seq">The number of its first entry; asked for in rising order.</param>
    /// <param name="before">The checksum of the line before it.</param>
    /// <returns>The line, or null where nobody has it.</returns>
    internal JournalLine? Find(string shop, long seq, uint before) =>
        FromDocuments(shop, seq, before) ?? FromBackups(shop, seq, before);

    /// <inheritdoc />
    public void Dispose()
    {
        _ = _atDocuments.TryRun(() => _stored?.Dispose());
        if (_documents is not null)
        {
            _ = _atDocuments.TryRun(_documents.Dispose);
        }
        _atDocuments.Dispose();
        foreach ((IDiskFile file, _) in _backups)
        {
            file.Dispose();
        }
    }

    private JournalLine? FromDocuments(string shop, long seq, uint before)
    {
        if (_documents is not { } documents || Mark?.Shop != shop)
        {
            return null;
        }
        JournalLine? line = null;
        if (!_atDocuments.TryRun(() => line = EntryDocument.LineOf(DocumentsOf(documents, seq))))
        {
            _stored = null;
        }
        return line is not null && line.Seq == seq ? Proven(line, before) : null;
    }

    // one pass through the documents, since lines are asked for in rising order
    private List<BsonDocument> DocumentsOf(LedgerDocuments documents, long seq)
    {
        if (_stored is null)
        {
            _stored = documents.Between(seq, long.MaxValue).GetEnumerator();
            _hasStored = _stored.MoveNext();
        }
        while (_hasStored && _stored.Current["_id"] < seq)
        {
            _hasStored = _stored.MoveNext();
        }
        var entries = new List<BsonDocument>();
        while (_hasStored && _stored.Current["line"] == seq)
        {
            entries.Add(_stored.Current);
            _hasStored = _stored.MoveNext();
        }
        return entries;
    }

    private JournalLine? FromBackups(string shop, long seq, uint before)
    {
        for (int i = 0; i < _backups.Count; i++)
        {
            JournalReader reader = _backups[i].Reader;
            while (reader.Shop == shop && (_at[i]?.Seq ?? 0) < seq)
            {
                JournalLine? next = null;
                if (!Guarded(() => next = reader.Next()) || next is null)
                {
                    break;
                }
                _at[i] = next;
            }
            if (_at[i] is { } line && line.Seq == seq && Proven(line, before) is { } proven)
            {
                return proven;
            }
        }
        return null;
    }

    private static JournalLine? Proven(JournalLine line, uint before) =>
        JournalFormat.Line(before, line.Seq, line.At, line.Day, line.Bodies).Crc == line.Crc ? line : null;

    [SuppressMessage(
        "Design",
        "CA1031:Do not catch general exception types",
        Justification = "a rotten source throws anything; it then has nothing to give, and the next one is asked"
    )]
    private static bool Guarded(Action step)
    {
        try
        {
            step();
            return true;
        }
        catch (Exception)
        {
            return false;
        }
    }
}
