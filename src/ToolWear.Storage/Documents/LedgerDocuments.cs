using System.Collections.Immutable;
using LiteDB;
using LiteDB.Engine;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Documents;

/// <summary>The document database: one document an entry, found by number, by tool and by day.</summary>
/// <remarks>
/// For one thread: the database binds a transaction to the thread that began it. Nothing here is synced, since all of
/// it can be made again from the journal. Any exception means that the file is not to be trusted further.
/// </remarks>
internal sealed class LedgerDocuments : IDisposable
{
    /// <summary>Documents written in one transaction at most: larger ones spill and were seen to break.</summary>
    internal const int Batch = 1000;

    // how many entries are asked for at once where all are
    private const int Piece = 2000;

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
    internal static LedgerDocuments Open(IDisk disk, StorePaths paths)
    {
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

    /// <summary>Sets up an empty database for a shop.</summary>
    /// <param name="mark">The mark before the first entry.</param>
    internal void Begin(DocumentMark mark)
    {
        _engine.Pragma("UTC_DATE", true);
        _engine.EnsureIndex(Entries, "by_tool", "$.tools[*]", unique: false);
        _engine.EnsureIndex(Entries, "by_day", "$.day", unique: false);
        Add([], mark);
    }

    /// <summary>Adds entries and moves the mark, in one transaction.</summary>
    /// <param name="entries">At most <see cref="Batch"/> entries.</param>
    /// <param name="mark">The mark after them.</param>
    internal void Add(IReadOnlyList<StoredEntry> entries, DocumentMark mark)
    {
        if (!_engine.BeginTrans())
        {
            throw new InvalidOperationException("A transaction is open already.");
        }
        if (entries.Count > 0)
        {
            _engine.Insert(Entries, entries.Select(EntryDocument.Write), BsonAutoId.Int64);
        }
        _engine.Upsert(Meta, [EntryDocument.Write(mark)], BsonAutoId.Int64);
        if (!_engine.Commit())
        {
            throw new InvalidOperationException("The transaction was gone before its end.");
        }
        _freeze.ThrowIfStopped();
        Mark = mark;
    }

    /// <summary>The entries that concern a tool.</summary>
    /// <param name="tool">Its mark.</param>
    /// <returns>In order.</returns>
    internal ImmutableArray<StoredEntry> OfTool(string tool) =>
        InOrder(
            new Query { Where = { BsonExpression.Create("$.tools[*] ANY = @0", tool) } },
            entry => entry.Tools.Contains(tool, StringComparer.Ordinal)
        );

    /// <summary>The entries of a day.</summary>
    /// <param name="day">The shop's day.</param>
    /// <returns>In order.</returns>
    internal ImmutableArray<StoredEntry> OfDay(DateOnly day) =>
        InOrder(
            new Query { Where = { BsonExpression.Create("$.day = @0", JournalFormat.DayText(day)) } },
            entry => entry.Day == day
        );

    /// <summary>The newest entries.</summary>
    /// <param name="count">How many at most, 1 or more.</param>
    /// <returns>In order, the newest last.</returns>
    /// <exception cref="InvalidDataException">Some are left out: the index is not as it was written.</exception>
    internal ImmutableArray<StoredEntry> Newest(int count)
    {
        ImmutableArray<StoredEntry> newest = [.. Descending(count).Reverse()];
        long last = Mark?.Seq ?? 0;
        bool isComplete = newest.Length == Math.Min(count, last);
        for (int i = 0; isComplete && i < newest.Length; i++)
        {
            isComplete = newest[i].Seq == last - newest.Length + 1 + i;
        }
        return isComplete ? newest : throw new InvalidDataException("The newest documents are not all there.");
    }

    /// <summary>Entries from the newest down, one at a time; to be read to the end before anything is added.</summary>
    /// <param name="count">How many at most.</param>
    /// <returns>Each entry, tested.</returns>
    internal IEnumerable<StoredEntry> Descending(int count) =>
        Read(
            new Query
            {
                OrderBy = "$._id",
                Order = Query.Descending,
                Limit = count,
            }
        );

    /// <summary>The documents of entries as they are stored, not yet tested.</summary>
    /// <param name="first">The number of the first entry.</param>
    /// <param name="last">The number of the last.</param>
    /// <returns>In order.</returns>
    internal List<BsonDocument> Between(long first, long last)
    {
        var found = new List<BsonDocument>();
        var query = new Query
        {
            Where = { BsonExpression.Create("$._id BETWEEN @0 AND @1", first, last) },
            OrderBy = "$._id",
            Order = Query.Ascending,
        };
        using IBsonDataReader reader = _engine.Query(Entries, query);
        while (reader.Read())
        {
            found.Add(reader.Current.AsDocument);
        }
        return found;
    }

    /// <summary>Whether the way down through the numbers, which has pointers of its own, leads to every entry.</summary>
    /// <param name="last">The number of the last entry.</param>
    /// <returns>True where it leads from the last to the first by ones and ends there.</returns>
    internal bool IsWholeDownwards(long last)
    {
        // in pieces, each from where the one before ended: the database keeps what one question has touched
        long expected = last;
        long? from = null;
        while (true)
        {
            long before = expected;
            foreach (long number in NumbersDownFrom(from).Where(number => number != from))
            {
                if (number != expected)
                {
                    return false;
                }
                expected--;
            }
            if (expected == before)
            {
                return expected == 0;
            }
            from = expected + 1;
        }
    }

    /// <summary>The entries from a number on, in order, one at a time.</summary>
    /// <param name="seq">The first number.</param>
    /// <returns>Each entry, or null in the place of one that is not as it was written.</returns>
    internal IEnumerable<StoredEntry?> From(long seq)
    {
        var query = new Query
        {
            Where = { BsonExpression.Create("$._id >= @0", seq) },
            OrderBy = "$._id",
            Order = Query.Ascending,
        };
        using IBsonDataReader reader = _engine.Query(Entries, query);
        while (reader.Read())
        {
            yield return EntryDocument.TryRead(reader.Current.AsDocument);
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

    // only the index is asked: no document is read
    private IEnumerable<long> NumbersDownFrom(long? number)
    {
        var query = new Query
        {
            Select = BsonExpression.Create("$._id"),
            OrderBy = "$._id",
            Order = Query.Descending,
            Limit = Piece,
        };
        if (number is { } from)
        {
            query.Where.Add(BsonExpression.Create("$._id <= @0", from));
        }
        using IBsonDataReader reader = _engine.Query(Entries, query);
        while (reader.Read())
        {
            yield return reader.Current["_id"].AsInt64;
        }
    }

    // A rotten index can lead to a document that is sound and another's, or to one twice.
    private ImmutableArray<StoredEntry> InOrder(Query query, Func<StoredEntry, bool> belongs)
    {
        ImmutableArray<StoredEntry> found = [.. Read(query).OrderBy(entry => entry.Seq)];
        for (int i = 0; i < found.Length; i++)
        {
            if (!belongs(found[i]) || (i > 0 && found[i].Seq == found[i - 1].Seq))
            {
                throw new InvalidDataException("An index leads to the wrong document.");
            }
        }
        return found;
    }

    private IEnumerable<StoredEntry> Read(Query query)
    {
        using IBsonDataReader reader = _engine.Query(Entries, query);
        while (reader.Read())
        {
            yield return EntryDocument.Read(reader.Current.AsDocument);
        }
    }

    private DocumentMark? ReadMark()
    {
        using IBsonDataReader reader = _engine.Query(Meta, new Query());
        return reader.Read() ? EntryDocument.ReadMark(reader.Current.AsDocument) : null;
    }
}
