using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace ToolWear.Core.Shops;

/// <summary>What a shop keeps by a key. Immutable, but for the one that is open while a whole ledger is folded.</summary>
/// <remarks>
/// An open shelf is changed in place: it belongs to one fold, which shuts it before anybody sees the shop. So a fold does
/// not copy a path of the tree for each entry.
/// </remarks>
/// <typeparam name="TKey">The key.</typeparam>
/// <typeparam name="TValue">What is kept.</typeparam>
internal sealed class Shelf<TKey, TValue>
    where TKey : notnull
{
    private readonly ImmutableSortedDictionary<TKey, TValue> shut;
    private readonly Dictionary<TKey, TValue>? open;

    private Shelf(ImmutableSortedDictionary<TKey, TValue> shut, Dictionary<TKey, TValue>? open)
    {
        this.shut = shut;
        this.open = open;
    }

    /// <summary>All of it, in the order of the keys; of a shelf that is shut.</summary>
    public ImmutableSortedDictionary<TKey, TValue> All =>
        open is null ? shut : throw new InvalidOperationException("The shelf is still open.");

    /// <summary>What stands under a key that is there.</summary>
    /// <param name="key">The key.</param>
    public TValue this[TKey key] => open is null ? shut[key] : open[key];

    /// <summary>An empty shelf.</summary>
    /// <param name="order">The order of the keys, null for their own.</param>
    /// <returns>The shelf, shut.</returns>
    public static Shelf<TKey, TValue> Empty(IComparer<TKey>? order = null) =>
        new(ImmutableSortedDictionary.Create<TKey, TValue>(order), null);

    /// <summary>A shelf of its own with the same on it, to be changed in place.</summary>
    /// <returns>The shelf, open.</returns>
    public Shelf<TKey, TValue> Opened() => new(shut, new(All));

    /// <summary>The shelf as it is now, never changed again.</summary>
    /// <returns>The shelf, shut.</returns>
    public Shelf<TKey, TValue> Shut() =>
        open is null ? this : new(open.ToImmutableSortedDictionary(shut.KeyComparer), null);

    /// <summary>Whether something stands under a key.</summary>
    /// <param name="key">The key.</param>
    /// <returns>True where it does.</returns>
    public bool Has(TKey key) => TryFind(key, out _);

    /// <summary>Finds what stands under a key.</summary>
    /// <param name="key">The key.</param>
    /// <param name="value">What stands there.</param>
    /// <returns>False where nothing does.</returns>
    public bool TryFind(TKey key, [MaybeNullWhen(false)] out TValue value) =>
        open is null ? shut.TryGetValue(key, out value) : open.TryGetValue(key, out value);

    /// <summary>The shelf with something under a key, in the place of what stood there.</summary>
    /// <param name="key">The key.</param>
    /// <param name="value">What is to stand there.</param>
    /// <returns>The shelf after it: the same one where it is open.</returns>
    public Shelf<TKey, TValue> With(TKey key, TValue value)
    {
        if (open is null)
        {
            return new(shut.SetItem(key, value), null);
        }

        open[key] = value;
        return this;
    }
}
