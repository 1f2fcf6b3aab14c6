namespace ToolWear.Storage.Journal;

/// <summary>One line of the journal: what was accepted in one step, an entry or a batch of them.</summary>
/// <param name="Seq">The number of the first entry, 1 or more; the entries of a line are numbered on from it without gaps.</param>
/// <param name="At">When it was accepted, in UTC, to the millisecond.</param>
/// <param name="Day">The shop's day.</param>
/// <param name="Bodies">The entries; at least one.</param>
/// <param name="Crc">The line's checksum, chained to the line before it.</param>
public sealed record JournalLine(long Seq, DateTimeOffset At, DateOnly Day, EntryBodies Bodies, uint Crc)
{
    /// <summary>The number of the last entry of the line.</summary>
    public long LastSeq => Seq + Bodies.Count - 1;

    /// <summary>Whether two lines say the same; the entries are compared letter for letter.</summary>
    /// <param name="other">Another line.</param>
    /// <returns>True where every part is equal.</returns>
    public bool Equals(JournalLine? other) =>
        other is not null
        && Seq == other.Seq
        && At == other.At
        && Day == other.Day
        && Crc == other.Crc
        && Bodies.Equals(other.Bodies);

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Seq, Crc);
}
