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
            : throw RefusedException.WrongUsage($"{name}: a file is wanted");

    /// <summary>Reads a folder with the CSV set, or one table of tools in use.</summary>
    public static CsvImported ReadSet(string path, DateOnly today) =>
        Directory.Exists(path) ? CsvSet.Import(InFolder(path), today)
        : File.Exists(path) ? CsvSet.ImportToolsInUse(Read(path), today)
        : throw RefusedException.WrongData($"there is no folder and no file {path}");

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
            case PathKind.Nothing:
                throw RefusedException.WrongData($"there is no file {path}");
            case PathKind.Folder:
                throw RefusedException.WrongData($"{path} is a folder: a file is wanted");
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
