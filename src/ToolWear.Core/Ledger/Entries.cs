using System.Collections;
using System.Runtime.CompilerServices;

namespace ToolWear.Core.Ledger;

/// <summary>Entries in order. Immutable: one more gives a longer list, which shares what was there.</summary>
/// <remarks>
/// A ledger only grows at its end, so lists that follow each other share one array and adding costs the same however
/// long the list is. Who adds to a list that has been added to before gets a copy.
/// </remarks>
[CollectionBuilder(typeof(Entries), nameof(Of))]
public sealed class Entries : IReadOnlyList<Entered>
{
    private readonly Room room;

    private Entries(Room room, int count)
    {
        this.room = room;
        Count = count;
    }

    /// <summary>No entries.</summary>
    public static Entries None { get; } = new(new Room([], 0), 0);

    /// <inheritdoc />
    public int Count { get; }

    /// <summary>Whether there is none.</summary>
    public bool IsEmpty => Count == 0;

    /// <inheritdoc />
    public Entered this[int index] => AsSpan()[index];

    /// <summary>The list of given entries.</summary>
    /// <param name="entries">The entries, in order.</param>
    /// <returns>The list.</returns>
    public static Entries Of(ReadOnlySpan<Entered> entries) =>
        entries.IsEmpty ? None : new(new Room(entries.ToArray(), entries.Length), entries.Length);

    /// <summary>The entries as they lie.</summary>
    /// <returns>All of them.</returns>
    public ReadOnlySpan<Entered> AsSpan() => room.Places.AsSpan(0, Count);

    /// <summary>The list with one entry more; this one stays as it is.</summary>
    /// <param name="entered">The entry.</param>
    /// <returns>The longer list.</returns>
    public Entries Add(Entered entered)
    {
        Room next = room.TryTake(Count) ? room : room.Copied(Count);
        next.Places[Count] = entered;
        return new(next, Count + 1);
    }

    /// <summary>Whether one of the entries is such.</summary>
    /// <param name="isSuch">What is asked of each.</param>
    /// <returns>True at the first that is.</returns>
    public bool Exists(Func<Entered, bool> isSuch)
    {
        foreach (Entered each in AsSpan())
        {
            if (isSuch(each))
            {
                return true;
            }
        }

        return false;
    }

    /// <inheritdoc />
    public IEnumerator<Entered> GetEnumerator()
    {
        for (int i = 0; i < Count; i++)
        {
            yield return room.Places[i];
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>An array with room at its end, of which the first places are taken for good.</summary>
    private sealed class Room(Entered[] places, int taken)
    {
        private const int Least = 4;
        private int taken = taken;

        public Entered[] Places { get; } = places;

        /// <summary>Takes a place if it is the first free one; only one of two threads gets it.</summary>
        public bool TryTake(int place) =>
            place < Places.Length && Interlocked.CompareExchange(ref taken, place + 1, place) == place;

        public Room Copied(int count)
        {
            Entered[] larger = new Entered[Math.Max(Least, count * 2)];
            Array.Copy(Places, larger, count);
            return new Room(larger, count + 1);
        }
    }
}
