namespace ToolWear.Storage.Disks;

/// <summary>The disk of this machine. Nothing is buffered here, so that a write is with the system when it returns.</summary>
public sealed class RealDisk : IDisk
{
    // EWOULDBLOCK on Linux and on macOS, ERROR_SHARING_VIOLATION on Windows: what .NET reports for a held lock
    private const int HeldOnLinux = 11;
    private const int HeldOnMac = 35;
    private const int HeldOnWindows = unchecked((int)0x80070020);

    // EROFS on Linux and on macOS
    private const int ReadOnlyDisk = 30;

    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <inheritdoc />
    public PathKind KindOf(string path)
    {
        if (Directory.Exists(path))
        {
            return PathKind.Folder;
        }
        if (new FileInfo(path).LinkTarget is not null)
        {
            return PathKind.Link;
        }
        if (!File.Exists(path))
        {
            return PathKind.Nothing;
        }
        if (!OperatingSystem.IsWindows() && IsDevice(Path.GetFullPath(path)))
        {
            return PathKind.Other;
        }
        try
        {
            // open for writing too: a pipe without a partner would block a reader for ever
            using var handle = File.OpenHandle(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);
            _ = RandomAccess.GetLength(handle);
            return PathKind.PlainFile;
        }
        catch (NotSupportedException)
        {
            return PathKind.Other;
        }
        catch (UnauthorizedAccessException)
        {
            return PathKind.PlainFile;
        }
        catch (IOException e)
        {
            // a disk that can only be read says so of plain files alone
            return IsHeld(e) || e.HResult == ReadOnlyDisk ? PathKind.PlainFile : PathKind.Other;
        }
    }

    /// <inheritdoc />
    public IDiskFile OpenToRead(string path) => new RealFile(path, FileMode.Open, FileAccess.Read);

    /// <inheritdoc />
    public IDiskFile OpenToWrite(string path) => new RealFile(path, FileMode.Open, FileAccess.ReadWrite);

    /// <inheritdoc />
    public IDiskFile Create(string path) => new RealFile(path, FileMode.CreateNew, FileAccess.ReadWrite);

    /// <inheritdoc />
    public Stream OpenDocuments(string path) => Open(path, FileMode.OpenOrCreate, FileAccess.ReadWrite);

    /// <inheritdoc />
    public IDisposable? TryLock(string path)
    {
        try
        {
            return Open(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException e) when (IsHeld(e))
        {
            return null;
        }
    }

    /// <inheritdoc />
    public void Move(string from, string to) => File.Move(from, to, overwrite: true);

    /// <inheritdoc />
    public void Delete(string path) => File.Delete(path);

    /// <inheritdoc />
    public void MakeFolder(string path)
    {
        if (Directory.Exists(path))
        {
            return;
        }
        string above = WholeFile.FolderOf(Path.GetFullPath(path));
        MakeFolder(above);
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(path);
        }
        else
        {
            Directory.CreateDirectory(path, OwnerOnly | UnixFileMode.UserExecute);
        }
        SyncFolder(above);
    }

    /// <inheritdoc />
    public IReadOnlyList<string> FilesIn(string path) => Directory.Exists(path) ? Directory.GetFiles(path) : [];

    /// <inheritdoc />
    public void SyncFolder(string path) => DiskSync.Folder(path);

    private static bool IsDevice(string path) =>
        path.StartsWith("/dev/", StringComparison.Ordinal) && !path.StartsWith("/dev/shm/", StringComparison.Ordinal);

    private static bool IsHeld(IOException e) => e.HResult is HeldOnLinux or HeldOnMac or HeldOnWindows;

    private static FileStream Open(
        string path,
        FileMode mode,
        FileAccess access,
        FileShare share = FileShare.ReadWrite | FileShare.Delete
    )
    {
        var options = new FileStreamOptions
        {
            Mode = mode,
            Access = access,
            Share = share,
            BufferSize = 0,
        };
        if (!OperatingSystem.IsWindows() && mode != FileMode.Open)
        {
            options.UnixCreateMode = OwnerOnly;
        }
        return new FileStream(path, options);
    }

    private sealed class RealFile(string path, FileMode mode, FileAccess access) : IDiskFile
    {
        private readonly FileStream _stream = Open(path, mode, access);

        public bool IsInPlace
        {
            get
            {
                var named = new FileInfo(path);
                return named.Exists && named.Length == Length;
            }
        }

        public long Length => RandomAccess.GetLength(_stream.SafeFileHandle);

        public int Read(long offset, Span<byte> into) => RandomAccess.Read(_stream.SafeFileHandle, into, offset);

        public void Write(long offset, ReadOnlySpan<byte> bytes) =>
            RandomAccess.Write(_stream.SafeFileHandle, bytes, offset);

        public void Cut(long length) => RandomAccess.SetLength(_stream.SafeFileHandle, length);

        public void Sync() => DiskSync.File(_stream.SafeFileHandle, path);

        public void Dispose() => _stream.Dispose();
    }
}
