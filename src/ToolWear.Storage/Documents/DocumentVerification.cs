using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Documents;

/// <summary>Compares all documents with the journal: each by its number, and through the two indexes.</summary>
internal static class DocumentVerification
{
    // A rotten index can leave documents out without a word. Asking every tool and day of a shop of thirty years takes a
    // second; of a larger one so many are asked that the check stays short.
    private const int MostAsked = 2000;

    /// <summary>Compares.</summary>
    /// <param name="documents">The documents.</param>
    /// <param name="journal">The entries of the journal, in order.</param>
    /// <param name="point">The end of the journal.</param>
    /// <returns>Whether they say the same.</returns>
    internal static bool Matches(LedgerDocuments documents, IEnumerable<StoredEntry> journal, JournalPoint point)
    {
        if (documents.Mark != new DocumentMark(point.Shop, point.Seq, point.Crc))
        {
            return false;
        }
        var ofTool = new Dictionary<string, int>(StringComparer.Ordinal);
        var ofDay = new Dictionary<DateOnly, int>();
        using IEnumerator<StoredEntry> stored = documents.All().GetEnumerator();
        foreach (StoredEntry entry in journal)
        {
            if (!stored.MoveNext() || !stored.Current.Equals(entry))
            {
                return false;
            }
            ofDay[entry.Day] = ofDay.GetValueOrDefault(entry.Day) + 1;
            foreach (string tool in entry.Tools.Distinct(StringComparer.Ordinal))
            {
                ofTool[tool] = ofTool.GetValueOrDefault(tool) + 1;
            }
        }
        return !stored.MoveNext()
            && ofTool.Take(MostAsked).All(tool => documents.OfTool(tool.Key).Length == tool.Value)
            && ofDay.Take(MostAsked).All(day => documents.OfDay(day.Key).Length == day.Value);
    }
}
