using System.Text;
using ToolWear.Core.Shops;
using ToolWear.Storage;
using ToolWear.Storage.Backups;
using ToolWear.Storage.Csv;
using ToolWear.Storage.Disks;

namespace ToolWear.Doors;

/// <summary>Reads the files that the user names.</summary>
internal static class NamedFiles
{
    /// <summary>A path as a full one.</summary>
    public static string FullPath(string name, string path) =>
        path.Length > 0 && !path.Contains('\0', StringComparison.Ordinal)
            ? Path.GetFullPath(path)
            : throw RefusedException.WrongUsage($"{name}: name a file");

    /// <summary>A path as a terminal pastes it, without what a shell would take off: quotes, backslashes, file://, ~.</summary>
    public static string Pasted(string typed)
    {
        string path = typed.Trim();
        path =
            path is ['\'', .., '\''] or ['"', .., '"'] ? path[1..^1]
            : path.StartsWith("file:///", StringComparison.Ordinal)
            && Uri.TryCreate(path, UriKind.Absolute, out Uri? uri)
                ? uri.LocalPath
            : path;
        path = path.StartsWith("~/", StringComparison.Ordinal)
            ? Environment.GetFolderPath(Environment.SpecialFolder.UserProfile) + path[1..]
            : path;
        return Path.Exists(path) ? path : path.Replace("\\ ", " ", StringComparison.Ordinal);
    }

    /// <summary>Reads a folder with the CSV set, which comes into an empty store only.</summary>
    public static CsvImported ReadSet(string path, Shop into, DateOnly today) =>
        into.Ledger.Count is > 0 and int count
            ? throw RefusedException.WrongData(
                $"the store holds {count} entries already: a folder goes into an empty store only (--store FILE names another)"
            )
            : CsvSet.Import(InFolder(path), today);

    /// <summary>Reads one table; "-" is the standard input.</summary>
    public static CsvFile Table(Site site, string typed)
    {
        if (typed != "-")
        {
            return Read(FullPath("FILE", typed));
        }

        using MemoryStream bytes = new();
        using Stream input = site.In();
        input.CopyTo(bytes);
        return new CsvFile("standard input", bytes.ToArray());
    }

    /// <summary>
    /// Writes what the user named: "-" and /dev/stdout are the standard output, a pipe or a device is written to as it
    /// is, behind a link what it leads to. A plain file is replaced whole or not at all.
    /// </summary>
    /// <param name="site">The world around.</param>
    /// <param name="typed">What was named.</param>
    /// <param name="text">The whole text.</param>
    /// <param name="begins">How files begin that may be replaced.</param>
    /// <param name="isForced">Whether a foreign file may be replaced.</param>
    /// <returns>False where the text went to the standard output.</returns>
    /// <exception cref="StoreRefusedException">What stands there is none that this program wrote; it was left as it is.</exception>
    /// <exception cref="IOException">It cannot be written.</exception>
    public static bool Write(Site site, string typed, string text, string begins, bool isForced)
    {
        if (typed is "-" or "/dev/stdout")
        {
            site.Out.Write(text);
            site.Out.Flush();
            return false;
        }

        Replacing.Write(
            site.Disk,
            FullPath("FILE", typed),
            Encoding.UTF8.GetBytes(text),
            Encoding.UTF8.GetBytes(begins),
            isForced
        );
        return true;
    }

    // a whole set is read at once; no smith's table comes near this
    private const long MostBytes = 256L * 1024 * 1024;

    public static CsvFile Read(string path)
    {
        MustBePlain(path);
        FileInfo file = new(path);
        return file.Length > MostBytes
            ? throw RefusedException.WrongData($"{path} is larger than 256 MB: that is no table of a shop")
            : new CsvFile(Path.GetFileName(path), File.ReadAllBytes(path));
    }

    /// <summary>Refuses what is no file that can be read to its end: a pipe would be waited for, a device has no end.</summary>
    public static void MustBePlain(string path)
    {
        FileInfo file = new(path);
        string read = file.LinkTarget is null
            ? path
            : file.ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? path;
        switch (new RealDisk().KindOf(read))
        {
            case PathKind.PlainFile:
                return;
            case PathKind.Nothing when file.LinkTarget?.Contains(":[", StringComparison.Ordinal) != true:
                throw RefusedException.WrongData($"there is no file {path}");
            case PathKind.Folder:
                throw RefusedException.WrongData($"{path} is a folder: name a file");
            default:
                throw RefusedException.WrongData($"{path} is no plain file: copy what it gives into one");
        }
    }

    private static IEnumerable<CsvFile> InFolder(string path) =>
        Directory
            .GetFiles(path)
            .Where(file => file.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
            .Order(StringComparer.Ordinal)
            .Select(Read);
}
