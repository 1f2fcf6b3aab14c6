using System.Buffers;
using System.Globalization;
using System.IO.Hashing;
using System.Text;
using LiteDB;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Documents;

/// <summary>Maps entries and the mark to documents and back, by hand, each with a checksum of the whole document.</summary>
/// <remarks>
/// The database has no checksums of its own: a flipped bit in a document is read back as if nothing were wrong. Moments
/// and days are the journal's own text, so that a line can be made again letter for letter.
/// </remarks>
internal static class EntryDocument
{
    /// <summary>The document of an entry.</summary>
    /// <param name="entry">An entry.</param>
    /// <returns>Its document.</returns>
    internal static BsonDocument Write(StoredEntry entry)
    {
        string at = JournalFormat.AtText(entry.At);
        string day = JournalFormat.DayText(entry.Day);
        return new()
        {
            ["_id"] = entry.Seq,
            ["line"] = entry.Line,
            ["at"] = at,
            ["day"] = day,
            ["kind"] = entry.Kind,
            ["tools"] = new BsonArray(entry.Tools.Select(tool => new BsonValue(tool))),
            ["body"] = entry.Body,
            ["crc"] = (long)entry.LineCrc,
            ["sum"] = Sum(entry, at, day),
        };
    }

    /// <summary>Reads a document and tests it.</summary>
    /// <param name="document">A document.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="InvalidDataException">It is not as it was written.</exception>
    internal static StoredEntry Read(BsonDocument document) => TryRead(document) ?? throw Damaged();

    /// <summary>Reads a document and tests it.</summary>
    /// <param name="document">A document.</param>
    /// <returns>The entry, or null where it is not as it was written.</returns>
    internal static StoredEntry? TryRead(BsonDocument document)
    {
        BsonValue id = document["_id"];
        BsonValue tools = document["tools"];
        BsonValue atText = document["at"];
        BsonValue dayText = document["day"];
        if (
            !id.IsInt64
            || !document["line"].IsInt64
            || !tools.IsArray
            || tools.AsArray.Any(tool => !tool.IsString)
            || !document["kind"].IsString
            || !document["body"].IsString
            || !TryCrc(document["crc"], out uint crc)
            || !atText.IsString
            || !JournalFormat.TryAt(Utf8(atText), out DateTimeOffset at)
            || !dayText.IsString
            || !JournalFormat.TryDay(Utf8(dayText), out DateOnly day)
        )
        {
            return null;
        }
        var entry = new StoredEntry(
            id.AsInt64,
            document["line"].AsInt64,
            at,
            day,
            document["kind"].AsString,
            [.. tools.AsArray.Select(tool => tool.AsString)],
            document["body"].AsString,
            crc
        );
        BsonValue sum = document["sum"];
        return sum.IsInt64 && sum.AsInt64 == Sum(entry, atText.AsString, dayText.AsString) ? entry : null;
    }

    /// <summary>The document of the mark.</summary>
    /// <param name="mark">A mark.</param>
    /// <returns>Its document.</returns>
    internal static BsonDocument Write(DocumentMark mark) =>
        new()
        {
            ["_id"] = 1L,
            ["shop"] = mark.Shop,
            ["seq"] = mark.Seq,
            ["crc"] = (long)mark.Crc,
            ["sum"] = Sum(mark),
        };

    /// <summary>Reads the document of the mark and tests it.</summary>
    /// <param name="document">A document.</param>
    /// <returns>The mark.</returns>
    /// <exception cref="InvalidDataException">It is not as it was written.</exception>
    internal static DocumentMark ReadMark(BsonDocument document)
    {
        if (!document["shop"].IsString || !document["seq"].IsInt64 || !TryCrc(document["crc"], out uint crc))
        {
            throw Damaged();
        }
        var mark = new DocumentMark(document["shop"].AsString, document["seq"].AsInt64, crc);
        BsonValue sum = document["sum"];
        return sum.IsInt64 && sum.AsInt64 == Sum(mark) ? mark : throw Damaged();
    }

    private static InvalidDataException Damaged() => new("A document is not as it was written.");

    private static byte[] Utf8(BsonValue text) => Encoding.UTF8.GetBytes(text.AsString);

    private static bool TryCrc(BsonValue value, out uint crc)
    {
        bool isCrc = value.IsInt64 && value.AsInt64 is >= 0 and <= uint.MaxValue;
        crc = isCrc ? (uint)value.AsInt64 : 0;
        return isCrc;
    }

    private static long Sum(StoredEntry entry, string at, string day)
    {
        string tools = string.Join('\t', entry.Tools);
        return Sum(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{entry.Seq}\n{entry.Line}\n{at}\n{day}\n{entry.Kind}\n{tools}\n{entry.LineCrc}\n{entry.Body}"
            )
        );
    }

    private static long Sum(DocumentMark mark) => Sum($"{mark.Shop}\n{mark.Seq}\n{mark.Crc}");

    private static long Sum(string text)
    {
        byte[] bytes = ArrayPool<byte>.Shared.Rent(Encoding.UTF8.GetMaxByteCount(text.Length));
        uint sum = Crc32.HashToUInt32(bytes.AsSpan(0, Encoding.UTF8.GetBytes(text, bytes)));
        ArrayPool<byte>.Shared.Return(bytes);
        return sum;
    }
}
