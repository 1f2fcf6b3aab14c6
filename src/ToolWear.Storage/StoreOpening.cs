using System.Collections.Immutable;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Documents;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage;

/// <summary>Reads a journal whole and makes its end fit to be written on.</summary>
internal static class StoreOpening
{
    /// <summary>Reads, settles the end, and sets the documents on their way.</summary>
    /// <param name="store">The store, holding the lock.</param>
    /// <param name="settings">What the store was told.</param>
    /// <param name="documents">The documents, not yet open.</param>
    /// <param name="each">Takes each line.</param>
    /// <param name="findings">What was out of order at the end.</param>
    /// <returns>The journal, to be written on.</returns>
    internal static JournalWriter Open(
        Store store,
        StoreSettings settings,
        DocumentKeeper documents,
        Action<JournalLine> each,
        out ImmutableArray<StoreFinding> findings
    )
    {
        // the documents open on their thread while the journal is read on this one
        Task opening = documents.Open();
        string path = store.Paths.Journal;
        IDiskFile file = store.Disk.OpenToWrite(path);
        try
        {
            var reader = new JournalReader(file, path, settings.Kinds);
            while (reader.Next() is { } line)
            {
                each(line);
            }
            JournalLine? unended = reader.End == JournalEnd.Unended ? reader.TakeUnended() : null;
            DocumentMark? mark = documents.Opened(opening);
            MustKnowNoMore(path, reader, mark);
            findings = Settle(path, file, reader, mark);
            if (unended is not null)
            {
                each(unended);
            }
            documents.Follow(JournalPoint.Of(reader));
            return new JournalWriter(file, reader, settings.Kinds);
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    // Documents follow only what was acknowledged. So an entry they know is an accepted one, and a journal that ends
    // before it has lost something: that is no torn tail.
    private static void MustKnowNoMore(string path, JournalReader reader, DocumentMark? mark)
    {
        if (mark is not null && mark.Shop == reader.Shop && mark.Seq > reader.LastSeq)
        {
            throw new DamagedJournalException(
                0,
                $"{path} ends with entry {reader.LastSeq}, but the documents know entry {mark.Seq}. Nothing was "
                    + "changed. \"toolwear check\" brings back what the documents hold; \"toolwear restore FILE\" puts a "
                    + "backup in its place."
            );
        }
    }

    private static ImmutableArray<StoreFinding> Settle(
        string path,
        IDiskFile file,
        JournalReader reader,
        DocumentMark? mark
    )
    {
        long surplus = file.Length - reader.WholeLength;
        ImmutableArray<StoreFinding> findings = [];
        if (reader.End == JournalEnd.Unended)
        {
            long lineEnd = reader.WholeLength - 1;
            file.Cut(lineEnd);
            file.Write(lineEnd, "\n"u8);
            findings = [new(FindingKind.LineCompleted, $"The last entry, {reader.LastSeq}, was whole and was kept.")];
        }
        else if (surplus > 0)
        {
            file.Cut(reader.WholeLength);
            findings =
            [
                new(
                    FindingKind.TailDropped,
                    $"{path} ended in the middle of an entry that was never accepted; that part was dropped. "
                        + $"The last entry is {reader.LastSeq}."
                ),
            ];
        }
        // A process that was killed may have left a line that the system shows and the disk has not got. It must not be
        // built upon before it is durable. Where the documents know the last line it is: they follow acknowledgements.
        if (!findings.IsEmpty || mark != new DocumentMark(reader.Shop, reader.LastSeq, reader.Crc))
        {
            file.Sync();
        }
        return findings;
    }
}
