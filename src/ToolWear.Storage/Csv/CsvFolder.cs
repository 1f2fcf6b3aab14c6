using ToolWear.Storage.Backups;
using ToolWear.Storage.Disks;

namespace ToolWear.Storage.Csv;

/// <summary>The CSV set in a folder, beside a list of the files that an export wrote there: it replaces and deletes no others.</summary>
public static class CsvFolder
{
    /// <summary>The name of the list; an import passes it over.</summary>
    public const string List = "toolwear-export.txt";

    private const string Title = "Files that toolwear export wrote here. The next export replaces them and no others.";

    /// <summary>Writes the set, and takes away those of its files that have no rows any more.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="folder">The folder; made where there is none.</param>
    /// <param name="files">The set.</param>
    /// <param name="isForced">Whether foreign files with names of the set may go.</param>
    /// <exception cref="StoreRefusedException">Such files stand there; nothing was changed.</exception>
    public static void Write(IDisk disk, string folder, IReadOnlyList<CsvFile> files, bool isForced)
    {
        disk.MakeFolder(folder);
        string list = Path.Combine(folder, List);
        HashSet<string> ours = Listed(disk, list);
        string[] there =
        [
            .. CsvSet.FileNames.Where(name => disk.KindOf(Path.Combine(folder, name)) != PathKind.Nothing),
        ];
        string[] foreign = [.. there.Where(name => !ours.Contains(name))];
        if (foreign.Length > 0 && !isForced)
        {
            throw new StoreRefusedException(
                $"{folder} holds {string.Join(", ", foreign)}, written by no export. Nothing was changed. Name another "
                    + "folder, or add --force to replace what is there."
            );
        }
        string[] names = [.. files.Select(file => file.Name)];
        // before the files: an export that is cut short knows its own again
        WriteList(disk, list, there.Union(names, StringComparer.Ordinal));
        foreach (CsvFile file in files)
        {
            ReadOnlySpan<byte> bytes = file.Bytes.Span;
            // whose file it is was asked above
            Replacing.Write(disk, Path.Combine(folder, file.Name), bytes, bytes[..bytes.IndexOf((byte)'\n')], true);
        }
        // a file of the set that has no rows any more must not speak of what was exported here before
        foreach (string stale in there.Except(names, StringComparer.Ordinal))
        {
            disk.Delete(Path.Combine(folder, stale));
        }
        WriteList(disk, list, names);
    }

    private static void WriteList(IDisk disk, string path, IEnumerable<string> names) =>
        WholeFile.Write(
            disk,
            path,
            System.Text.Encoding.UTF8.GetBytes(
                string.Join('\n', names.Order(StringComparer.Ordinal).Prepend(Title)) + "\n"
            )
        );

    private static HashSet<string> Listed(IDisk disk, string path)
    {
        if (disk.KindOf(path) != PathKind.PlainFile)
        {
            return [];
        }
        using IDiskFile file = disk.OpenToRead(path);
        // no longer than all names together; what follows is not ours
        byte[] text = new byte[Math.Min(file.Length, 4096)];
        string[] lines = System.Text.Encoding.UTF8.GetString(text, 0, file.Read(0, text)).Split('\n');
        return lines[0] == Title ? [.. lines.Skip(1)] : [];
    }
}
