using ToolWear.Storage.Disks;

namespace ToolWear.Testing.Disks;

/// <summary>A disk in memory that tells written from durable, and on which every write, cut, sync and move can be the last.</summary>
/// <remarks>Documents can be refused: then the store is tested with its journal alone, and many times faster.</remarks>
public sealed class CrashingDisk : IDisk
{
    private readonly Lock _lock = new();
    private readonly HashSet<string> _locked = new(StringComparer.Ordinal);
    private readonly List<(string From, string? To, DiskImage? Made)> _pendingNames = [];
    private Dictionary<string, DiskImage> _names = new(StringComparer.Ordinal);
    private Dictionary<string, DiskImage> _durableNames = new(StringComparer.Ordinal);
    private DiskImage? _lastWritten;
    private bool _isOff;

    /// <summary>The folder that exists from the start.</summary>
    public const string Folder = "/shop";

    /// <summary>Whether the document database may have files here.</summary>
    public bool HoldsDocuments { get; init; }

    /// <summary>How many writes, cuts, syncs, moves and deletions there have been.</summary>
    public int Operations { get; private set; }

    /// <summary>How many syncs of files there have been.</summary>
    public int Syncs { get; private set; }

    /// <summary>How many syncs of folders there have been.</summary>
    public int FolderSyncs { get; private set; }

    /// <summary>The operation (1 is the first) during which the power is cut, or 0.</summary>
    public int CutPowerAt { get; set; }

    /// <summary>The sync (1 is the first) that fails, or 0.</summary>
    public int FailSyncAt { get; set; }

    /// <summary>How many bytes still fit.</summary>
    public long FreeBytes { get; set; } = long.MaxValue;

    /// <summary>The length of the last unsynced write, for choosing where to tear it.</summary>
    public int LastWriteLength => _lastWritten?.LastWriteLength ?? 0;

    /// <summary>How many sectors the last unsynced write touches.</summary>
    public int LastWriteSectors =>
        LastWriteLength == 0 || _lastWritten is null
            ? 0
            : (int)(
                ((_lastWritten.LastWriteOffset + LastWriteLength - 1) / Sectors.Size)
                - (_lastWritten.LastWriteOffset / Sectors.Size)
                + 1
            );

    /// <summary>How many names are not synced.</summary>
    public int PendingNames => _pendingNames.Count;

    /// <summary>What the disk holds when the power comes back.</summary>
    /// <param name="tear">What of the unsynced has reached it.</param>
    /// <returns>A new disk; this one stays as it is.</returns>
    public CrashingDisk AfterPowerCut(Tear tear)
    {
        lock (_lock)
        {
            var names = new Dictionary<string, DiskImage>(_durableNames, StringComparer.Ordinal);
            foreach ((string from, string? to, DiskImage? made) in _pendingNames.Take(tear.Names))
            {
                Rename(names, from, to, made);
            }
            return With(names, image => image.AfterPowerCut(tear));
        }
    }

    /// <summary>What the next process sees when this one is killed: everything written, synced or not.</summary>
    /// <returns>A new disk.</returns>
    public CrashingDisk AfterKill()
    {
        lock (_lock)
        {
            return With(_names, image => image.Copy());
        }
    }

    /// <summary>The bytes of a file as they are seen.</summary>
    /// <param name="path">A file.</param>
    /// <returns>Its bytes.</returns>
    public byte[] Bytes(string path)
    {
        lock (_lock)
        {
            return Find(path).Seen;
        }
    }

    /// <summary>Puts a file there, durable.</summary>
    /// <param name="path">Where.</param>
    /// <param name="bytes">Its bytes.</param>
    public void Put(string path, byte[] bytes)
    {
        lock (_lock)
        {
            var image = new DiskImage();
            image.Overwrite(bytes);
            _names[path] = image;
            _durableNames[path] = image;
        }
    }

    /// <inheritdoc />
    public PathKind KindOf(string path)
    {
        lock (_lock)
        {
            return _names.ContainsKey(path) ? PathKind.PlainFile
                : path == Folder || _names.Keys.Any(name => name.StartsWith(path + "/", StringComparison.Ordinal))
                    ? PathKind.Folder
                : PathKind.Nothing;
        }
    }

    /// <inheritdoc />
    public IDiskFile OpenToRead(string path) => Open(path);

    /// <inheritdoc />
    public IDiskFile OpenToWrite(string path) => Open(path);

    /// <inheritdoc />
    public IDiskFile Create(string path)
    {
        lock (_lock)
        {
            if (_names.ContainsKey(path))
            {
                throw new IOException($"{path} stands there already");
            }
            var image = new DiskImage();
            NamesChange(path, null, image);
            return new CrashingFile(this, path, image);
        }
    }

    /// <inheritdoc />
    public Stream OpenDocuments(string path)
    {
        if (!HoldsDocuments)
        {
            throw new IOException("No documents on this disk.");
        }
        lock (_lock)
        {
            if (!_names.TryGetValue(path, out DiskImage? image))
            {
                Put(path, []);
                image = Find(path);
            }
            return new DocumentStream(image);
        }
    }

    /// <inheritdoc />
    public IDiskLock? TryLock(string path)
    {
        lock (_lock)
        {
            return _locked.Add(path) ? new Held(this, path) : null;
        }
    }

    /// <inheritdoc />
    public void Move(string from, string to) => NamesChange(from, to, null);

    /// <inheritdoc />
    public void Delete(string path)
    {
        lock (_lock)
        {
            if (_names.ContainsKey(path))
            {
                NamesChange(path, null, null);
            }
        }
    }

    /// <inheritdoc />
    public void MakeFolder(string path) { }

    /// <inheritdoc />
    public IReadOnlyList<string> FilesIn(string path)
    {
        lock (_lock)
        {
            return [.. _names.Keys.Where(name => Path.GetDirectoryName(name) == path)];
        }
    }

    /// <inheritdoc />
    public void SyncFolder(string path) =>
        Step(() =>
        {
            FolderSyncs++;
            // as with a file: the power can go before it has done anything
            return () =>
            {
                _durableNames = new Dictionary<string, DiskImage>(_names, StringComparer.Ordinal);
                _pendingNames.Clear();
            };
        });

    private CrashingFile Open(string path)
    {
        lock (_lock)
        {
            return new CrashingFile(this, path, Find(path));
        }
    }

    private DiskImage Find(string path) =>
        _names.TryGetValue(path, out DiskImage? image) ? image : throw new FileNotFoundException(path);

    private void NamesChange(string from, string? to, DiskImage? made) =>
        Step(() =>
        {
            _ = made is null ? Find(from) : made;
            Rename(_names, from, to, made);
            _pendingNames.Add((from, to, made));
            return null;
        });

    private static void Rename(Dictionary<string, DiskImage> names, string from, string? to, DiskImage? made)
    {
        if (made is not null)
        {
            names[from] = made;
        }
        else if (names.Remove(from, out DiskImage? image) && to is not null)
        {
            names[to] = image;
        }
    }

    // What is begun is pending when the power goes; what it finishes with has not happened then.
    private void Step(Func<Action?> begin)
    {
        lock (_lock)
        {
            if (_isOff)
            {
                throw new PowerCutException();
            }
            Operations++;
            Action? finish = begin();
            if (Operations == CutPowerAt)
            {
                _isOff = true;
                throw new PowerCutException();
            }
            finish?.Invoke();
        }
    }

    private CrashingDisk With(Dictionary<string, DiskImage> names, Func<DiskImage, DiskImage> change)
    {
        var disk = new CrashingDisk { HoldsDocuments = HoldsDocuments };
        disk._names = names.ToDictionary(name => name.Key, name => change(name.Value), StringComparer.Ordinal);
        disk._durableNames = new Dictionary<string, DiskImage>(disk._names, StringComparer.Ordinal);
        return disk;
    }

    private sealed class Held(CrashingDisk disk, string path) : IDiskLock
    {
        public bool IsKept => true;

        public bool IsInPlace => true;

        public void Dispose()
        {
            lock (disk._lock)
            {
                disk._locked.Remove(path);
            }
        }
    }

    private sealed class CrashingFile(CrashingDisk disk, string path, DiskImage image) : IDiskFile
    {
        public FilePlace Place
        {
            get
            {
                lock (disk._lock)
                {
                    return disk._names.GetValueOrDefault(path) == image ? FilePlace.InPlace : FilePlace.Gone;
                }
            }
        }

        public IDisposable? TryLock() => new Held(disk, "");

        public long Length
        {
            get
            {
                lock (disk._lock)
                {
                    return image.Seen.Length;
                }
            }
        }

        public int Read(long offset, Span<byte> into)
        {
            lock (disk._lock)
            {
                ReadOnlySpan<byte> rest = image.Seen.AsSpan((int)Math.Min(offset, image.Seen.Length));
                rest = rest[..Math.Min(rest.Length, into.Length)];
                rest.CopyTo(into);
                return rest.Length;
            }
        }

        public void Write(long offset, ReadOnlySpan<byte> bytes)
        {
            byte[] written = bytes.ToArray();
            disk.Step(() =>
            {
                long more = Math.Max(0, offset + written.Length - image.Seen.Length);
                bool fits = more <= disk.FreeBytes;
                int fitting = fits ? written.Length : (int)Math.Max(0, written.Length - more + disk.FreeBytes);
                disk.FreeBytes -= fits ? more : disk.FreeBytes;
                image.Write(offset, written.AsSpan(0, fitting));
                disk._lastWritten = image;
                return fits ? null : () => throw new IOException("No space left on device");
            });
        }

        public void Cut(long length) =>
            disk.Step(() =>
            {
                image.Cut(length);
                disk._lastWritten = image;
                return null;
            });

        public void Sync() =>
            disk.Step(() =>
            {
                disk.Syncs++;
                if (disk.Syncs == disk.FailSyncAt)
                {
                    image.FailSync();
                    throw new IOException("Input/output error");
                }
                return image.Sync;
            });

        public void Dispose() { }
    }
}
