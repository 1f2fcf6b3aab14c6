using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Documents;

/// <summary>Compares all documents with the journal: each by its number, and through the two indexes.</summary>
internal static class DocumentVerification
{
    // A rotten index can leave documents out without a word. Of a shop of thirty years every tool and day is asked; of a
    // larger one so many that the check stays short.
    private const int MostAsked = 100_000;

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
            && AreAllThere(ofTool, tool => documents.OfTool(tool).Length)
            && AreAllThere(ofDay, day => documents.OfDay(day).Length)
            && IsUnbroken(documents.Descending(int.MaxValue), point.Seq);
    }

    private static bool AreAllThere<T>(Dictionary<T, int> counts, Func<T, int> ask)
        where T : notnull
    {
        int asked = 0;
        foreach ((T key, int count) in counts)
        {
            if (asked > MostAsked)
            {
                return true;
            }
            if (ask(key) != count)
            {
                return false;
            }
            asked += count;
        }
        return true;
    }

    // the way down has pointers of its own: what is whole upwards need not be so downwards
    private static bool IsUnbroken(IEnumerable<StoredEntry> descending, long last)
    {
        long expected = last;
        foreach (StoredEntry entry in descending)
        {
            if (entry.Seq != expected)
            {
                return false;
            }
            expected--;
        }
        return expected == 0;
    }
}
