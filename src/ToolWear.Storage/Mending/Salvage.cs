using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;

namespace ToolWear.Storage.Mending;

/// <summary>What of a damaged journal can still be proved, line by line.</summary>
public static class Salvage
{
    /// <summary>Every line whose checksum follows from the one written before it, and what documents and backups have of the gaps.</summary>
    /// <remarks>A line behind a rotten checksum cannot be proved by itself; the next one can.</remarks>
    /// <param name="paths">The store; it stays as it is.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <param name="folders">Where the shop's backups lie besides its own folder.</param>
    /// <returns>The lines in rising order, with gaps.</returns>
    /// <exception cref="StoreBusyException">A window is open on the store.</exception>
    public static IEnumerable<JournalLine> Lines(
        StorePaths paths,
        IDisk disk,
        KnownKinds kinds,
        IEnumerable<string> folders
    )
    {
        using IDiskLock documents = Store.TakeDocumentsLock(paths, disk);
        using IDiskFile? file =
            disk.KindOf(paths.Journal) == PathKind.PlainFile ? disk.OpenToRead(paths.Journal) : null;
        RawLines? raws = file is null ? null : new RawLines(file, file.Length);
        string? named = raws is null ? null : JournalMending.FirstLine(raws);
        using var source = new LineSource(disk, paths, kinds, named, folders);
        if ((named ?? source.Shops.FirstOrDefault()) is not { } shop)
        {
            yield break;
        }
        uint crc = JournalFormat.FirstLine(shop).Crc;
        uint? written = crc;
        long seq = 0;
        while (raws is not null && Next(raws, kinds, ref written, out JournalLine? own))
        {
            while (own is not null && own.Seq > seq + 1 && source.Find(shop, seq + 1, crc) is { } found)
            {
                (seq, crc) = (found.LastSeq, found.Crc);
                yield return found;
            }
            if (own is not null && own.Seq > seq)
            {
                (seq, crc) = (own.LastSeq, own.Crc);
                yield return own;
            }
        }
        while (source.Find(shop, seq + 1, crc) is { } found)
        {
            (seq, crc) = (found.LastSeq, found.Crc);
            yield return found;
        }
    }

    private static bool Next(RawLines raws, KnownKinds kinds, ref uint? written, out JournalLine? line)
    {
        line = null;
        if (!raws.TryNext(out ReadOnlySpan<byte> raw))
        {
            return false;
        }
        if (written is { } before && LineText.TryVerify(before, raw, out int length, out uint crc))
        {
            line = LineText.TryLine(raw[..(length - JournalFormat.TailLength + 1)], crc, kinds, out _);
        }
        written = LineText.TailOf(raw);
        return true;
    }
}
