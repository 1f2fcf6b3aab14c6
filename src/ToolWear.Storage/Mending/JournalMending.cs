using System.Buffers.Text;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Mending;

/// <summary>Puts a damaged journal together again, line by line: from itself where the chain holds, else from a source.</summary>
/// <remarks>Only lines that fit the chain are taken, so what comes out is the journal as it was, or it is said to be short.</remarks>
internal sealed class JournalMending
{
    private readonly IDiskFile _out;
    private readonly LineSource _source;
    private readonly string _shop;
    private long _written;
    private long _seq;
    private uint _crc;
    private bool _skipped;
    private byte[] _line = [];
    private bool _isTorn;

    private JournalMending(IDiskFile into, LineSource source, string shop)
    {
        _out = into;
        _source = source;
        _shop = shop;
        (byte[] first, _crc) = JournalFormat.FirstLine(shop);
        Write(first);
    }

    /// <summary>What mending came to.</summary>
    /// <param name="LastSeq">The last entry in the mended journal.</param>
    /// <param name="Mended">How many lines came from elsewhere.</param>
    /// <param name="IsWhole">Whether every accepted line that left a trace is in it.</param>
    internal sealed record Result(long LastSeq, int Mended, bool IsWhole);

    /// <summary>Writes a mended journal beside a damaged one.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">The journal, or nothing where it is gone.</param>
    /// <param name="source">Where else lines can be had.</param>
    /// <param name="into">The new file, empty.</param>
    /// <returns>What it came to; null where not even the shop's id is left.</returns>
    internal static Result? Mend(IDisk disk, string path, LineSource source, IDiskFile into)
    {
        bool isThere = disk.KindOf(path) == PathKind.PlainFile;
        using IDiskFile? damaged = isThere ? disk.OpenToRead(path) : null;
        RawLines? lines = damaged is null ? null : new RawLines(damaged, damaged.Length);
        string? shop = (lines is null ? null : FirstLine(lines)) ?? source.Shops.FirstOrDefault();
        if (shop is null)
        {
            return null;
        }
        var mending = new JournalMending(into, source, shop);
        int mended = mending.All(lines);
        return new Result(mending._seq, mended, !mending._skipped && source.LastSeq(shop) <= mending._seq);
    }

    private int All(RawLines? lines)
    {
        int mended = 0;
        bool hasLine = lines is not null && Step(lines);
        while (true)
        {
            if (hasLine && lines is not null && (TakeOwn() || !IsAhead()))
            {
                hasLine = Step(lines);
            }
            else if (_source.Find(_shop, _seq + 1, _crc) is { } line)
            {
                TakeFrom(line);
                mended++;
            }
            else if (hasLine && lines is not null)
            {
                // nobody has the line before this one; whatever still fits is looked for behind it
                _skipped = true;
                hasLine = Step(lines);
            }
            else
            {
                return mended;
            }
        }
    }

    private bool Step(RawLines lines)
    {
        bool hasLine = lines.TryNext(out ReadOnlySpan<byte> raw);
        _line = raw.ToArray();
        _isTorn = hasLine && lines.IsLast && (!lines.Ended || JournalReader.HasHole(raw, lines.LineStart));
        return hasLine;
    }

    // A line of the journal itself, where it fits the chain.
    private bool TakeOwn()
    {
        if (!LineText.TryVerify(_crc, _line, out int length, out uint crc) || NumberOf(_line) != _seq + 1)
        {
            return false;
        }
        JournalLine? line = LineText.TryLine(_line.AsSpan(0, length - JournalFormat.TailLength + 1), crc, Any, out _);
        if (line is null)
        {
            return false;
        }
        Write([.. _line.AsSpan(0, length), (byte)'\n']);
        Accept(line);
        return true;
    }

    // Whether the line at hand says of itself that it comes later: it may fit once those before it are mended.
    private bool IsAhead()
    {
        if (_isTorn)
        {
            return false;
        }
        bool isAhead = NumberOf(_line) > _seq + 1;
        _skipped |= !isAhead;
        return isAhead;
    }

    private void TakeFrom(JournalLine line)
    {
        Write(JournalFormat.Line(_crc, line.Seq, line.At, line.Day, line.Bodies).Bytes);
        Accept(line);
    }

    private void Accept(JournalLine line)
    {
        _seq = line.LastSeq;
        _crc = line.Crc;
        _skipped = false;
    }

    private void Write(ReadOnlySpan<byte> bytes)
    {
        _out.Write(_written, bytes);
        _written += bytes.Length;
    }

    // what a newer program wrote is mended too: the lines are only moved
    private static KnownKinds Any { get; } = new(new Dictionary<string, int>(StringComparer.Ordinal));

    private static long NumberOf(ReadOnlySpan<byte> line)
    {
        ReadOnlySpan<byte> start = "{\"seq\":"u8;
        return line.StartsWith(start) && Utf8Parser.TryParse(line[start.Length..], out long seq, out _) ? seq : 0;
    }

    /// <summary>Reads the shop's id from the first line.</summary>
    /// <param name="lines">The journal, at its beginning.</param>
    /// <returns>The id; null where the line is not as it was written.</returns>
    internal static string? FirstLine(RawLines lines) =>
        lines.TryNext(out ReadOnlySpan<byte> raw)
        && LineText.TryVerify(0, raw, out int length, out _)
        && LineText.TryFirst(raw[..(length - JournalFormat.TailLength + 1)], out _, out string? shop)
            ? shop
            : null;
}
