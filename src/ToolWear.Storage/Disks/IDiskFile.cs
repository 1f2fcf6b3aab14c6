namespace ToolWear.Storage.Disks;

/// <summary>One open file of an <see cref="IDisk"/>; not for use by two threads at once.</summary>
public interface IDiskFile : IDisposable
{
    /// <summary>Where the file stands now; asked of the disk each time.</summary>
    FilePlace Place { get; }

    /// <summary>Locks the file itself against every other that is locked so, under whatever name; reading needs no lock.</summary>
    /// <returns>What to dispose to give it back, or null where another holds it; where the system has no locks, nothing is locked.</returns>
    IDisposable? TryLock();

    /// <summary>The length in bytes as it is seen now, durable or not.</summary>
    long Length { get; }

    /// <summary>Reads from a place.</summary>
    /// <param name="offset">Bytes from the start, zero or more.</param>
    /// <param name="into">Where to put what is read.</param>
    /// <returns>How many bytes were read; zero only at the end of the file.</returns>
    int Read(long offset, Span<byte> into);

    /// <summary>Writes all bytes at a place, lengthening the file where needed; a part of them may be written when it throws.</summary>
    /// <param name="offset">Bytes from the start, zero or more.</param>
    /// <param name="bytes">What to write.</param>
    void Write(long offset, ReadOnlySpan<byte> bytes);

    /// <summary>Cuts the file.</summary>
    /// <param name="length">The new length in bytes, at most the present one.</param>
    void Cut(long length);

    /// <summary>Returns when every byte written is durable. Where it throws, none may be, and asking again proves nothing.</summary>
    void Sync();
}
