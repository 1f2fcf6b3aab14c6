using ToolWear.Storage.Disks;

namespace ToolWear.Storage.Journal;

/// <summary>Reads a journal line by line, each tested by its checksum before it is handed on.</summary>
public sealed class JournalReader
{
    // what a disk writes in one piece
    private const int Sector = 512;

    private readonly RawLines _lines;
    private readonly KnownKinds _kinds;
    private readonly string _path;
    private byte[] _unended = [];

    /// <summary>Starts to read, and reads the first line.</summary>
    /// <param name="file">The journal, as long as it is now.</param>
    /// <param name="path">Its path, for messages.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <exception cref="DamagedJournalException">The first line is not as it was written.</exception>
    /// <exception cref="NewerJournalException">The format is newer.</exception>
    public JournalReader(IDiskFile file, string path, KnownKinds kinds)
        : this(file, path, kinds, file.Length) { }

    /// <summary>Starts to read a journal that is being written, up to a whole line.</summary>
    /// <param name="file">The journal.</param>
    /// <param name="path">Its path, for messages.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <param name="end">Where to stop (bytes from the start).</param>
    internal JournalReader(IDiskFile file, string path, KnownKinds kinds, long end)
    {
        _path = path;
        _kinds = kinds;
        _lines = new RawLines(file, end);
        Shop = FirstLine();
    }

    /// <summary>Starts to read what has come behind a place.</summary>
    /// <param name="file">The journal, as long as it is now.</param>
    /// <param name="path">Its path, for messages.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <param name="from">The place.</param>
    /// <param name="lines">How many lines are before it.</param>
    internal JournalReader(IDiskFile file, string path, KnownKinds kinds, JournalPoint from, int lines)
    {
        _path = path;
        _kinds = kinds;
        _lines = new RawLines(file, file.Length, from.Length);
        (Shop, LastSeq, Crc, WholeLength) = from;
        Lines = lines;
    }

    /// <summary>The shop's id, 32 lower hex digits, the same as long as the shop lives.</summary>
    public string Shop { get; }

    /// <summary>The number of the last entry read, 0 before the first.</summary>
    public long LastSeq { get; private set; }

    /// <summary>The checksum of the last line read.</summary>
    public uint Crc { get; private set; }

    /// <summary>Where the last line read ends, its line end included (bytes from the start).</summary>
    public long WholeLength { get; private set; }

    /// <summary>How many lines have been read, those before the place it began at included.</summary>
    internal int Lines { get; private set; }

    /// <summary>How the journal ends, once <see cref="Next"/> has returned null.</summary>
    public JournalEnd End { get; private set; }

    /// <summary>Reads the next whole line.</summary>
    /// <returns>The line, or null at the end: then <see cref="End"/> says how it ends.</returns>
    /// <exception cref="DamagedJournalException">The line is not as it was written.</exception>
    /// <exception cref="NewerJournalException">The line holds an entry that only a newer program knows.</exception>
    public JournalLine? Next()
    {
        if (End != JournalEnd.NotReached)
        {
            return null;
        }
        if (!_lines.TryNext(out ReadOnlySpan<byte> raw))
        {
            End = JournalEnd.Whole;
            return null;
        }
        bool isRight = LineText.TryVerify(Crc, raw, out int length, out uint crc);
        if (!_lines.Ended)
        {
            End = isRight ? JournalEnd.Unended : JournalEnd.Torn;
            _unended = isRight ? raw[..length].ToArray() : [];
            return null;
        }
        if (!isRight || length != raw.Length)
        {
            if (_lines.IsLast && HasHole(raw, _lines.LineStart))
            {
                End = JournalEnd.Torn;
                return null;
            }
            if (IsJunkToTheEnd(raw))
            {
                End = JournalEnd.Junk;
                return null;
            }
            throw Damaged();
        }
        return Accept(raw, crc);
    }

    /// <summary>Reads the last line where only its line end is missing; for who is about to write that.</summary>
    /// <returns>The line; <see cref="WholeLength"/> counts the missing line end.</returns>
    internal JournalLine TakeUnended()
    {
        _ = LineText.TryVerify(Crc, _unended, out _, out uint crc);
        return Accept(_unended, crc);
    }

    private bool IsJunkToTheEnd(ReadOnlySpan<byte> raw)
    {
        while (!LineText.LooksLikeALine(raw))
        {
            if (!_lines.TryNext(out raw))
            {
                return true;
            }
        }
        return false;
    }

    private JournalLine Accept(ReadOnlySpan<byte> raw, uint crc)
    {
        JournalLine? line = LineText.TryLine(ContentOf(raw), crc, _kinds, out EntryText? newer);
        if (newer is { } unknown)
        {
            throw new NewerJournalException(
                Lines + 1,
                $"Line {Lines + 1} of {_path} holds \"{unknown.Kind}\" version {unknown.Version}, written by a newer ToolWear. "
                    + "Nothing was changed; open it with that version."
            );
        }
        if (line is null || line.Seq != LastSeq + 1)
        {
            throw Damaged();
        }
        Lines++;
        LastSeq = line.LastSeq;
        Crc = crc;
        WholeLength = _lines.LineStart + raw.Length + 1;
        return line;
    }

    private string FirstLine()
    {
        if (
            !_lines.TryNext(out ReadOnlySpan<byte> raw)
            || !LineText.TryVerify(0, raw, out int length, out uint crc)
            || length != raw.Length
            || !_lines.Ended
            || !LineText.TryFirst(ContentOf(raw), out int format, out string? shop)
        )
        {
            throw Damaged();
        }
        if (format > JournalFormat.Newest || shop is null)
        {
            throw new NewerJournalException(
                1,
                $"{_path} has format {format}, written by a newer ToolWear (this one reads up to {JournalFormat.Newest}). "
                    + "Nothing was changed; open it with that version."
            );
        }
        Lines = 1;
        Crc = crc;
        WholeLength = raw.Length + 1;
        return shop;
    }

    private static ReadOnlySpan<byte> ContentOf(ReadOnlySpan<byte> raw) => raw[..^(JournalFormat.TailLength - 1)];

    // A disk that lost power may have written the last sector of a line and not one before it. Such a hole reads as
    // zeros from sector to sector; no line holds a zero byte, and no single flipped bit makes one so.
    internal static bool HasHole(ReadOnlySpan<byte> raw, long lineStart)
    {
        int at = raw.IndexOf((byte)0);
        while (at >= 0)
        {
            int length = raw[at..].IndexOfAnyExcept((byte)0);
            if (length < 0)
            {
                return false;
            }
            long start = lineStart + at;
            if ((at == 0 || start % Sector == 0) && (start + length) % Sector == 0)
            {
                return true;
            }
            int next = raw[(at + length)..].IndexOf((byte)0);
            at = next < 0 ? -1 : at + length + next;
        }
        return false;
    }

    /// <summary>What to say where the next line is not as it was written.</summary>
    /// <returns>To be thrown.</returns>
    internal DamagedJournalException Damaged() =>
        new(
            Lines + 1,
            $"Line {Lines + 1} of {_path} is not as it was written. Nothing was changed. \"toolwear check\" mends it from the "
                + "documents or the newest backup; \"toolwear restore FILE\" puts a backup in its place."
        );
}
