namespace ToolWear.Storage.Journal;

/// <summary>A place in a journal between two lines.</summary>
/// <param name="Shop">The shop's id, 32 lower hex digits.</param>
/// <param name="Seq">The number of the last entry before it, 0 before the first.</param>
/// <param name="Crc">The checksum of the last line before it.</param>
/// <param name="Length">Where it is (bytes from the start).</param>
public sealed record JournalPoint(string Shop, long Seq, uint Crc, long Length)
{
    /// <summary>Where a reader stands.</summary>
    /// <param name="reader">A reader.</param>
    /// <returns>The place behind the last line it has read.</returns>
    internal static JournalPoint Of(JournalReader reader) =>
        new(reader.Shop, reader.LastSeq, reader.Crc, reader.WholeLength);
}
