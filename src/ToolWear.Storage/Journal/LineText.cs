using System.Buffers.Text;
using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace ToolWear.Storage.Journal;

/// <summary>Reads the content of lines whose checksum is right.</summary>
internal static class LineText
{
    private const int CrcDigits = 8;

    /// <summary>Parts a line into content and checksum, and tests the one by the other.</summary>
    /// <param name="before">The checksum of the line before.</param>
    /// <param name="line">The line without its LF; what follows its checksum is not looked at.</param>
    /// <param name="length">The bytes of content, TAB and checksum together.</param>
    /// <param name="crc">The checksum.</param>
    /// <returns>False where there is no right checksum.</returns>
    internal static bool TryVerify(uint before, ReadOnlySpan<byte> line, out int length, out uint crc)
    {
        int tab = line.IndexOf((byte)'\t');
        length = tab + 1 + CrcDigits;
        if (tab < 0 || line.Length < length || !TryHex(line[(tab + 1)..length], out crc))
        {
            crc = 0;
            return false;
        }
        return JournalFormat.Chain(before, line[..tab]) == crc;
    }

    /// <summary>The checksum as a line has it at its end, right or wrong.</summary>
    /// <param name="line">The line without its LF.</param>
    /// <returns>The checksum; null where there is none.</returns>
    internal static uint? TailOf(ReadOnlySpan<byte> line) =>
        line.Length > CrcDigits && line[^(CrcDigits + 1)] == (byte)'\t' && TryHex(line[^CrcDigits..], out uint crc)
            ? crc
            : null;

    /// <summary>Whether bytes begin or end as a line of entries does, be it rotten: else nobody ever wrote them as one.</summary>
    /// <param name="raw">The bytes up to an LF.</param>
    /// <returns>False for what is no line.</returns>
    internal static bool LooksLikeALine(ReadOnlySpan<byte> raw) =>
        raw.StartsWith("{\"seq\":"u8) || TailOf(raw) is not null;

    /// <summary>Reads the first line's content.</summary>
    /// <param name="content">The line up to its TAB.</param>
    /// <param name="format">The number of the format, 1 or more.</param>
    /// <param name="shop">The shop's id; null where the format is newer and has put it elsewhere.</param>
    /// <returns>False where this is no first line of a journal.</returns>
    internal static bool TryFirst(ReadOnlySpan<byte> content, out int format, out string? shop)
    {
        format = 0;
        shop = null;
        if (
            !Take(ref content, "{\"toolwear\":\"journal\",\"format\":"u8)
            || !Utf8Parser.TryParse(content, out format, out int digits)
            || format < 1
        )
        {
            return false;
        }
        content = content[digits..];
        if (Take(ref content, ",\"shop\":\""u8) && content.Length > 32 && content[32] == (byte)'"')
        {
            shop = Encoding.ASCII.GetString(content[..32]);
        }
        return format > JournalFormat.Newest || shop is not null;
    }

    /// <summary>Reads a line of entries.</summary>
    /// <param name="content">The line up to its TAB.</param>
    /// <param name="crc">Its checksum.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <param name="newer">The first kind it does not know, with its version, or null.</param>
    /// <returns>The line, or null where it is not written as a line is.</returns>
    internal static JournalLine? TryLine(ReadOnlySpan<byte> content, uint crc, KnownKinds kinds, out EntryText? newer)
    {
        newer = null;
        if (
            !Take(ref content, "{\"seq\":"u8)
            || !Utf8Parser.TryParse(content, out long seq, out int digits)
            || !Take(ref content, digits)
            || !Take(ref content, ",\"at\":\""u8)
            || !JournalFormat.TryAt(Letters(ref content, 24), out DateTimeOffset at)
            || !Take(ref content, "\",\"day\":\""u8)
            || !JournalFormat.TryDay(Letters(ref content, 10), out DateOnly day)
            || !Take(ref content, "\",\"entries\":"u8)
            || content.IsEmpty
        )
        {
            return null;
        }
        try
        {
            // what is left is the array and the closing brace of the line
            EntryBodies bodies = Bodies(content[..^1].ToArray(), kinds, ref newer);
            return bodies.Count == 0 ? null : new JournalLine(seq, at, day, bodies, crc);
        }
        catch (JsonException)
        {
            return null;
        }
        catch (InvalidOperationException)
        {
            // what the reader of JSON says of bytes that are no UTF-8
            return null;
        }
    }

    private static EntryBodies Bodies(byte[] array, KnownKinds kinds, ref EntryText? newer)
    {
        // the reader of JSON passes over what stands in a text
        if (!Utf8.IsValid(array))
        {
            throw new JsonException("A line is UTF-8.");
        }
        // nearly every line is one entry
        var places = ImmutableArray.CreateBuilder<Range>(1);
        var reader = new Utf8JsonReader(array);
        if (!reader.Read() || reader.TokenType != JsonTokenType.StartArray)
        {
            throw new JsonException("Entries stand in an array.");
        }
        while (reader.Read() && reader.TokenType == JsonTokenType.StartObject)
        {
            int start = (int)reader.TokenStartIndex;
            EntryText entry = EntryText.Read(ref reader, kinds);
            places.Add(start..(int)reader.BytesConsumed);
            if (newer is null && !kinds.Knows(entry.Kind, entry.Version))
            {
                newer = entry;
            }
        }
        return reader.TokenType == JsonTokenType.EndArray
            ? new EntryBodies(array, places.DrainToImmutable())
            : throw new JsonException("Entries are objects.");
    }

    private static bool Take(ref ReadOnlySpan<byte> content, ReadOnlySpan<byte> start)
    {
        if (!content.StartsWith(start))
        {
            return false;
        }
        content = content[start.Length..];
        return true;
    }

    private static bool Take(ref ReadOnlySpan<byte> content, int length)
    {
        content = content[length..];
        return true;
    }

    private static ReadOnlySpan<byte> Letters(ref ReadOnlySpan<byte> content, int length)
    {
        ReadOnlySpan<byte> letters = content[..Math.Min(length, content.Length)];
        content = content[letters.Length..];
        return letters;
    }

    // lower case only: a flipped bit must not turn a digit into its other spelling unseen
    private static bool TryHex(ReadOnlySpan<byte> digits, out uint value)
    {
        value = 0;
        foreach (byte digit in digits)
        {
            if (digit is >= (byte)'0' and <= (byte)'9')
            {
                value = (value << 4) | (uint)(digit - '0');
            }
            else if (digit is >= (byte)'a' and <= (byte)'f')
            {
                value = (value << 4) | (uint)(digit - 'a' + 10);
            }
            else
            {
                return false;
            }
        }
        return true;
    }
}
