using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using ToolWear.Storage.Disks;

namespace ToolWear.Storage.Journal;

/// <summary>Adds lines to a journal that others add to as well: guarded, written, made durable by one sync, and only then acknowledged.</summary>
/// <remarks>All but the reading of <see cref="Open"/> is done under the store's lock.</remarks>
internal sealed class JournalWriter : IDisposable
{
    private readonly IDiskFile _file;
    private readonly KnownKinds _kinds;
    private readonly string _path;
    private int _lines;
    private bool _isBroken;

    private JournalWriter(IDiskFile file, string path, KnownKinds kinds, JournalReader read)
    {
        _file = file;
        _path = path;
        _kinds = kinds;
        _lines = read.Lines;
        End = JournalPoint.Of(read);
    }

    /// <summary>The end of the last line known here.</summary>
    internal JournalPoint End { get; private set; }

    /// <summary>Whether the journal is not as it was left here: others have added to it, or it was replaced.</summary>
    internal bool HasChanged => _file.Length != End.Length || _file.Place != FilePlace.InPlace;

    /// <summary>Makes the first line durable under the journal's name, all at once.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">The journal's path, where nothing stands.</param>
    /// <param name="shop">The shop's new id.</param>
    internal static void Begin(IDisk disk, string path, string shop) =>
        WholeFile.Write(disk, path, JournalFormat.FirstLine(shop).Bytes);

    /// <summary>Opens a journal and reads its whole lines, beside whoever adds to it.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">The journal.</param>
    /// <param name="kinds">What this program knows: it writes nothing it could not read.</param>
    /// <param name="each">Takes each line.</param>
    /// <returns>The journal; nothing may be added before <see cref="CatchUp"/>.</returns>
    internal static JournalWriter Open(IDisk disk, string path, KnownKinds kinds, Action<JournalLine> each)
    {
        IDiskFile file = disk.OpenToWrite(path);
        try
        {
            var reader = new JournalReader(file, path, kinds);
            while (reader.Next() is { } line)
            {
                each(line);
            }
            return new JournalWriter(file, path, kinds, reader);
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <summary>Tests that the journal is still the one known here, reads what others have added, and settles its end.</summary>
    /// <param name="known">How far the documents have come, where that is known.</param>
    /// <param name="isDurable">Whether what was read here before is known to be durable.</param>
    /// <param name="findings">Where to say what was out of order at the end.</param>
    /// <returns>What others have added, durable.</returns>
    /// <exception cref="StoreException">Nothing may be added; the sentence says why and what to do.</exception>
    internal ImmutableArray<(JournalLine Line, JournalPoint End)> CatchUp(
        JournalPoint? known,
        bool isDurable,
        ICollection<StoreFinding> findings
    )
    {
        if (_isBroken)
        {
            throw Broken(null);
        }
        _isBroken = true;
        try
        {
            Guard();
            ImmutableArray<(JournalLine, JournalPoint)> added = [];
            bool hasMore = _file.Length > End.Length;
            if (hasMore)
            {
                var reader = new JournalReader(_file, _path, _kinds, End, _lines);
                added = Added(reader, known, findings);
                _lines = reader.Lines;
                End = JournalPoint.Of(reader);
            }
            MustKnowNoMore(End, known);
            // A process that was killed may have left a line that the system shows and the disk has not got. It must
            // not be built upon, nor shown, before it is durable.
            if (hasMore || !isDurable)
            {
                _file.Sync();
            }
            _isBroken = false;
            return added;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw Broken(e);
        }
        catch (StoreException)
        {
            // nothing was written: what stopped it is asked anew each time
            _isBroken = false;
            throw;
        }
    }

    /// <summary>Adds one line.</summary>
    /// <param name="at">When it is accepted.</param>
    /// <param name="day">The shop's day.</param>
    /// <param name="bodies">The entries, at least one, tested.</param>
    /// <returns>The line, durable.</returns>
    /// <exception cref="ArgumentException">The line is too long; nothing was written.</exception>
    /// <exception cref="StoreBrokenException">It could not be written; it was not accepted.</exception>
    internal JournalLine Append(DateTimeOffset at, DateOnly day, ImmutableArray<string> bodies)
    {
        var toTheMillisecond = new DateTimeOffset(at.UtcTicks - (at.UtcTicks % TimeSpan.TicksPerMillisecond), default);
        (byte[] bytes, uint crc) = JournalFormat.Line(End.Crc, End.Seq + 1, toTheMillisecond, day, bodies);
        if (bodies.Length == 1 && bytes.Length > JournalFormat.LongestLine)
        {
            throw TooLong(nameof(bodies));
        }
        Write(bytes);
        var line = new JournalLine(End.Seq + 1, toTheMillisecond, day, [.. bodies], crc);
        End = End with { Seq = line.LastSeq, Crc = crc, Length = End.Length + bytes.Length };
        _lines++;
        return line;
    }

    /// <summary>Locks the journal itself: the file of the store's lock can be deleted, or there can be two names.</summary>
    /// <returns>What to dispose to give it back, or null where another holds it.</returns>
    internal IDisposable? TryLock() => _file.TryLock();

    /// <inheritdoc />
    public void Dispose() => _file.Dispose();

    private void Guard()
    {
        FilePlace place = _file.Place;
        if (place == FilePlace.Shared)
        {
            throw new StoreRefusedException(
                $"{_path} has a second name (a hard link): whoever writes by that would overwrite what is written by this. "
                    + "Nothing was recorded. Take the other name away, then enter it again."
            );
        }
        if (place == FilePlace.Gone)
        {
            throw new StoreBrokenException(
                $"{_path} was moved, deleted or replaced while it was open here. Nothing was recorded. Close this window, "
                    + "open the shop again, look at its ledger, then enter it again."
            );
        }
        Span<byte> tail = stackalloc byte[JournalFormat.TailLength];
        if (
            _file.Read(End.Length - tail.Length, tail) != tail.Length
            || !tail.SequenceEqual(JournalFormat.Tail(End.Crc))
        )
        {
            throw new StoreBrokenException(
                $"{_path} is not as this window left it: something else cut or overwrote it. Nothing was recorded. Close "
                    + "this window, then \"toolwear check\" says what is there and mends what it can."
            );
        }
    }

    private ImmutableArray<(JournalLine, JournalPoint)> Added(
        JournalReader reader,
        JournalPoint? known,
        ICollection<StoreFinding> findings
    )
    {
        var added = ImmutableArray.CreateBuilder<(JournalLine, JournalPoint)>();
        while (reader.Next() is { } line)
        {
            added.Add((line, JournalPoint.Of(reader)));
        }
        if (reader.End == JournalEnd.Unended)
        {
            added.Add((reader.TakeUnended(), JournalPoint.Of(reader)));
            _file.Cut(reader.WholeLength - 1);
            _file.Write(reader.WholeLength - 1, "\n"u8);
            findings.Add(new(FindingKind.LineCompleted, $"The last entry, {reader.LastSeq}, was whole and was kept."));
        }
        else if (_file.Length > reader.WholeLength)
        {
            JournalPoint end = JournalPoint.Of(reader);
            MustKnowNoMore(end, known);
            // documents follow what was acknowledged: only they can say that nothing of the kind stood there
            if (reader.End == JournalEnd.Junk && known != end with { Length = 0 })
            {
                throw reader.Damaged();
            }
            _file.Cut(reader.WholeLength);
            findings.Add(
                new(
                    FindingKind.TailDropped,
                    $"{_path} ended in {(reader.End == JournalEnd.Junk ? "bytes that are no entry and were" : "the middle of an entry that was")} never accepted; that part was dropped. "
                        + $"The last entry is {reader.LastSeq}."
                )
            );
        }
        return added.DrainToImmutable();
    }

    // Documents follow only what was acknowledged. So an entry they know is an accepted one, and a journal that ends
    // before it has lost something: that is no torn tail.
    private void MustKnowNoMore(JournalPoint end, JournalPoint? known)
    {
        if (known is not null && known.Shop == end.Shop && known.Seq > end.Seq)
        {
            throw new DamagedJournalException(
                0,
                $"{_path} ends with entry {end.Seq}, but the documents know entry {known.Seq}. Nothing was "
                    + "changed. \"toolwear check\" brings back what the documents hold; \"toolwear restore FILE\" puts a "
                    + "backup in its place."
            );
        }
    }

    private void Write(byte[] bytes)
    {
        // until the sync has returned, nobody may add to what might be half a line
        _isBroken = true;
        try
        {
            _file.Write(End.Length, bytes);
            _file.Sync();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            CutBack();
            throw Broken(e);
        }
        // where the name was taken away meanwhile, what was written may be found by nobody
        if (!IsInPlace())
        {
            throw new StoreBrokenException(
                $"While an entry was being written, something else moved, deleted, replaced or linked {_path}. "
                    + "The entry may be there or not. Open the shop again and look at its ledger before you enter it again."
            );
        }
        _isBroken = false;
    }

    private bool IsInPlace()
    {
        try
        {
            return _file.Place == FilePlace.InPlace;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    // After a failed sync the system may show the line from memory although the disk has not got it, and call a second
    // sync a success. Cut off, it can neither be shown nor half stay. Where even that fails, opening again finds it.
    private void CutBack()
    {
        try
        {
            _file.Cut(End.Length);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return;
        }
    }

    /// <summary>Tests entries before anything is written.</summary>
    /// <param name="bodies">The entries.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <exception cref="ArgumentException">One is not what an entry is, or too long.</exception>
    internal static void Test(ImmutableArray<string> bodies, KnownKinds kinds)
    {
        foreach (string body in bodies)
        {
            Test(body, kinds);
        }
    }

    private static void Test(string body, KnownKinds kinds)
    {
        try
        {
            byte[] bytes = JournalFormat.Utf8.GetBytes(body);
            if (bytes.Length > JournalFormat.LongestLine)
            {
                throw TooLong(nameof(body));
            }
            EntryText entry = EntryText.ReadOne(bytes, kinds);
            if (!kinds.Knows(entry.Kind, entry.Version))
            {
                throw new ArgumentException($"\"{entry.Kind}\" version {entry.Version} is not known.", nameof(body));
            }
        }
        catch (JsonException e)
        {
            throw new ArgumentException(e.Message, nameof(body), e);
        }
        catch (EncoderFallbackException e)
        {
            throw new ArgumentException("An entry holds half a letter.", nameof(body), e);
        }
    }

    private static ArgumentException TooLong(string name) =>
        new($"An entry takes at most {JournalFormat.LongestLine} bytes.", name);

    /// <summary>What to say where something could not be written.</summary>
    /// <param name="inner">What the system said.</param>
    /// <returns>To be thrown.</returns>
    internal static StoreBrokenException Broken(Exception? inner) =>
        new(
            "The entry could not be written and was not accepted. Nothing more is taken until the store is opened again"
                + (inner is null ? "." : $" ({inner.Message})."),
            inner
        );
}
