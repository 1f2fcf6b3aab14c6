namespace ToolWear.Storage.Disks;

/// <summary>What the store asks of a disk, and nothing more, so that a test can stand in for the worst of disks.</summary>
/// <remarks>
/// Every call may throw <see cref="IOException"/> or <see cref="UnauthorizedAccessException"/>. A file and its bytes are
/// durable only after <see cref="IDiskFile.Sync"/>; a name (new, moved, deleted) only after <see cref="SyncFolder"/>.
/// </remarks>
public interface IDisk
{
    /// <summary>What stands at a path.</summary>
    /// <param name="path">Any path.</param>
    /// <returns>The kind; never throws for a path that leads nowhere, and opens nothing.</returns>
    PathKind KindOf(string path);

    /// <summary>Opens a file that exists, for reading only.</summary>
    /// <param name="path">A file; <see cref="FileNotFoundException"/> where there is none.</param>
    /// <returns>The open file.</returns>
    IDiskFile OpenToRead(string path);

    /// <summary>Opens a file that exists, for reading, writing and cutting.</summary>
    /// <param name="path">A file; <see cref="FileNotFoundException"/> where there is none.</param>
    /// <returns>The open file.</returns>
    IDiskFile OpenToWrite(string path);

    /// <summary>Makes a new empty file, readable by the owner only; throws where anything stands, be it a link that leads nowhere.</summary>
    /// <param name="path">Where.</param>
    /// <returns>The open file.</returns>
    IDiskFile Create(string path);

    /// <summary>Opens a stream over a file for the document database, making the file where there is none.</summary>
    /// <param name="path">Where.</param>
    /// <returns>An unbuffered, seekable stream.</returns>
    Stream OpenDocuments(string path);

    /// <summary>Takes a lock that one process at a time can hold and that the system frees when the process dies.</summary>
    /// <param name="path">The lock file, made where there is none and never deleted.</param>
    /// <returns>What to dispose to give it back, or null where another holds it.</returns>
    IDiskLock? TryLock(string path);

    /// <summary>Gives a file another name in one step; a file that bore that name is gone.</summary>
    /// <param name="from">A file.</param>
    /// <param name="to">A path in a folder that exists, on the same disk.</param>
    void Move(string from, string to);

    /// <summary>Gives a file the rights of another; where a disk has none, nothing happens.</summary>
    /// <param name="from">A file, or nothing.</param>
    /// <param name="to">The file that gets them.</param>
    void KeepRights(string from, string to) { }

    /// <summary>Takes a file's name away; nothing happens where there is none.</summary>
    /// <param name="path">A file.</param>
    void Delete(string path);

    /// <summary>Makes a folder for the owner only, those above it too, each durable; a folder that exists is left as it is.</summary>
    /// <param name="path">Where.</param>
    void MakeFolder(string path);

    /// <summary>The files in a folder, in no order.</summary>
    /// <param name="path">A folder, or nothing.</param>
    /// <returns>Full paths; none where there is no folder.</returns>
    IReadOnlyList<string> FilesIn(string path);

    /// <summary>Makes the names in a folder durable.</summary>
    /// <param name="path">A folder.</param>
    void SyncFolder(string path);
}
