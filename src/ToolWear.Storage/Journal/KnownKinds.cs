using System.Collections.Frozen;

namespace ToolWear.Storage.Journal;

/// <summary>The kinds of entry this program can read, each with its newest version.</summary>
/// <param name="newest">The newest version known, 1 or more, by the word of the kind.</param>
public sealed class KnownKinds(IReadOnlyDictionary<string, int> newest)
{
    private readonly FrozenDictionary<string, int> _newest = newest.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Whether an entry can be read; an older version always can.</summary>
    /// <param name="kind">The word of the kind.</param>
    /// <param name="version">Its version.</param>
    /// <returns>False where only a newer program knows it.</returns>
    public bool Knows(string kind, int version) => _newest.TryGetValue(kind, out int known) && version <= known;
}
