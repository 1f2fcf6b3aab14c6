using System.Collections.Immutable;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Documents;

/// <summary>One accepted entry with all that its line of the journal says about it.</summary>
/// <param name="Seq">Its number, 1 or more.</param>
/// <param name="Line">The number of the first entry of its line: of itself, unless it is part of a batch.</param>
/// <param name="At">When it was accepted, in UTC.</param>
/// <param name="Day">The shop's day.</param>
/// <param name="Kind">The word of its kind.</param>
/// <param name="Tools">The marks of the tools it concerns, as they were then.</param>
/// <param name="Body">The entry, letter for letter.</param>
/// <param name="LineCrc">The checksum of its line.</param>
public sealed record StoredEntry(
    long Seq,
    long Line,
    DateTimeOffset At,
    DateOnly Day,
    string Kind,
    ImmutableArray<string> Tools,
    string Body,
    uint LineCrc
)
{
    /// <summary>Whether two entries say the same, letter for letter.</summary>
    /// <param name="other">Another entry.</param>
    /// <returns>True where every part is equal.</returns>
    public bool Equals(StoredEntry? other) =>
        other is not null
        && (Seq, Line, At, Day, Kind, Body, LineCrc)
            == (other.Seq, other.Line, other.At, other.Day, other.Kind, other.Body, other.LineCrc)
        && Tools.AsSpan().SequenceEqual(other.Tools.AsSpan());

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Seq, LineCrc);

    /// <summary>The entries of a line, in order.</summary>
    /// <param name="line">A line.</param>
    /// <param name="settings">What the store was told.</param>
    /// <returns>One for each.</returns>
    internal static IEnumerable<StoredEntry> Of(JournalLine line, StoreSettings settings)
    {
        for (int i = 0; i < line.Bodies.Count; i++)
        {
            yield return new StoredEntry(
                line.Seq + i,
                line.Seq,
                line.At,
                line.Day,
                EntryText.KindOf(line.Bodies.Utf8(i), settings.Kinds),
                settings.ToolsOf(line.Bodies.Utf8(i)),
                line.Bodies[i],
                line.Crc
            );
        }
    }
}
