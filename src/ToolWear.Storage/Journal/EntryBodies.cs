using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Text;

namespace ToolWear.Storage.Journal;

/// <summary>The entries of a line as JSON objects, letter for letter as they were handed in. Immutable.</summary>
/// <remarks>
/// They are kept as the journal has them, in UTF-8: whoever folds a shop of a million entries needs no text of them.
/// Equality is letter for letter.
/// </remarks>
[CollectionBuilder(typeof(EntryBodies), nameof(Of))]
public sealed class EntryBodies : IReadOnlyList<string>, IEquatable<EntryBodies>
{
    private readonly byte[] _text;
    private readonly ImmutableArray<Range> _places;

    /// <summary>Takes entries out of a text.</summary>
    /// <param name="text">Valid UTF-8 that nobody changes any more.</param>
    /// <param name="places">Where each entry stands in it.</param>
    internal EntryBodies(byte[] text, ImmutableArray<Range> places)
    {
        _text = text;
        _places = places;
    }

    /// <inheritdoc />
    public int Count => _places.Length;

    /// <inheritdoc />
    public string this[int index] => Encoding.UTF8.GetString(Utf8(index));

    /// <summary>Entries in order.</summary>
    /// <param name="bodies">JSON objects without half letters.</param>
    /// <returns>The entries.</returns>
    public static EntryBodies Of(ReadOnlySpan<string> bodies)
    {
        var text = new List<byte>();
        var places = ImmutableArray.CreateBuilder<Range>(bodies.Length);
        foreach (string body in bodies)
        {
            int start = text.Count;
            text.AddRange(JournalFormat.Utf8.GetBytes(body));
            places.Add(start..text.Count);
        }
        return new EntryBodies([.. text], places.MoveToImmutable());
    }

    /// <summary>An entry in UTF-8.</summary>
    /// <param name="index">Which, from 0.</param>
    /// <returns>Its bytes.</returns>
    public ReadOnlySpan<byte> Utf8(int index) => _text.AsSpan(_places[index]);

    /// <inheritdoc />
    public IEnumerator<string> GetEnumerator()
    {
        for (int i = 0; i < Count; i++)
        {
            yield return this[i];
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc />
    public bool Equals(EntryBodies? other)
    {
        bool isSame = other is not null && Count == other.Count;
        for (int i = 0; isSame && i < Count; i++)
        {
            isSame = Utf8(i).SequenceEqual(other!.Utf8(i));
        }
        return isSame;
    }

    /// <inheritdoc />
    public override bool Equals(object? obj) => Equals(obj as EntryBodies);

    /// <inheritdoc />
    public override int GetHashCode() => Count;
}
