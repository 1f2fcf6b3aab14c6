using ToolWear.Storage.Disks;

namespace ToolWear.Storage.Backups;

/// <summary>Which files a file written whole may take the place of: those that this program wrote for this shop.</summary>
/// <remarks>A file is known by how it begins: a journal by its first line, which names its shop, a table by its headings.</remarks>
public static class Replacing
{
    // FILE itself and what lies beside it
    private static readonly string[] Endings = ["", ".journal", ".lock", "-log", "-lock"];

    private static ReadOnlySpan<byte> Journal => "{\"toolwear\":\"journal\""u8;

    /// <summary>Refuses to replace what is not ours. Part of a shop, or another shop's journal, is never replaced.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">Where a file is to be written.</param>
    /// <param name="begins">How the files begin that may be replaced.</param>
    /// <param name="isForced">Whether the smith has said that a foreign file may go.</param>
    /// <exception cref="StoreRefusedException">It was left as it is; the sentence says why and what to do.</exception>
    public static void MustBeAllowed(IDisk disk, string path, ReadOnlySpan<byte> begins, bool isForced)
    {
        switch (disk.KindOf(path))
        {
            case PathKind.Nothing when !IsPartOfShop(disk, path):
                return;
            case PathKind.PlainFile when !IsPartOfShop(disk, path):
                break;
            case PathKind.Nothing or PathKind.PlainFile:
                throw new StoreRefusedException(
                    $"{path} belongs to a shop and was left as it is: what it holds would be lost. Name another file."
                );
            default:
                throw new StoreRefusedException($"{path} is a folder, a link or a device. Name a file.");
        }
        if (Begins(disk, path, begins))
        {
            return;
        }
        if (Begins(disk, path, Journal))
        {
            throw new StoreRefusedException(
                $"{path} is a journal or a backup of another shop and was left as it is. Name another file."
            );
        }
        if (!isForced)
        {
            throw new StoreRefusedException(
                $"{path} is there already and is none that this shop wrote; it was left as it is. Name another file, or add "
                    + "--force to replace it."
            );
        }
    }

    /// <summary>
    /// Writes where someone named: behind a link what it leads to, a pipe or a device as it is. A plain file is replaced
    /// whole or not at all.
    /// </summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">What was named.</param>
    /// <param name="bytes">All of it.</param>
    /// <param name="begins">How the files begin that may be replaced.</param>
    /// <param name="isForced">Whether the smith has said that a foreign file may go.</param>
    /// <exception cref="StoreRefusedException">What stands there was left as it is; the sentence says why and what to do.</exception>
    /// <exception cref="IOException">It cannot be written.</exception>
    public static void Write(
        IDisk disk,
        string path,
        ReadOnlySpan<byte> bytes,
        ReadOnlySpan<byte> begins,
        bool isForced
    )
    {
        string end = disk.KindOf(path) == PathKind.Link ? LinkedTo(path) : path;
        if (disk.KindOf(end) is PathKind.Other or PathKind.Link)
        {
            using FileStream through = new(end, FileMode.Open, FileAccess.Write, FileShare.ReadWrite, bufferSize: 0);
            through.Write(bytes);
            return;
        }

        MustBeAllowed(disk, end, begins, isForced);
        WholeFile.Write(disk, end, bytes);
    }

    // a link of the system's own, such as /dev/fd/63, may lead to what has no name: "pipe:[71401]", which a shell made
    private static string LinkedTo(string path) =>
        File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName is { } end
        && !end.StartsWith("/proc/", StringComparison.Ordinal)
        && !end.Contains(":[", StringComparison.Ordinal)
            ? end
            : path;

    /// <summary>Whether a file begins as a journal does, whoever's and however damaged behind that.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">A plain file.</param>
    /// <returns>False for anything else.</returns>
    internal static bool IsJournal(IDisk disk, string path) => Begins(disk, path, Journal);

    // asked of the disk, so that a way through a linked folder leads to the same answer
    private static bool IsPartOfShop(IDisk disk, string path)
    {
        foreach (string ending in Endings.Where(ending => path.EndsWith(ending, StringComparison.Ordinal)))
        {
            var shop = new StorePaths(path[..^ending.Length]);
            bool isShop =
                ending == ".journal"
                    ? IsThere(disk, shop.Documents) || IsThere(disk, shop.Lock)
                    : IsThere(disk, shop.Journal);
            if (isShop)
            {
                return true;
            }
        }
        return false;
    }

    private static bool IsThere(IDisk disk, string path) => disk.KindOf(path) != PathKind.Nothing;

    // an empty file is nobody's
    private static bool Begins(IDisk disk, string path, ReadOnlySpan<byte> begins)
    {
        using IDiskFile file = disk.OpenToRead(path);
        byte[] start = new byte[begins.Length];
        int read = file.Read(0, start);
        return file.Length == 0 || start.AsSpan(0, read).SequenceEqual(begins);
    }
}
