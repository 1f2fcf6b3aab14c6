using ToolWear.Storage.Disks;

namespace ToolWear.Storage.Journal;

/// <summary>Parts a file into lines by LF, through one buffer that grows only for a longer line.</summary>
/// <param name="file">The file.</param>
/// <param name="end">Where to stop, in bytes from the start: what another process adds meanwhile is not seen.</param>
/// <param name="start">Where to begin, in bytes from the start.</param>
internal sealed class RawLines(IDiskFile file, long end, long start = 0)
{
    private byte[] _buffer = new byte[256 * 1024];
    private int _start;
    private int _filled;
    private long _read = start;

    /// <summary>Where the present line begins, in bytes from the start.</summary>
    internal long LineStart { get; private set; }

    /// <summary>Whether the present line has its LF.</summary>
    internal bool Ended { get; private set; }

    /// <summary>Whether the present line is the last.</summary>
    internal bool IsLast => _start == _filled && _read == end;

    /// <summary>Steps to the next line.</summary>
    /// <param name="line">Its bytes without the LF, until the next step.</param>
    /// <returns>False behind the last.</returns>
    internal bool TryNext(out ReadOnlySpan<byte> line)
    {
        int searched = 0;
        while (true)
        {
            int found = _buffer.AsSpan(_start + searched, _filled - _start - searched).IndexOf((byte)'\n');
            if (found >= 0)
            {
                line = Take(searched + found, ended: true);
                return true;
            }
            searched = _filled - _start;
            if (!Fill())
            {
                line = Take(searched, ended: false);
                return searched > 0;
            }
        }
    }

    private ReadOnlySpan<byte> Take(int length, bool ended)
    {
        ReadOnlySpan<byte> line = _buffer.AsSpan(_start, length);
        LineStart = _read - (_filled - _start);
        Ended = ended;
        _start += ended ? length + 1 : length;
        return line;
    }

    private bool Fill()
    {
        if (_read >= end)
        {
            return false;
        }
        int kept = _filled - _start;
        if (_start > 0)
        {
            _buffer.AsSpan(_start, kept).CopyTo(_buffer);
            _start = 0;
            _filled = kept;
        }
        if (_filled == _buffer.Length)
        {
            Array.Resize(ref _buffer, _buffer.Length * 2);
        }
        int wanted = (int)Math.Min(_buffer.Length - _filled, end - _read);
        int got = file.Read(_read, _buffer.AsSpan(_filled, wanted));
        if (got == 0)
        {
            throw new IOException("The journal became shorter while it was read.");
        }
        _filled += got;
        _read += got;
        return true;
    }
}
