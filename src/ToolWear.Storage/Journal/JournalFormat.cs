using System.Buffers;
using System.Buffers.Binary;
using System.Globalization;
using System.IO.Hashing;
using System.Text;
using System.Text.Json;

namespace ToolWear.Storage.Journal;

/// <summary>How a journal is written, version 1.</summary>
/// <remarks>
/// <code>
/// {"toolwear":"journal","format":1,"shop":"0123...32 hex digits"} TAB crc LF
/// {"seq":7,"at":"2026-11-24T22:42:46.123Z","day":"2026-11-24","entries":[{...},{...}]} TAB crc LF
/// </code>
/// crc is eight lower hex digits: CRC-32 (ISO 3309, IEEE 802.3) over the checksum of the line before (four bytes, lowest
/// first; 0 before the first line) and then the bytes of the line up to the TAB. So a line that is changed, lost, doubled
/// or moved breaks the chain. The first line keeps this shape in every later format: an older program reads the number
/// of the format from it and says so.
/// </remarks>
internal static class JournalFormat
{
    /// <summary>The format this program writes, and the newest it reads.</summary>
    internal const int Newest = 1;

    /// <summary>A line with one entry is at most this long, its end included (bytes).</summary>
    internal const int LongestLine = 64 * 1024;

    /// <summary>The bytes behind the content of a line: TAB, eight digits, LF.</summary>
    internal const int TailLength = 10;

    private const string AtFormat = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";
    private const int AtLength = 24;
    private const int DayLength = 10;

    private static readonly SearchValues<byte> MomentLetters = SearchValues.Create("0123456789-:.TZ"u8);

    /// <summary>UTF-8 that throws instead of writing or reading a stand-in letter.</summary>
    internal static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The checksum of a line.</summary>
    /// <param name="before">The checksum of the line before, 0 for the first.</param>
    /// <param name="content">The line up to its TAB.</param>
    /// <returns>The checksum.</returns>
    internal static uint Chain(uint before, ReadOnlySpan<byte> content)
    {
        Span<byte> start = stackalloc byte[sizeof(uint)];
        BinaryPrimitives.WriteUInt32LittleEndian(start, before);
        var crc = new Crc32();
        crc.Append(start);
        crc.Append(content);
        return crc.GetCurrentHashAsUInt32();
    }

    /// <summary>The first line.</summary>
    /// <param name="shop">The shop's id, 32 lower hex digits.</param>
    /// <returns>All its bytes and its checksum.</returns>
    internal static (byte[] Bytes, uint Crc) FirstLine(string shop) =>
        WithTail(0, $"{{\"toolwear\":\"journal\",\"format\":{Newest},\"shop\":\"{shop}\"}}");

    /// <summary>One line of entries.</summary>
    /// <param name="before">The checksum of the line before.</param>
    /// <param name="seq">The number of its first entry.</param>
    /// <param name="at">When it is accepted.</param>
    /// <param name="day">The shop's day.</param>
    /// <param name="bodies">The entries.</param>
    /// <returns>All its bytes and its checksum.</returns>
    internal static (byte[] Bytes, uint Crc) Line(
        uint before,
        long seq,
        DateTimeOffset at,
        DateOnly day,
        IReadOnlyList<string> bodies
    ) =>
        WithTail(
            before,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{{\"seq\":{seq},\"at\":\"{AtText(at)}\",\"day\":\"{DayText(day)}\",\"entries\":[{string.Join(',', bodies)}]}}"
            )
        );

    /// <summary>A moment as the journal writes it.</summary>
    /// <param name="at">A moment.</param>
    /// <returns>UTC with milliseconds: "2026-11-24T22:42:46.123Z".</returns>
    internal static string AtText(DateTimeOffset at) => at.UtcDateTime.ToString(AtFormat, CultureInfo.InvariantCulture);

    /// <summary>A day as the journal writes it.</summary>
    /// <param name="day">A day.</param>
    /// <returns>"2026-11-24".</returns>
    internal static string DayText(DateOnly day) => day.ToString("O", CultureInfo.InvariantCulture);

    /// <summary>Reads a moment strictly as the journal writes it.</summary>
    /// <param name="text">The text in UTF-8.</param>
    /// <param name="at">The moment.</param>
    /// <returns>False where it is written otherwise.</returns>
    internal static bool TryAt(ReadOnlySpan<byte> text, out DateTimeOffset at)
    {
        bool isRead = TryDateTime(text, AtLength, out DateTime moment) && moment.Kind == DateTimeKind.Utc;
        at = isRead ? new DateTimeOffset(moment) : default;
        return isRead;
    }

    /// <summary>Reads a day strictly as the journal writes it.</summary>
    /// <param name="text">The text in UTF-8.</param>
    /// <param name="day">The day.</param>
    /// <returns>False where it is written otherwise.</returns>
    internal static bool TryDay(ReadOnlySpan<byte> text, out DateOnly day)
    {
        bool isRead = TryDateTime(text, DayLength, out DateTime midnight);
        day = isRead ? DateOnly.FromDateTime(midnight) : default;
        return isRead;
    }

    // ISO 8601 as JSON has it: of a given length there is one way to write a day and one to write a moment in UTC
    private static bool TryDateTime(ReadOnlySpan<byte> text, int length, out DateTime value)
    {
        value = default;
        if (text.Length != length || text.ContainsAnyExcept(MomentLetters))
        {
            return false;
        }
        Span<byte> quoted = stackalloc byte[length + 2];
        quoted[0] = (byte)'"';
        text.CopyTo(quoted[1..]);
        quoted[^1] = (byte)'"';
        var reader = new Utf8JsonReader(quoted);
        return reader.Read() && reader.TryGetDateTime(out value);
    }

    /// <summary>How a line with a checksum ends.</summary>
    /// <param name="crc">The checksum.</param>
    /// <returns><see cref="TailLength"/> bytes.</returns>
    internal static byte[] Tail(uint crc) => Encoding.ASCII.GetBytes($"\t{crc:x8}\n");

    private static (byte[] Bytes, uint Crc) WithTail(uint before, string content)
    {
        int length = Utf8.GetByteCount(content);
        byte[] bytes = new byte[length + TailLength];
        Utf8.GetBytes(content, bytes);
        uint crc = Chain(before, bytes.AsSpan(0, length));
        Tail(crc).CopyTo(bytes, length);
        return (bytes, crc);
    }
}
