using ToolWear.Storage.Entries;
using ToolWear.Storage.Journal;

namespace ToolWear.Doors;

/// <summary>The keys of entries that were recorded with --once, each with the number of its entry.</summary>
internal sealed class OnceKeys
{
    private readonly Dictionary<string, long> numbers = new(StringComparer.Ordinal);

    /// <summary>The number recorded with a key; null where none was.</summary>
    public long? NumberOf(string key) => numbers.TryGetValue(key, out long number) ? number : null;

    /// <summary>Notes the keys of a line.</summary>
    /// <param name="line">The line.</param>
    public void Take(JournalLine line)
    {
        for (int i = 0; i < line.Bodies.Count; i++)
        {
            if (EntryFormat.OnceOf(line.Bodies.Utf8(i)) is { } key)
            {
                numbers.TryAdd(key, line.Seq + i);
            }
        }
    }
}
