using System.Collections.Immutable;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Backups;

/// <summary>The backups a store makes by itself: one after each closed session, the last ten kept, and one of each month.</summary>
internal static class BackupFolder
{
    /// <summary>How many of the newest are kept, whatever their month.</summary>
    internal const int Kept = 10;

    /// <summary>Makes a backup and takes away those that are no longer kept.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="journal">The journal.</param>
    /// <param name="folder">Where; made where there is none.</param>
    /// <param name="settings">What the store was told.</param>
    /// <exception cref="IOException">No backup was made; those that were there are still there.</exception>
    /// <exception cref="StoreException">The journal is not to be copied.</exception>
    internal static void Make(IDisk disk, string journal, string folder, StoreSettings settings)
    {
        JournalPoint point = JournalCopy.Read(disk, journal, settings.Kinds);
        disk.MakeFolder(folder);
        if (Of(disk, folder, point.Shop).Any(each => each.Name.Seq == point.Seq && each.Name.Crc == point.Crc))
        {
            // nothing was accepted since: a copy of the same would only push an older one out
            return;
        }
        string path = Path.Combine(folder, BackupName.Of(point, settings.Clock.GetUtcNow()).ToString());
        using WholeFile copy = JournalCopy.CopyBeside(disk, journal, point, path, settings.Kinds);
        copy.IntoPlace();
        foreach (string old in NoLongerKept(Of(disk, folder, point.Shop)).Where(old => old != path))
        {
            disk.Delete(old);
        }
    }

    /// <summary>The backups of a shop, by name.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="folder">The folder, or nothing.</param>
    /// <param name="shop">The shop's id, or null for those of every shop.</param>
    /// <returns>Those that hold most first.</returns>
    internal static ImmutableArray<(string Path, BackupName Name)> Of(IDisk disk, string folder, string? shop)
    {
        var found = new List<(string Path, BackupName Name)>();
        foreach (string path in disk.FilesIn(folder))
        {
            if (BackupName.TryRead(path) is { } name && (shop is null || name.Shop == BackupName.ShopOf(shop)))
            {
                found.Add((path, name));
            }
        }
        return [.. found.OrderByDescending(backup => backup.Name.Seq).ThenByDescending(backup => backup.Name.At)];
    }

    /// <summary>Which backups are neither among the newest nor the newest of their month.</summary>
    /// <remarks>
    /// Newest by what they hold or by the clock: a clock can run backwards, and after a restore the shop holds less than
    /// before. Either alone would then take the backup just made for the oldest.
    /// </remarks>
    /// <param name="backups">The backups of one shop.</param>
    /// <returns>Their paths.</returns>
    internal static IEnumerable<string> NoLongerKept(ImmutableArray<(string Path, BackupName Name)> backups)
    {
        HashSet<string> kept = new(StringComparer.Ordinal);
        kept.UnionWith(Newest(backups.OrderByDescending(each => (each.Name.At, each.Name.Seq))));
        kept.UnionWith(Newest(backups.OrderByDescending(each => (each.Name.Seq, each.Name.At))));
        return backups.Select(each => each.Path).Where(path => !kept.Contains(path));
    }

    private static IEnumerable<string> Newest(IEnumerable<(string Path, BackupName Name)> newestFirst)
    {
        var months = new HashSet<(int Year, int Month)>();
        int rank = 0;
        foreach ((string path, BackupName name) in newestFirst)
        {
            bool isNewestOfMonth = months.Add((name.At.Year, name.At.Month));
            if (rank++ < Kept || isNewestOfMonth)
            {
                yield return path;
            }
        }
    }
}
