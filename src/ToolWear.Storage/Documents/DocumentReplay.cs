using LiteDB;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Documents;

/// <summary>Makes documents of the lines of a journal, and compares them with it.</summary>
/// <param name="disk">The disk.</param>
/// <param name="journal">The journal's path.</param>
/// <param name="kinds">What this program knows.</param>
/// <param name="beat">Told of each line that passes.</param>
internal sealed class DocumentReplay(IDisk disk, string journal, KnownKinds kinds, Action beat)
{
    // the database keeps all that one question has touched
    private const int Piece = 250;

    /// <summary>Brings documents up to a place in the journal from where they are; empty ones from its beginning.</summary>
    /// <param name="documents">The documents.</param>
    /// <param name="point">The place.</param>
    /// <exception cref="InvalidDataException">They are not of this journal; they are as they were.</exception>
    internal void CatchUp(LedgerDocuments documents, JournalPoint point)
    {
        var start = new DocumentMark(point.Shop, 0, JournalFormat.FirstLine(point.Shop).Crc);
        if (documents.Mark is null)
        {
            documents.Add([], start);
        }
        DocumentMark mark = documents.Mark ?? start;
        if (mark.Shop != point.Shop || mark.Seq > point.Seq)
        {
            throw new InvalidDataException("they are not of this journal");
        }
        if (mark != new DocumentMark(point.Shop, point.Seq, point.Crc))
        {
            Add(documents, Lines(point).Where(line => IsBehind(line, mark)), point.Shop);
        }
        if (documents.Mark != new DocumentMark(point.Shop, point.Seq, point.Crc))
        {
            throw new InvalidDataException("they are not of this journal");
        }
    }

    /// <summary>Adds the entries of lines that are not there yet.</summary>
    /// <param name="documents">The documents, up to the first of the lines or into it.</param>
    /// <param name="lines">The lines, following on each other.</param>
    /// <param name="shop">The shop's id.</param>
    internal void Add(LedgerDocuments documents, IEnumerable<JournalLine> lines, string shop)
    {
        long last = documents.Mark?.Seq ?? 0;
        IEnumerable<BsonDocument> entries = lines.SelectMany(Documents).Where(entry => entry["_id"].AsInt64 > last);
        foreach (BsonDocument[] part in entries.Chunk(LedgerDocuments.Batch))
        {
            documents.Add(part, new DocumentMark(shop, part[^1]["_id"].AsInt64, (uint)part[^1]["crc"].AsInt64));
        }
    }

    /// <summary>Compares every document with the journal.</summary>
    /// <remarks>This thread, the only one that may, reads the documents; beside it a second reads the journal and compares.</remarks>
    /// <param name="documents">The documents.</param>
    /// <param name="point">The end of the journal.</param>
    /// <returns>Whether they say the same.</returns>
    internal bool Matches(LedgerDocuments documents, JournalPoint point)
    {
        if (documents.Mark != new DocumentMark(point.Shop, point.Seq, point.Crc))
        {
            return false;
        }
        using IEnumerator<BsonDocument> expected = Lines(point).SelectMany(Documents).GetEnumerator();
        Task<bool> same = Task.FromResult(true);
        try
        {
            for (long first = 1; first <= point.Seq; first += Piece)
            {
                List<BsonDocument> piece = [.. documents.Between(first, Math.Min(first + Piece - 1, point.Seq))];
                if (!same.GetAwaiter().GetResult())
                {
                    return false;
                }
                same = Task.Run(() =>
                    piece.TrueForAll(found => expected.MoveNext() && EntryDocument.AreSame(expected.Current, found))
                );
            }
            return same.GetAwaiter().GetResult() && !expected.MoveNext();
        }
        finally
        {
            Task.WaitAny(same);
        }
    }

    private static bool IsBehind(JournalLine line, DocumentMark mark) =>
        line.Seq <= mark.Seq && mark.Seq <= line.LastSeq && line.Crc != mark.Crc
            ? throw new InvalidDataException("they are not of this journal")
            : line.LastSeq > mark.Seq;

    private IEnumerable<JournalLine> Lines(JournalPoint point)
    {
        using IDiskFile file = disk.OpenToRead(journal);
        var reader = new JournalReader(file, journal, kinds, point.Length);
        while (reader.Next() is { } line)
        {
            yield return line;
        }
    }

    private IEnumerable<BsonDocument> Documents(JournalLine line)
    {
        foreach (BsonDocument document in EntryDocument.Of(line))
        {
            beat();
            yield return document;
        }
    }
}
