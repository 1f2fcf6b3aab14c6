using System.Collections.Concurrent;
using LiteDB;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Documents;

/// <summary>Compares all documents with the journal: each by its number, and through the two indexes.</summary>
/// <remarks>
/// This thread, the only one that may, reads documents a piece at a time: the database keeps all that one question has
/// touched. Beside it a second reads the journal, tests and compares.
/// </remarks>
internal static class DocumentVerification
{
    // A rotten index can leave documents out without a word. Of a shop of thirty years every tool and day is asked; of a
    // larger one so many that the check stays short.
    private const int MostAsked = 100_000;

    private const int Piece = 250;
    private const int PiecesAhead = 2;

    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(20);

    /// <summary>Compares.</summary>
    /// <param name="documents">The documents.</param>
    /// <param name="journal">The entries of the journal, in order.</param>
    /// <param name="point">The end of the journal.</param>
    /// <returns>Whether they say the same.</returns>
    internal static bool Matches(LedgerDocuments documents, IEnumerable<StoredEntry> journal, JournalPoint point)
    {
        if (documents.Mark != new DocumentMark(point.Shop, point.Seq, point.Crc))
        {
            return false;
        }
        var ofTool = new Dictionary<string, int>(StringComparer.Ordinal);
        var ofDay = new Dictionary<DateOnly, int>();
        using var pieces = new BlockingCollection<List<BsonDocument>>(PiecesAhead);
        Task<bool> comparing = Task.Run(() =>
            AreEqual(journal, pieces.GetConsumingEnumerable().SelectMany(piece => piece), ofTool, ofDay)
        );
        try
        {
            for (long first = 1; first <= point.Seq && !comparing.IsCompleted; first += Piece)
            {
                Hand(documents.Between(first, Math.Min(first + Piece - 1, point.Seq)), pieces, comparing);
            }
        }
        finally
        {
            pieces.CompleteAdding();
            Task.WaitAny(comparing);
        }
        return comparing.GetAwaiter().GetResult()
            && AreAllThere(ofTool, tool => documents.OfTool(tool).Length)
            && AreAllThere(ofDay, day => documents.OfDay(day).Length)
            && documents.IsWholeDownwards(point.Seq);
    }

    private static void Hand(
        List<BsonDocument> piece,
        BlockingCollection<List<BsonDocument>> pieces,
        Task<bool> comparing
    )
    {
        // who has found a difference takes no more
        bool isTaken = false;
        while (!isTaken && !comparing.IsCompleted)
        {
            isTaken = pieces.TryAdd(piece, Look);
        }
    }

    private static bool AreEqual(
        IEnumerable<StoredEntry> journal,
        IEnumerable<BsonDocument> stored,
        Dictionary<string, int> ofTool,
        Dictionary<DateOnly, int> ofDay
    )
    {
        using IEnumerator<StoredEntry> entries = journal.GetEnumerator();
        foreach (BsonDocument document in stored)
        {
            if (!entries.MoveNext() || !entries.Current.Equals(EntryDocument.TryRead(document)))
            {
                return false;
            }
            StoredEntry entry = entries.Current;
            ofDay[entry.Day] = ofDay.GetValueOrDefault(entry.Day) + 1;
            foreach (string tool in entry.Tools.Distinct(StringComparer.Ordinal))
            {
                ofTool[tool] = ofTool.GetValueOrDefault(tool) + 1;
            }
        }
        return !entries.MoveNext();
    }

    private static bool AreAllThere<T>(Dictionary<T, int> counts, Func<T, int> ask)
        where T : notnull
    {
        int asked = 0;
        foreach ((T key, int count) in counts)
        {
            if (asked > MostAsked)
            {
                return true;
            }
            if (ask(key) != count)
            {
                return false;
            }
            asked += count;
        }
        return true;
    }
}
