namespace ToolWear.Storage.Disks;

/// <summary>A file written whole or not at all: beside, under a private random name, synced, moved into place, folder synced.</summary>
/// <remarks>
/// Whoever looks sees the old file or the new one, at every moment and after every crash. No link is followed: what
/// stands at the path is replaced, never written through. What does not come into place is deleted.
/// </remarks>
public sealed class WholeFile : IDisposable
{
    private readonly IDisk _disk;
    private readonly string _path;
    private bool _isMoved;

    private WholeFile(IDisk disk, string path)
    {
        _disk = disk;
        _path = path;
        Beside = $"{path}.{Guid.NewGuid().ToString("N")[..12]}.new";
        File = disk.Create(Beside);
    }

    /// <summary>The new file, to be written to.</summary>
    public IDiskFile File { get; }

    /// <summary>Where it lies until it is in place: in the same folder, for reading it back.</summary>
    public string Beside { get; }

    /// <summary>Begins an empty file beside a path.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">Where it will stand; its folder exists.</param>
    /// <returns>The file; nothing has changed at the path.</returns>
    public static WholeFile Begin(IDisk disk, string path) => new(disk, path);

    /// <summary>Writes bytes at a path, in place of what stood there and with its rights; a new file is the owner's alone.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">Where; its folder exists.</param>
    /// <param name="bytes">All of the file.</param>
    /// <exception cref="IOException">The path holds the old file or, where only the folder's sync failed, the new one.</exception>
    public static void Write(IDisk disk, string path, ReadOnlySpan<byte> bytes)
    {
        using WholeFile file = Begin(disk, path);
        disk.KeepRights(path, file.Beside);
        file.File.Write(0, bytes);
        file.IntoPlace();
    }

    /// <summary>Syncs the file, moves it into place and makes that durable; nothing more can be written to it.</summary>
    /// <exception cref="IOException">The path holds the old file or, where only the folder's sync failed, the new one.</exception>
    public void IntoPlace()
    {
        File.Sync();
        File.Dispose();
        _disk.Move(Beside, _path);
        _isMoved = true;
        _disk.SyncFolder(FolderOf(_path));
    }

    /// <inheritdoc />
    public void Dispose()
    {
        File.Dispose();
        if (_isMoved)
        {
            return;
        }
        try
        {
            _disk.Delete(Beside);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // what stopped the writing is already on its way to the smith
            return;
        }
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
