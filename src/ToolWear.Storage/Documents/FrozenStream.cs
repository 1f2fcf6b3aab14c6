using ToolWear.Storage.Disks;

namespace ToolWear.Storage.Documents;

/// <summary>What stopped the writing of a database, for both of its files.</summary>
internal sealed class Freeze
{
    /// <summary>What the disk said, null while all is written.</summary>
    internal Exception? Why { get; private set; }

    /// <summary>Stops the writing; what stopped it first is kept.</summary>
    /// <param name="why">What the disk said.</param>
    internal void Stop(Exception why) => Why ??= why;

    /// <summary>Throws where something has stopped the writing.</summary>
    /// <exception cref="IOException">With what the disk said.</exception>
    /// <exception cref="InvalidDataException">The database wrote where none of its pages can be.</exception>
    internal void ThrowIfStopped()
    {
        if (Why is { } why)
        {
            throw why is InvalidDataException ? why : new IOException(why.Message, why);
        }
    }
}

/// <summary>A file of the document database that never throws at it: what the disk refuses, and all that follows, stays in memory.</summary>
/// <remarks>
/// A database that a write has failed under cannot be closed: its own clearing up throws, at last where nobody can catch
/// it, and ends the process. So it is left to believe that all is well, the files stay as they were at that moment, as
/// after a kill, and whoever uses the database asks <see cref="Freeze"/> after each step.
/// </remarks>
/// <param name="inner">The file.</param>
/// <param name="freeze">Shared with the database's other file.</param>
internal sealed class FrozenStream(Stream inner, Freeze freeze) : Stream
{
    private const int PageSize = 8192;

    // a rotten page number would make a file of terabytes; no transaction of ours is near as large
    private const long Far = 1L << 30;

    private readonly Dictionary<long, byte[]> _pages = [];
    private long _length = -1;
    private long _position;

    /// <inheritdoc />
    public override bool CanRead => true;

    /// <inheritdoc />
    public override bool CanSeek => true;

    /// <inheritdoc />
    public override bool CanWrite => true;

    /// <inheritdoc />
    public override long Length => _length >= 0 ? _length : inner.Length;

    /// <inheritdoc />
    public override long Position
    {
        get => _position;
        set => _position = value;
    }

    /// <summary>Makes the file durable, where it holds all that was written.</summary>
    internal void Sync()
    {
        if (freeze.Why is null && inner is FileStream file)
        {
            DiskSync.File(file.SafeFileHandle, file.Name);
        }
    }

    /// <inheritdoc />
    public override int Read(byte[] buffer, int offset, int count)
    {
        int wanted = (int)Math.Clamp(Length - _position, 0, count);
        for (int done = 0; done < wanted; )
        {
            long page = (_position + done) / PageSize;
            int at = (int)((_position + done) % PageSize);
            int part = Math.Min(PageSize - at, wanted - done);
            if (_pages.TryGetValue(page, out byte[]? kept))
            {
                kept.AsSpan(at, part).CopyTo(buffer.AsSpan(offset + done));
            }
            else
            {
                ReadInner(_position + done, buffer.AsSpan(offset + done, part));
            }

            done += part;
        }

        _position += wanted;
        return wanted;
    }

    /// <inheritdoc />
    public override void Write(byte[] buffer, int offset, int count)
    {
        if (freeze.Why is null && _position > inner.Length + Far)
        {
            freeze.Stop(new InvalidDataException("they wrote where none of their pages can be"));
        }

        if (freeze.Why is null)
        {
            try
            {
                inner.Position = _position;
                inner.Write(buffer, offset, count);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                freeze.Stop(e);
            }
        }

        if (freeze.Why is not null)
        {
            Keep(buffer.AsSpan(offset, count));
        }

        _position += count;
    }

    /// <inheritdoc />
    public override void SetLength(long value)
    {
        if (freeze.Why is null)
        {
            try
            {
                inner.SetLength(value);
                return;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                freeze.Stop(e);
            }
        }

        _length = value;
        foreach (long page in _pages.Keys.Where(page => page * PageSize >= value).ToArray())
        {
            _pages.Remove(page);
        }
    }

    /// <inheritdoc />
    public override long Seek(long offset, SeekOrigin origin) =>
        _position =
            offset
            + origin switch
            {
                SeekOrigin.Begin => 0,
                SeekOrigin.Current => _position,
                _ => Length,
            };

    /// <inheritdoc />
    public override void Flush()
    {
        if (freeze.Why is not null)
        {
            return;
        }

        try
        {
            inner.Flush();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            freeze.Stop(e);
        }
    }

    /// <inheritdoc />
    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            inner.Dispose();
        }

        base.Dispose(disposing);
    }

    private void Keep(ReadOnlySpan<byte> bytes)
    {
        long end = Math.Max(Length, _position + bytes.Length);
        for (int done = 0; done < bytes.Length; )
        {
            long page = (_position + done) / PageSize;
            int at = (int)((_position + done) % PageSize);
            int part = Math.Min(PageSize - at, bytes.Length - done);
            bytes.Slice(done, part).CopyTo(PageToKeep(page).AsSpan(at));
            done += part;
        }

        _length = end;
    }

    private byte[] PageToKeep(long page)
    {
        if (!_pages.TryGetValue(page, out byte[]? kept))
        {
            kept = new byte[PageSize];
            ReadInner(page * PageSize, kept);
            _pages.Add(page, kept);
        }

        return kept;
    }

    // what lies behind the end of the file reads as zeros
    private void ReadInner(long from, Span<byte> into)
    {
        into.Clear();
        long there = Math.Clamp(inner.Length - from, 0, into.Length);
        if (there > 0)
        {
            inner.Position = from;
            _ = inner.ReadAtLeast(into[..(int)there], (int)there, throwOnEndOfStream: false);
        }
    }
}
