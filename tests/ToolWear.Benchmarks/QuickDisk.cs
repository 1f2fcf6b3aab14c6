using ToolWear.Storage.Disks;

namespace ToolWear.Benchmarks;

/// <summary>The disk of this machine without its syncs: large stores are made on it, none is measured on it.</summary>
internal sealed class QuickDisk : IDisk
{
    private readonly RealDisk real = new();

    public PathKind KindOf(string path) => real.KindOf(path);

    public IDiskFile OpenToRead(string path) => real.OpenToRead(path);

    public IDiskFile OpenToWrite(string path) => new Unsynced(real.OpenToWrite(path));

    public IDiskFile Create(string path) => new Unsynced(real.Create(path));

    public Stream OpenDocuments(string path) => real.OpenDocuments(path);

    public IDiskLock? TryLock(string path) => real.TryLock(path);

    public void Move(string from, string to) => real.Move(from, to);

    public void Delete(string path) => real.Delete(path);

    public void MakeFolder(string path) => real.MakeFolder(path);

    public IReadOnlyList<string> FilesIn(string path) => real.FilesIn(path);

    public void SyncFolder(string path) { }

    private sealed class Unsynced(IDiskFile file) : IDiskFile
    {
        public long Length => file.Length;

        public FilePlace Place => file.Place;

        public IDisposable? TryLock() => file.TryLock();

        public int Read(long offset, Span<byte> into) => file.Read(offset, into);

        public void Write(long offset, ReadOnlySpan<byte> bytes) => file.Write(offset, bytes);

        public void Cut(long length) => file.Cut(length);

        public void Sync() { }

        public void Dispose() => file.Dispose();
    }
}
