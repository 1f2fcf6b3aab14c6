using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Backups;

/// <summary>Copies a journal so that the copy is known to be good: flushed, read back, and only then given its name.</summary>
internal static class JournalCopy
{
    private const int Piece = 256 * 1024;

    /// <summary>Reads a journal to its last whole line.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">The journal.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <returns>Where it ends.</returns>
    internal static JournalPoint Read(IDisk disk, string path, KnownKinds kinds)
    {
        using IDiskFile file = disk.OpenToRead(path);
        var reader = new JournalReader(file, path, kinds);
        while (reader.Next() is not null)
        {
            // each line is tested as it is read
        }
        return JournalPoint.Of(reader);
    }

    /// <summary>Copies a journal up to a place in it beside a place and reads the copy back.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="from">A journal that has been read; what is added to it meanwhile is not copied.</param>
    /// <param name="point">Up to where.</param>
    /// <param name="to">The place: the copy is at <see cref="WholeFile.Beside"/> of it, durable but for its name.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <exception cref="IOException">The copy could not be made or is not what was read.</exception>
    internal static void CopyBeside(IDisk disk, string from, JournalPoint point, string to, KnownKinds kinds)
    {
        string beside = WholeFile.Beside(to);
        CopyBytes(disk, from, beside, point.Length);
        if (Read(disk, beside, kinds) != point)
        {
            throw new IOException($"{beside} does not read back as it was written.");
        }
    }

    /// <summary>Copies bytes as they are, durable but for the name.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="from">A file.</param>
    /// <param name="to">Where.</param>
    /// <param name="length">How many bytes from the start.</param>
    internal static void CopyBytes(IDisk disk, string from, string to, long length)
    {
        using IDiskFile source = disk.OpenToRead(from);
        using IDiskFile copy = disk.Create(to);
        byte[] piece = new byte[Piece];
        for (long at = 0; at < length; )
        {
            int read = source.Read(at, piece.AsSpan(0, (int)Math.Min(Piece, length - at)));
            if (read == 0)
            {
                throw new IOException($"{from} became shorter while it was read.");
            }
            copy.Write(at, piece.AsSpan(0, read));
            at += read;
        }
        copy.Sync();
    }

    /// <summary>Keeps a file as it is under another name, whole, before something takes its place.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">A file; nothing happens where there is none.</param>
    /// <param name="aside">The other name.</param>
    internal static void KeepAside(IDisk disk, string path, string aside)
    {
        if (disk.KindOf(path) == PathKind.PlainFile)
        {
            CopyBytes(disk, path, aside, LengthOf(disk, path));
        }
    }

    private static long LengthOf(IDisk disk, string path)
    {
        using IDiskFile file = disk.OpenToRead(path);
        return file.Length;
    }
}
