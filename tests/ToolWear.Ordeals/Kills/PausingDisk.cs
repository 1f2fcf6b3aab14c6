using ToolWear.Storage.Disks;

namespace ToolWear.Ordeals.Kills;

/// <summary>The real disk, except that a line of the journal is written in three pieces with pauses, so that a kill can fall between.</summary>
/// <param name="chance">Where a line is parted and how long the pauses are.</param>
/// <param name="longest">The longest pause in milliseconds.</param>
/// <param name="begun">Told when the first byte of a line is written.</param>
internal sealed class PausingDisk(Random chance, int longest, Action begun) : IDisk
{
    private readonly RealDisk _disk = new();

    public PathKind KindOf(string path) => _disk.KindOf(path);

    public IDiskFile OpenToRead(string path) => _disk.OpenToRead(path);

    public IDiskFile OpenToWrite(string path) => new PausingFile(this, _disk.OpenToWrite(path));

    public IDiskFile Create(string path) => _disk.Create(path);

    public Stream OpenDocuments(string path) => _disk.OpenDocuments(path);

    public IDiskLock? TryLock(string path) => _disk.TryLock(path);

    public void Move(string from, string to) => _disk.Move(from, to);

    public void Delete(string path) => _disk.Delete(path);

    public void MakeFolder(string path) => _disk.MakeFolder(path);

    public IReadOnlyList<string> FilesIn(string path) => _disk.FilesIn(path);

    public void SyncFolder(string path) => _disk.SyncFolder(path);

    private void Begun() => begun();

    private void Pause() => Thread.Sleep(chance.Next(longest + 1));

    private sealed class PausingFile(PausingDisk disk, IDiskFile file) : IDiskFile
    {
        public FilePlace Place => file.Place;

        public IDisposable? TryLock() => file.TryLock();

        public long Length => file.Length;

        public int Read(long offset, Span<byte> into) => file.Read(offset, into);

        public void Write(long offset, ReadOnlySpan<byte> bytes)
        {
            int part = disk.PartOf(bytes.Length);
            file.Write(offset, bytes[..1]);
            disk.Begun();
            disk.Pause();
            file.Write(offset + 1, bytes[1..part]);
            disk.Pause();
            file.Write(offset + part, bytes[part..]);
            disk.Pause();
        }

        public void Cut(long length) => file.Cut(length);

        public void Sync()
        {
            file.Sync();
            disk.Pause();
        }

        public void Dispose() => file.Dispose();
    }

    // often near the end, where a digit or the line end alone can be missing
    private int PartOf(int length) =>
        length < 2 ? length
        : chance.Next(3) == 0 ? Math.Max(1, length - chance.Next(1, 4))
        : chance.Next(1, length);
}
