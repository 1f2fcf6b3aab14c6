namespace ToolWear.Storage.Disks;

/// <summary>One open file of an <see cref="IDisk"/>; not for use by two threads at once.</summary>
public interface IDiskFile : IDisposable
{
    /// <summary>Whether the file still stands under the name by which it was opened, as long as it is here.</summary>
    /// <remarks>A file whose folder was deleted takes writes and syncs as before, and nobody will ever find them.</remarks>
    bool IsInPlace { get; }

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
