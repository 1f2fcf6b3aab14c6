using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace ToolWear.Storage.Disks;

/// <summary>The disk of this machine. Nothing is buffered here, so that a write is with the system when it returns.</summary>
public sealed partial class RealDisk : IDisk
{
    // EWOULDBLOCK on Linux and on macOS, ERROR_SHARING_VIOLATION on Windows: what .NET reports for a held lock
    private const int HeldOnLinux = 11;
    private const int HeldOnMac = 35;
    private const int HeldOnWindows = unchecked((int)0x80070020);

    // open(2) and flock(2): ENOENT, EACCES, LOCK_EX, LOCK_NB, LOCK_UN are the same on Linux and on macOS
    private const int NoFile = 2;
    private const int Denied = 13;
    private const int Exclusive = 2;
    private const int DoNotWait = 4;
    private const int Unlock = 8;

    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    // the file of the last lock given back, open still: opening it costs more than all else around an entry
    private FileStream? _kept;

    /// <inheritdoc />
    public PathKind KindOf(string path) =>
        FileFacts.Of(path) is not { } facts ? PathKind.Nothing
        : facts.Kind == PathKind.Link && Directory.Exists(path) ? PathKind.Folder
        : facts.Kind;

    /// <inheritdoc />
    public IDiskFile OpenToRead(string path) => new RealFile(path, FileMode.Open, isToWrite: false);

    /// <inheritdoc />
    public IDiskFile OpenToWrite(string path) => new RealFile(path, FileMode.Open, isToWrite: true);

    /// <inheritdoc />
    public IDiskFile Create(string path) => new RealFile(path, FileMode.CreateNew, isToWrite: true);

    /// <inheritdoc />
    public Stream OpenDocuments(string path) => Open(path, FileMode.OpenOrCreate, FileAccess.ReadWrite);

    /// <inheritdoc />
    public IDiskLock? TryLock(string path)
    {
        try
        {
            return new RealLock(this, path);
        }
        catch (IOException e) when (e.HResult is HeldOnLinux or HeldOnMac or HeldOnWindows)
        {
            return null;
        }
    }

    /// <inheritdoc />
    public void Move(string from, string to) => File.Move(from, to, overwrite: true);

    /// <inheritdoc />
    public void KeepRights(string from, string to)
    {
        if (!OperatingSystem.IsWindows() && File.Exists(from))
        {
            File.SetUnixFileMode(to, File.GetUnixFileMode(from));
        }
    }

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

    private static FileStream Open(string path, FileMode mode, FileAccess access, FileShare share = FileShare.ReadWrite)
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

    // Opened by .NET, a file would be locked as shared on Unix, and a reader would stop whoever locks it to write.
    private static SafeFileHandle OpenBare(string path, bool isToWrite)
    {
        if (OperatingSystem.IsWindows())
        {
            return File.OpenHandle(
                path,
                access: isToWrite ? FileAccess.ReadWrite : FileAccess.Read,
                share: FileShare.ReadWrite
            );
        }
        SafeFileHandle handle = Open(path, (isToWrite ? 2 : 0) | (OperatingSystem.IsLinux() ? 0x80000 : 0x1000000));
        if (!handle.IsInvalid)
        {
            return handle;
        }
        int error = Marshal.GetLastPInvokeError();
        string message = $"{path}: {Marshal.GetPInvokeErrorMessage(error)}";
        throw error switch
        {
            NoFile => new FileNotFoundException(message, path),
            Denied => new UnauthorizedAccessException(message),
            _ => new IOException(message, error),
        };
    }

    [LibraryImport("libc", EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial SafeFileHandle Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "flock", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Flock(SafeFileHandle file, int operation);

    // .NET takes this very lock and keeps to itself that a file system has none
    private static bool IsLocked(SafeFileHandle file) =>
        OperatingSystem.IsWindows() || Flock(file, Exclusive | DoNotWait) == 0;

    private FileStream? Kept(string path)
    {
        FileStream? kept = Interlocked.Exchange(ref _kept, null);
        if (kept?.Name == path)
        {
            return kept;
        }
        kept?.Dispose();
        return null;
    }

    private sealed class RealFile : IDiskFile
    {
        private readonly string _path;
        private readonly SafeFileHandle _handle;

        // .NET alone makes a file with rights of its own; its stream owns the handle
        private readonly FileStream? _made;
        private readonly FileFacts _facts;

        public RealFile(string path, FileMode mode, bool isToWrite)
        {
            _path = path;
            _made = mode == FileMode.CreateNew ? Open(path, mode, FileAccess.ReadWrite) : null;
            _handle = _made?.SafeFileHandle ?? OpenBare(path, isToWrite);
            _facts = FileFacts.Of(_handle);
        }

        public FilePlace Place =>
            FileFacts.Of(_path) is not { } named || !_facts.IsSameAs(named) ? FilePlace.Gone
            : named.Names == 1 ? FilePlace.InPlace
            : FilePlace.Shared;

        public IDisposable? TryLock() =>
            IsLocked(_handle) || Marshal.GetLastPInvokeError() is not (HeldOnLinux or HeldOnMac)
                ? new FileLock(_handle)
                : null;

        public long Length => RandomAccess.GetLength(_handle);

        public int Read(long offset, Span<byte> into) => RandomAccess.Read(_handle, into, offset);

        public void Write(long offset, ReadOnlySpan<byte> bytes)
        {
            try
            {
                RandomAccess.Write(_handle, bytes, offset);
            }
            catch (ArgumentOutOfRangeException e)
            {
                // EFBIG (write(2)): a file system or a limit of this user allows no file of that length
                throw new IOException($"{_path} has grown as large as it may here.", e);
            }
        }

        public void Cut(long length) => RandomAccess.SetLength(_handle, length);

        public void Sync() => DiskSync.File(_handle, _path);

        public void Dispose()
        {
            _made?.Dispose();
            _handle.Dispose();
        }
    }

    private sealed class RealLock : IDiskLock
    {
        private readonly RealDisk _disk;
        private readonly FileStream _file;
        private bool _isGivenBack;

        public RealLock(RealDisk disk, string path)
        {
            _disk = disk;
            FileStream? kept = disk.Kept(path);
            IsKept = kept is not null && IsLocked(kept.SafeFileHandle);
            if (!IsKept)
            {
                kept?.Dispose();
                kept = Open(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
                IsKept = IsLocked(kept.SafeFileHandle);
            }
            _file = kept!;
            IsInPlace = FileFacts.Of(_file.SafeFileHandle).IsSameAs(FileFacts.Of(path));
        }

        public bool IsKept { get; }

        public bool IsInPlace { get; }

        // On Windows the open file itself is the lock.
        public void Dispose()
        {
            if (_isGivenBack)
            {
                return;
            }
            _isGivenBack = true;
            if (OperatingSystem.IsWindows() || !IsInPlace || Flock(_file.SafeFileHandle, Unlock) != 0)
            {
                _file.Dispose();
                return;
            }
            Interlocked.Exchange(ref _disk._kept, _file)?.Dispose();
        }
    }

    private sealed class FileLock(SafeFileHandle handle) : IDisposable
    {
        public void Dispose()
        {
            if (!OperatingSystem.IsWindows() && !handle.IsClosed)
            {
                _ = Flock(handle, Unlock);
            }
        }
    }
}
