using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Documents;

/// <summary>Makes documents of the lines of a journal.</summary>
/// <param name="disk">The disk.</param>
/// <param name="paths">The store.</param>
/// <param name="settings">What the store was told.</param>
internal sealed class DocumentReplay(IDisk disk, StorePaths paths, StoreSettings settings)
{
    /// <summary>Brings documents up to a place in the journal from where they are.</summary>
    /// <param name="documents">The documents.</param>
    /// <param name="point">The place.</param>
    /// <returns>False where they are not of this journal; then they are as they were.</returns>
    internal bool CatchUp(LedgerDocuments documents, JournalPoint point)
    {
        if (documents.Mark is not { } mark || mark.Shop != point.Shop || mark.Seq > point.Seq)
        {
            return false;
        }
        return mark.Seq == point.Seq ? mark.Crc == point.Crc : ReplayFrom(documents, mark, point);
    }

    /// <summary>Fills empty documents up to a place in the journal.</summary>
    /// <param name="documents">The documents, new.</param>
    /// <param name="point">The place.</param>
    internal void Fill(LedgerDocuments documents, JournalPoint point)
    {
        uint first = JournalFormat.FirstLine(point.Shop).Crc;
        var mark = new DocumentMark(point.Shop, 0, first);
        documents.Begin(mark);
        if (!ReplayFrom(documents, mark, point))
        {
            throw new InvalidDataException("The journal changed while it was read.");
        }
    }

    /// <summary>Adds the entries of lines.</summary>
    /// <param name="documents">The documents, up to the line before.</param>
    /// <param name="lines">The lines, following on each other.</param>
    /// <param name="shop">The shop's id.</param>
    internal void Add(LedgerDocuments documents, IEnumerable<JournalLine> lines, string shop)
    {
        IEnumerable<StoredEntry> entries = lines.SelectMany(line => StoredEntry.Of(line, settings));
        foreach (StoredEntry[] part in entries.Chunk(LedgerDocuments.Batch))
        {
            documents.Add(part, new DocumentMark(shop, part[^1].Seq, part[^1].LineCrc));
        }
    }

    /// <summary>All entries up to a place in the journal, read from it.</summary>
    /// <param name="point">The place.</param>
    /// <returns>In order, one at a time.</returns>
    internal IEnumerable<StoredEntry> Entries(JournalPoint point)
    {
        using IDiskFile file = disk.OpenToRead(paths.Journal);
        var reader = new JournalReader(file, paths.Journal, settings.Kinds, point.Length);
        while (reader.Next() is { } line)
        {
            foreach (StoredEntry entry in StoredEntry.Of(line, settings))
            {
                yield return entry;
            }
        }
    }

    private bool ReplayFrom(LedgerDocuments documents, DocumentMark mark, JournalPoint point)
    {
        using IDiskFile file = disk.OpenToRead(paths.Journal);
        var reader = new JournalReader(file, paths.Journal, settings.Kinds, point.Length);
        if (mark.Seq == 0 && reader.Crc != mark.Crc)
        {
            return false;
        }
        var waiting = new List<StoredEntry>(LedgerDocuments.Batch);
        while (reader.Next() is { } line)
        {
            if (line.Seq <= mark.Seq && mark.Seq <= line.LastSeq && line.Crc != mark.Crc)
            {
                return false;
            }
            if (line.LastSeq <= mark.Seq)
            {
                continue;
            }
            foreach (StoredEntry entry in StoredEntry.Of(line, settings).Where(entry => entry.Seq > mark.Seq))
            {
                waiting.Add(entry);
                if (waiting.Count == LedgerDocuments.Batch)
                {
                    Flush(documents, waiting, point.Shop);
                }
            }
        }
        if (waiting.Count > 0)
        {
            Flush(documents, waiting, point.Shop);
        }
        return true;
    }

    private static void Flush(LedgerDocuments documents, List<StoredEntry> waiting, string shop)
    {
        documents.Add(waiting, new DocumentMark(shop, waiting[^1].Seq, waiting[^1].LineCrc));
        waiting.Clear();
    }
}
