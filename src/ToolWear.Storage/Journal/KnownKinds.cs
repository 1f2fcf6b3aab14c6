using System.Text.Json;

namespace ToolWear.Storage.Journal;

/// <summary>The kinds of entry this program can read, each with its newest version.</summary>
/// <param name="newest">The newest version known, 1 or more, by the word of the kind.</param>
public sealed class KnownKinds(IReadOnlyDictionary<string, int> newest)
{
    private readonly Dictionary<string, int> _newest = new(newest, StringComparer.Ordinal);

    /// <summary>Whether an entry can be read; an older version always can.</summary>
    /// <param name="kind">The word of the kind.</param>
    /// <param name="version">Its version.</param>
    /// <returns>False where only a newer program knows it.</returns>
    public bool Knows(string kind, int version) => _newest.TryGetValue(kind, out int known) && version <= known;

    /// <summary>The word at which a reader stands: that of a kind that is known is not made anew.</summary>
    /// <param name="reader">A reader at a string.</param>
    /// <returns>The word.</returns>
    internal string Word(ref Utf8JsonReader reader)
    {
        ReadOnlySpan<char> word = ShortText.LettersOf(reader, stackalloc char[ShortText.Room]);
        return _newest.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(word, out string? known, out _)
            ? known
            : word.ToString();
    }
}
