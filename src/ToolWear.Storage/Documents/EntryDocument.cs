using LiteDB;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Documents;

/// <summary>Maps lines of the journal and the mark to documents and back, by hand.</summary>
/// <remarks>
/// <code>
/// { _id: 7, day: "2026-11-24", kind: "heats-worked", v: 1, entry: { tool: "H5", heats: 3, ... },
///   at: "2026-11-24T22:42:46.123Z", line: 7, crc: 2309737967, body: "{\"kind\":..." }
/// </code>
/// kind, v and entry are the fields of the entry, for other programs to read. The rest makes the line again letter for
/// letter: line is the number of its first entry, crc its checksum, which proves it. The database has no checksums of its
/// own: what a flipped bit does is found by comparing with the journal.
/// </remarks>
internal static class EntryDocument
{
    /// <summary>The documents of a line's entries.</summary>
    /// <param name="line">A line.</param>
    /// <returns>One for each, in order.</returns>
    internal static IEnumerable<BsonDocument> Of(JournalLine line)
    {
        for (int i = 0; i < line.Bodies.Count; i++)
        {
            string body = line.Bodies[i];
            var document = new BsonDocument { ["_id"] = line.Seq + i, ["day"] = JournalFormat.DayText(line.Day) };
            foreach ((string name, BsonValue value) in JsonSerializer.Deserialize(body).AsDocument)
            {
                document[name] = value;
            }
            document["at"] = JournalFormat.AtText(line.At);
            document["line"] = line.Seq;
            document["crc"] = (long)line.Crc;
            document["body"] = body;
            yield return document;
        }
    }

    /// <summary>The line whose entries documents are, not yet proven.</summary>
    /// <param name="entries">The documents, in order.</param>
    /// <returns>The line, or null where they are not written as documents are.</returns>
    internal static JournalLine? LineOf(IReadOnlyList<BsonDocument> entries) =>
        entries is [{ } first, ..]
        && entries.All(entry => entry["body"].IsString)
        && first["_id"].IsInt64
        && TryCrc(first["crc"], out uint crc)
        && JournalFormat.TryAt(Utf8(first["at"]), out DateTimeOffset at)
        && JournalFormat.TryDay(Utf8(first["day"]), out DateOnly day)
            ? new JournalLine(first["_id"].AsInt64, at, day, [.. entries.Select(entry => entry["body"].AsString)], crc)
            : null;

    /// <summary>Whether two documents say the same in the same words.</summary>
    /// <param name="one">A document.</param>
    /// <param name="other">Another.</param>
    /// <returns>True where they are written with the same bytes.</returns>
    internal static bool AreSame(BsonDocument one, BsonDocument other) =>
        BsonSerializer.Serialize(one).AsSpan().SequenceEqual(BsonSerializer.Serialize(other));

    /// <summary>The document of the mark.</summary>
    /// <param name="mark">A mark.</param>
    /// <returns>Its document.</returns>
    internal static BsonDocument Of(DocumentMark mark) =>
        new()
        {
            ["_id"] = 1L,
            ["shop"] = mark.Shop,
            ["seq"] = mark.Seq,
            ["crc"] = (long)mark.Crc,
        };

    /// <summary>Reads the document of the mark and compares it with the last entry.</summary>
    /// <param name="mark">The document of the mark.</param>
    /// <param name="find">The document of an entry by its number, null where there is none.</param>
    /// <returns>The mark.</returns>
    /// <exception cref="InvalidDataException">They do not say the same: one of them is not as it was written.</exception>
    internal static DocumentMark MarkOf(BsonDocument mark, Func<long, BsonDocument?> find) =>
        mark["shop"].IsString
        && mark["seq"].IsInt64
        && TryCrc(mark["crc"], out uint crc)
        && (mark["seq"].AsInt64 == 0 || find(mark["seq"].AsInt64)?["crc"] == mark["crc"])
            ? new DocumentMark(mark["shop"].AsString, mark["seq"].AsInt64, crc)
            : throw new InvalidDataException("the mark and the last entry do not say the same");

    private static byte[] Utf8(BsonValue text) =>
        text.IsString ? System.Text.Encoding.UTF8.GetBytes(text.AsString) : [];

    private static bool TryCrc(BsonValue value, out uint crc)
    {
        bool isCrc = value.IsInt64 && value.AsInt64 is >= 0 and <= uint.MaxValue;
        crc = isCrc ? (uint)value.AsInt64 : 0;
        return isCrc;
    }
}
