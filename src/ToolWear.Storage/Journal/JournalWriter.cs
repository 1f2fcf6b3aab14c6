using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using ToolWear.Storage.Disks;

namespace ToolWear.Storage.Journal;

/// <summary>Adds lines to a journal: written, made durable by exactly one sync, and only then acknowledged.</summary>
internal sealed class JournalWriter : IDisposable
{
    private readonly IDiskFile _file;
    private readonly KnownKinds _kinds;
    private uint _crc;

    /// <summary>Goes on where a reader has found the end.</summary>
    /// <param name="file">The journal, open for writing, ending with a whole line and durable up to there.</param>
    /// <param name="end">The reader, at the end.</param>
    /// <param name="kinds">What this program knows: it writes nothing it could not read.</param>
    internal JournalWriter(IDiskFile file, JournalReader end, KnownKinds kinds)
    {
        _file = file;
        _kinds = kinds;
        Shop = end.Shop;
        _crc = end.Crc;
        LastSeq = end.LastSeq;
        Length = end.WholeLength;
    }

    /// <summary>The shop's id, 32 lower hex digits.</summary>
    internal string Shop { get; }

    /// <summary>The number of the last entry accepted, 0 before the first.</summary>
    internal long LastSeq { get; private set; }

    /// <summary>The length up to the last line accepted (bytes).</summary>
    internal long Length { get; private set; }

    /// <summary>Whether a write has failed: then nothing more is taken.</summary>
    internal bool IsBroken { get; private set; }

    /// <summary>Makes the first line durable under the journal's name, all at once.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">The journal's path, where nothing stands.</param>
    /// <param name="shop">The shop's new id.</param>
    internal static void Begin(IDisk disk, string path, string shop) =>
        WholeFile.Write(disk, path, JournalFormat.FirstLine(shop).Bytes);

    /// <summary>Adds one line.</summary>
    /// <param name="at">When it is accepted.</param>
    /// <param name="day">The shop's day.</param>
    /// <param name="bodies">The entries, at least one.</param>
    /// <returns>The line, durable.</returns>
    /// <exception cref="ArgumentException">An entry is not what an entry is, or too long; nothing was written.</exception>
    /// <exception cref="StoreBrokenException">It could not be written; it was not accepted.</exception>
    internal JournalLine Append(DateTimeOffset at, DateOnly day, ImmutableArray<string> bodies)
    {
        if (IsBroken)
        {
            throw Broken(null);
        }
        Test(bodies);
        var toTheMillisecond = new DateTimeOffset(at.UtcTicks - (at.UtcTicks % TimeSpan.TicksPerMillisecond), default);
        (byte[] bytes, uint crc) = JournalFormat.Line(_crc, LastSeq + 1, toTheMillisecond, day, bodies);
        if (bodies.Length == 1 && bytes.Length > JournalFormat.LongestLine)
        {
            throw TooLong(nameof(bodies));
        }
        Write(bytes);
        var line = new JournalLine(LastSeq + 1, toTheMillisecond, day, [.. bodies], crc);
        _crc = crc;
        LastSeq = line.LastSeq;
        Length += bytes.Length;
        return line;
    }

    /// <inheritdoc />
    public void Dispose() => _file.Dispose();

    private void Write(byte[] bytes)
    {
        // until the sync has returned, nobody may add to what might be half a line
        IsBroken = true;
        try
        {
            _file.Write(Length, bytes);
            _file.Sync();
            if (!_file.IsInPlace)
            {
                throw new IOException("the journal was moved, deleted or replaced");
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            CutBack();
            throw Broken(e);
        }
        IsBroken = false;
    }

    // After a failed sync the system may show the line from memory although the disk has not got it, and call a second
    // sync a success. Cut off, it can neither be shown nor half stay. Where even that fails, opening again finds it.
    private void CutBack()
    {
        try
        {
            _file.Cut(Length);
        }
        catch (IOException)
        {
            return;
        }
        catch (UnauthorizedAccessException)
        {
            return;
        }
    }

    private void Test(ImmutableArray<string> bodies)
    {
        if (bodies.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A line has at least one entry.", nameof(bodies));
        }
        foreach (string body in bodies)
        {
            Test(body);
        }
    }

    private void Test(string body)
    {
        try
        {
            byte[] bytes = JournalFormat.Utf8.GetBytes(body);
            if (bytes.Length > JournalFormat.LongestLine)
            {
                throw TooLong(nameof(body));
            }
            EntryText entry = EntryText.ReadOne(bytes, _kinds);
            if (!_kinds.Knows(entry.Kind, entry.Version))
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

    private static StoreBrokenException Broken(Exception? inner) =>
        new(
            "The entry could not be written and was not accepted. Nothing more is taken until the store is opened again"
                + (inner is null ? "." : $" ({inner.Message})."),
            inner
        );
}
