using System.Collections.Immutable;
using System.Text.RegularExpressions;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Stores;

/// <summary>The files of a store that were set aside when something else took their place.</summary>
public static partial class SetAside
{
    private const int Kept = 3;

    /// <summary>Finds them.</summary>
    /// <param name="paths">The store.</param>
    /// <param name="disk">The disk.</param>
    /// <returns>Full paths, the newest first.</returns>
    public static ImmutableArray<string> Of(StorePaths paths, IDisk disk) =>
        [.. Times(paths, disk).OrderByDescending(each => each.At, StringComparer.Ordinal).Select(each => each.Path)];

    /// <summary>Deletes all but those of the newest three times, and what whole files that were cut short have left.</summary>
    /// <param name="paths">The store.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="settings">What the store must be told.</param>
    /// <returns>How many were deleted.</returns>
    /// <exception cref="StoreBusyException">Another is writing.</exception>
    public static int Tidy(StorePaths paths, IDisk disk, StoreSettings settings)
    {
        using IDiskLock held = Store.TakeLock(paths, disk, settings);
        HashSet<string> kept =
        [
            .. Times(paths, disk)
                .Select(each => each.At)
                .Distinct(StringComparer.Ordinal)
                .OrderDescending(StringComparer.Ordinal)
                .Take(Kept),
        ];
        // a journal is made, mended and restored under the lock that is held here
        string[] gone =
        [
            .. Times(paths, disk).Where(each => !kept.Contains(each.At)).Select(each => each.Path),
            .. disk.FilesIn(paths.Folder).Where(path => IsOf(paths.Journal, path) && CutShort().IsMatch(path)),
        ];
        foreach (string path in gone)
        {
            disk.Delete(path);
        }
        return gone.Length;
    }

    private static IEnumerable<(string Path, string At)> Times(StorePaths paths, IDisk disk) =>
        disk.FilesIn(paths.Folder)
            .Where(path => IsOf(paths.Documents, path))
            .Select(path => (Path: path, Found: Aside().Match(path)))
            .Concat(disk.FilesIn(paths.Backups).Select(path => (Path: path, Found: AsideBackup().Match(path))))
            .Where(each => each.Found.Success)
            .Select(each => (each.Path, each.Found.Groups[1].Value));

    private static bool IsOf(string file, string path) => path.StartsWith(file + ".", StringComparison.Ordinal);

    [GeneratedRegex(
        @"\.aside-(\d{8}T\d{6})Z(-\d+)?(-log)?$",
        RegexOptions.CultureInvariant,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex Aside();

    [GeneratedRegex(
        @"-(\d{8}T\d{6})\d{3}Z-\d+-[0-9a-f]{8}\.journal\.aside$",
        RegexOptions.CultureInvariant,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex AsideBackup();

    [GeneratedRegex(@"\.journal\.[0-9a-f]{12}\.new$", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex CutShort();
}
