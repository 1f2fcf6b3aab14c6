using ToolWear.Storage.Csv;

namespace ToolWear.Commands;

/// <summary>Reads the files that the user names.</summary>
internal static class Files
{
    // a whole set is read at once; no smith's table comes near this
    private const long MostBytes = 256L * 1024 * 1024;

    public static CsvFile Read(string path)
    {
        FileInfo file = new(path);
        if (!file.Exists)
        {
            throw RefusedException.WrongData($"there is no file {path}");
        }

        return file.Length > MostBytes
            ? throw RefusedException.WrongData($"{path} is larger than 256 MB: that is no table of a shop")
            : new CsvFile(Path.GetFileName(path), File.ReadAllBytes(path));
    }

    public static IEnumerable<CsvFile> InFolder(string path) =>
        Directory
            .GetFiles(path)
            .Where(file => file.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
            .Order(StringComparer.Ordinal)
            .Select(Read);
}
