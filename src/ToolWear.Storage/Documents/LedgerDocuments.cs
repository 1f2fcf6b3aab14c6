using LiteDB;
using LiteDB.Engine;
using ToolWear.Storage.Disks;

namespace ToolWear.Storage.Documents;

/// <summary>The document database: one document an entry, found by its number.</summary>
/// <remarks>
/// For one thread: the database binds a transaction to the thread that began it. Nothing here is synced before the end,
/// since all of it can be made again from the journal. Any exception means that the file is not to be trusted further.
/// </remarks>
internal sealed class LedgerDocuments : IDisposable
{
    /// <summary>Documents written in one transaction at most: larger ones spill and were seen to break.</summary>
    internal const int Batch = 1000;

    private const string Entries = "entries";
    private const string Meta = "meta";

    private readonly FrozenStream _data;
    private readonly FrozenStream _log;
    private readonly Freeze _freeze;
    private readonly LiteEngine _engine;

    private LedgerDocuments(FrozenStream data, FrozenStream log, Freeze freeze)
    {
        _data = data;
        _log = log;
        _freeze = freeze;
        _engine = new LiteEngine(
            new EngineSettings
            {
                DataStream = data,
                LogStream = log,
                Collation = Collation.Binary,
            }
        );
    }

    /// <summary>How far the documents have come, or null in a new database or one that is not ours.</summary>
    internal DocumentMark? Mark { get; private set; }

    /// <summary>Opens the database, or makes an empty one where there is no file.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="paths">The store; its document file is absent, empty or has been looked at.</param>
    /// <returns>The open database.</returns>
    /// <exception cref="InvalidDataException">What stands there is not as it was written; the database has not seen it.</exception>
    internal static LedgerDocuments Open(IDisk disk, StorePaths paths)
    {
        if (!DocumentFiles.IsSoundLog(disk, paths))
        {
            throw new InvalidDataException($"{Path.GetFileName(paths.DocumentLog)} is none of theirs");
        }
        var freeze = new Freeze();
        var data = new FrozenStream(disk.OpenDocuments(paths.Documents), freeze);
        FrozenStream? log = null;
        LedgerDocuments? documents = null;
        try
        {
            log = new FrozenStream(disk.OpenDocuments(paths.DocumentLog), freeze);
            documents = new LedgerDocuments(data, log, freeze);
            freeze.ThrowIfStopped();
            documents.Mark = documents.ReadMark();
            return documents;
        }
        catch
        {
            documents?.Dispose();
            log?.Dispose();
            data.Dispose();
            throw;
        }
    }

    /// <summary>Adds entries and moves the mark, in one transaction.</summary>
    /// <param name="entries">At most <see cref="Batch"/> documents of entries.</param>
    /// <param name="mark">The mark after them.</param>
    internal void Add(IReadOnlyList<BsonDocument> entries, DocumentMark mark)
    {
        if (!_engine.BeginTrans())
        {
            throw new InvalidOperationException("A transaction is open already.");
        }
        if (entries.Count > 0)
        {
            _engine.Insert(Entries, entries, BsonAutoId.Int64);
        }
        _engine.Upsert(Meta, [EntryDocument.Of(mark)], BsonAutoId.Int64);
        if (!_engine.Commit())
        {
            throw new InvalidOperationException("The transaction was gone before its end.");
        }
        _freeze.ThrowIfStopped();
        Mark = mark;
    }

    /// <summary>The documents of entries as they are stored, not tested; to be read to the end before anything is added.</summary>
    /// <param name="first">The number of the first entry.</param>
    /// <param name="last">The number of the last.</param>
    /// <returns>In order, one at a time.</returns>
    internal IEnumerable<BsonDocument> Between(long first, long last)
    {
        var query = new Query
        {
            Where = { BsonExpression.Create("$._id BETWEEN @0 AND @1", first, last) },
            OrderBy = "$._id",
            Order = Query.Ascending,
        };
        using IBsonDataReader reader = _engine.Query(Entries, query);
        while (reader.Read())
        {
            yield return reader.Current.AsDocument;
        }
    }

    /// <inheritdoc />
    public void Dispose()
    {
        try
        {
            _engine.Dispose();
            // once, at the end of the work: what is closed should outlive a power cut
            _data.Sync();
        }
        finally
        {
            _data.Dispose();
            _log.Dispose();
        }
    }

    private DocumentMark? ReadMark()
    {
        using IBsonDataReader reader = _engine.Query(Meta, new Query());
        return reader.Read()
            ? EntryDocument.MarkOf(reader.Current.AsDocument, seq => Between(seq, seq).FirstOrDefault())
            : null;
    }
}
