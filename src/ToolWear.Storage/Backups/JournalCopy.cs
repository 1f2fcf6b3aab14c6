using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Backups;

/// <summary>Copies a journal so that the copy is known to be good: read back, synced, and only then given its name.</summary>
internal static class JournalCopy
{
    private const int Piece = 256 * 1024;

    /// <summary>Reads a journal to its last whole line.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">The journal.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <returns>Where it ends.</returns>
    internal static JournalPoint Read(IDisk disk, string path, KnownKinds kinds) => Held(disk, path, kinds).Point;

    /// <summary>Reads a journal to its last whole line, testing each.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">The journal.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <param name="each">Takes each line.</param>
    /// <returns>What it holds.</returns>
    internal static JournalHeld Held(IDisk disk, string path, KnownKinds kinds, Action<JournalLine>? each = null)
    {
        using IDiskFile file = disk.OpenToRead(path);
        var reader = new JournalReader(file, path, kinds);
        DateOnly? until = null;
        while (reader.Next() is { } line)
        {
            until = line.Day;
            each?.Invoke(line);
        }
        return new JournalHeld(JournalPoint.Of(reader), until);
    }

    /// <summary>Copies a journal up to a place in it beside a place and reads the copy back.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="from">A journal that has been read; what is added to it meanwhile is not copied.</param>
    /// <param name="point">Up to where.</param>
    /// <param name="to">The place.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <returns>The copy, to be moved into place.</returns>
    /// <exception cref="IOException">The copy could not be made or is not what was read.</exception>
    internal static WholeFile CopyBeside(IDisk disk, string from, JournalPoint point, string to, KnownKinds kinds)
    {
        WholeFile copy = WholeFile.Begin(disk, to);
        try
        {
            CopyBytes(disk, from, copy.File, point.Length);
            return Read(disk, copy.Beside, kinds) == point
                ? copy
                : throw new IOException($"{copy.Beside} does not read back as it was written.");
        }
        catch
        {
            copy.Dispose();
            throw;
        }
    }

    private static void CopyBytes(IDisk disk, string from, IDiskFile copy, long length)
    {
        using IDiskFile source = disk.OpenToRead(from);
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
    }

    /// <summary>Keeps a file as it is under another name, whole and durable, before something takes its place.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">A file; nothing happens where there is none.</param>
    /// <param name="aside">The other name.</param>
    internal static void KeepAside(IDisk disk, string path, string aside)
    {
        if (disk.KindOf(path) == PathKind.PlainFile)
        {
            using WholeFile copy = WholeFile.Begin(disk, aside);
            CopyBytes(disk, path, copy.File, LengthOf(disk, path));
            copy.IntoPlace();
        }
    }

    private static long LengthOf(IDisk disk, string path)
    {
        using IDiskFile file = disk.OpenToRead(path);
        return file.Length;
    }
}
