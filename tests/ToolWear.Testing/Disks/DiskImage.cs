namespace ToolWear.Testing.Disks;

/// <summary>The bytes of one file: as every process sees them, as the disk has them, and what lies between.</summary>
internal sealed class DiskImage
{
    private readonly List<Change> _pending = [];

    internal byte[] Seen { get; private set; } = [];

    internal byte[] Durable { get; private set; } = [];

    internal int LastWriteLength => _pending.Count > 0 ? _pending[^1].Bytes?.Length ?? 0 : 0;

    internal long LastWriteOffset => _pending.Count > 0 ? _pending[^1].Offset : 0;

    internal void Write(long offset, ReadOnlySpan<byte> bytes)
    {
        Seen = With(Seen, offset, bytes, (_, _) => true);
        _pending.Add(new Change(offset, bytes.ToArray()));
    }

    internal void Cut(long length)
    {
        Seen = CutTo(Seen, length);
        _pending.Add(new Change(length, null));
    }

    internal void Sync()
    {
        Durable = [.. Seen];
        _pending.Clear();
    }

    // After a failed fsync Linux calls the pages clean: they are seen, they are not on the disk, and no later sync
    // brings them there.
    internal void FailSync() => _pending.Clear();

    internal void Overwrite(byte[] seen)
    {
        Seen = seen;
        Durable = [.. seen];
        _pending.Clear();
    }

    internal DiskImage Copy()
    {
        var copy = new DiskImage { Seen = [.. Seen], Durable = [.. Durable] };
        copy._pending.AddRange(_pending);
        return copy;
    }

    internal DiskImage AfterPowerCut(Tear tear)
    {
        byte[] bytes = [.. Durable];
        for (int i = 0; i < _pending.Count; i++)
        {
            Change change = _pending[i];
            bool isLast = i == _pending.Count - 1;
            if (change.Bytes is null)
            {
                bool isThere = !isLast || tear.Last.Has(0, change.Offset, change.Offset / Sectors.Size);
                bytes = isThere ? CutTo(bytes, change.Offset) : bytes;
            }
            else if (!isLast)
            {
                bytes = With(bytes, change.Offset, change.Bytes, (_, _) => true);
            }
            else
            {
                bytes = Torn(bytes, change, tear);
            }
        }
        return new DiskImage { Seen = bytes, Durable = [.. bytes] };
    }

    private static byte[] Torn(byte[] bytes, Change change, Tear tear)
    {
        byte[] written = change.Bytes ?? [];
        long first = change.Offset / Sectors.Size;
        byte[] torn = With(bytes, change.Offset, written, (i, at) => tear.Last.Has(i, at, first));
        long end = Math.Max(bytes.Length, change.Offset + written.Length);
        return tear.LengthFirst && torn.Length < end ? [.. torn, .. new byte[end - torn.Length]] : torn;
    }

    private static byte[] CutTo(byte[] bytes, long length) =>
        length <= bytes.Length ? bytes[..(int)length] : [.. bytes, .. new byte[length - bytes.Length]];

    private static byte[] With(byte[] bytes, long offset, ReadOnlySpan<byte> written, Func<int, long, bool> has)
    {
        int last = written.Length - 1;
        while (last >= 0 && !has(last, offset + last))
        {
            last--;
        }
        if (last < 0)
        {
            return bytes;
        }
        byte[] result = CutTo(bytes, Math.Max(bytes.Length, offset + last + 1));
        for (int i = 0; i <= last; i++)
        {
            if (has(i, offset + i))
            {
                result[offset + i] = written[i];
            }
        }
        return result;
    }

    private sealed record Change(long Offset, byte[]? Bytes);
}
