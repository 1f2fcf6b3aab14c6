namespace ToolWear.Storage.Documents;

/// <summary>How far the documents have come: written in the same transaction as the entry it names.</summary>
/// <param name="Shop">The shop's id.</param>
/// <param name="Seq">The number of the last entry that is a document, 0 before the first.</param>
/// <param name="Crc">The checksum of the line that holds this entry; of the first line before the first entry.</param>
internal sealed record DocumentMark(string Shop, long Seq, uint Crc);
