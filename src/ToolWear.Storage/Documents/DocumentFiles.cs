using System.Buffers.Binary;
using System.Globalization;
using ToolWear.Storage.Disks;

namespace ToolWear.Storage.Documents;

/// <summary>The files of the document database as files: what they are, and moving them out of the way.</summary>
internal static class DocumentFiles
{
    // The first page of a LiteDB 5 file: 8192 bytes, at 32 these words, behind them the version 8
    private const int PageSize = 8192;
    private const int WordsAt = 32;
    private const int LastPageKind = 4;

    // what a transaction that was cut short can have counted and not written
    private const int PagesAhead = 20_000;

    private static ReadOnlySpan<byte> WordsAndVersion => "** This is a LiteDB file **\u0008"u8;

    /// <summary>What stands in the place of the documents. The database itself would take a foreign file for an empty one.</summary>
    internal enum Content
    {
        /// <summary>No file, or one without a byte.</summary>
        Nothing,

        /// <summary>A document database, whoever's.</summary>
        Documents,

        /// <summary>Something else.</summary>
        Foreign,
    }

    /// <summary>Looks at the document file without changing it.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">The document file.</param>
    /// <returns>What it is.</returns>
    internal static Content Look(IDisk disk, string path)
    {
        switch (disk.KindOf(path))
        {
            case PathKind.Nothing:
                return Content.Nothing;
            case PathKind.PlainFile:
                using (IDiskFile file = disk.OpenToRead(path))
                {
                    return Look(file);
                }
            default:
                return Content.Foreign;
        }
    }

    /// <summary>Looks at the second part of the documents without changing it.</summary>
    /// <remarks>
    /// Of LiteDB 5's page the first four bytes say where in FILE it goes, and the fifth its kind, 0 to 4. The database has
    /// no checksums: it would follow any noise, and make FILE terabytes long.
    /// </remarks>
    /// <param name="disk">The disk.</param>
    /// <param name="paths">The store.</param>
    /// <returns>False where it holds what cannot be a page of this FILE.</returns>
    internal static bool IsSoundLog(IDisk disk, StorePaths paths)
    {
        if (disk.KindOf(paths.DocumentLog) != PathKind.PlainFile)
        {
            return disk.KindOf(paths.DocumentLog) == PathKind.Nothing;
        }
        using IDiskFile log = disk.OpenToRead(paths.DocumentLog);
        using IDiskFile? file =
            disk.KindOf(paths.Documents) == PathKind.PlainFile ? disk.OpenToRead(paths.Documents) : null;
        long pages = ((file?.Length ?? 0) + log.Length) / PageSize;
        Span<byte> head = stackalloc byte[5];
        bool isSound = true;
        for (long at = 0; isSound && at + PageSize <= log.Length; at += PageSize)
        {
            isSound =
                log.Read(at, head) == head.Length
                && BinaryPrimitives.ReadUInt32LittleEndian(head) <= pages + PagesAhead
                && head[^1] <= LastPageKind;
        }
        return isSound;
    }

    /// <summary>Moves both files of the database out of the way, never only one: a stale second part would be read into a new first.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="paths">The store.</param>
    /// <param name="clock">For the name.</param>
    internal static void MoveAside(IDisk disk, StorePaths paths, TimeProvider clock)
    {
        bool hasLog = disk.KindOf(paths.DocumentLog) != PathKind.Nothing;
        bool hasFile = disk.KindOf(paths.Documents) != PathKind.Nothing;
        if (!hasLog && !hasFile)
        {
            return;
        }
        string aside = AsideOf(disk, paths.Documents, clock);
        // the second part first: alone it says nothing, and a crash in between leaves an older state, which is noticed
        if (hasLog)
        {
            disk.Move(paths.DocumentLog, aside + "-log");
        }
        if (hasFile)
        {
            disk.Move(paths.Documents, aside);
        }
        disk.SyncFolder(paths.Folder);
    }

    /// <summary>Takes away the second part where closing has emptied it, so that FILE alone is the documents.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="paths">The store.</param>
    internal static void DropEmptyLog(IDisk disk, StorePaths paths)
    {
        if (Look(disk, paths.DocumentLog) == Content.Nothing)
        {
            disk.Delete(paths.DocumentLog);
        }
    }

    /// <summary>A free name for a file that is moved out of the way.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">The file.</param>
    /// <param name="clock">For the name.</param>
    /// <returns>A name in the same folder: FILE.aside-20261124T224246Z.</returns>
    internal static string AsideOf(IDisk disk, string path, TimeProvider clock)
    {
        string stamp = clock.GetUtcNow().ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture);
        string aside = $"{path}.aside-{stamp}";
        for (int i = 2; disk.KindOf(aside) != PathKind.Nothing || disk.KindOf(aside + "-log") != PathKind.Nothing; i++)
        {
            aside = $"{path}.aside-{stamp}-{i}";
        }
        return aside;
    }

    private static Content Look(IDiskFile file)
    {
        if (file.Length == 0)
        {
            return Content.Nothing;
        }
        Span<byte> start = stackalloc byte[WordsAt + 28];
        return
            file.Length >= PageSize
            && file.Read(0, start) == start.Length
            && start[WordsAt..].SequenceEqual(WordsAndVersion)
            ? Content.Documents
            : Content.Foreign;
    }
}
