namespace ToolWear.Storage.Disks;

/// <summary>Writes a file whole or not at all: beside, flushed, moved into place, folder synced.</summary>
/// <remarks>Whoever looks sees the old file or the new one, at every moment and after every crash.</remarks>
public static class WholeFile
{
    /// <summary>Writes bytes at a path, in place of what stood there.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">Where; its folder exists.</param>
    /// <param name="bytes">All of the file.</param>
    /// <exception cref="IOException">Nothing has changed at the path.</exception>
    public static void Write(IDisk disk, string path, ReadOnlySpan<byte> bytes)
    {
        string beside = Beside(path);
        using (IDiskFile file = disk.Create(beside))
        {
            file.Write(0, bytes);
            file.Sync();
        }
        IntoPlace(disk, beside, path);
    }

    /// <summary>Where a file is written before it takes its place.</summary>
    /// <param name="path">Its place.</param>
    /// <returns>A name in the same folder.</returns>
    public static string Beside(string path) => path + ".new";

    /// <summary>Moves a synced file into its place and makes that durable.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="beside">A synced file.</param>
    /// <param name="path">Its place, in the same folder.</param>
    public static void IntoPlace(IDisk disk, string beside, string path)
    {
        disk.Move(beside, path);
        disk.SyncFolder(FolderOf(path));
    }

    /// <summary>The folder that holds a path.</summary>
    /// <param name="path">A path.</param>
    /// <returns>Its folder, "." for a bare name.</returns>
    public static string FolderOf(string path)
    {
        string? folder = Path.GetDirectoryName(path);
        return string.IsNullOrEmpty(folder) ? "." : folder;
    }
}
