namespace ToolWear.Core.Wear.Sisters;

/// <summary>Remembers what was worked out last: what did not change is not worked out again.</summary>
/// <remarks>Values belong to immutable keys, so what is remembered cannot be stale.</remarks>
/// <param name="most">How many values are remembered, those asked for last.</param>
internal sealed class Memo<TKey, TValue>(int most)
    where TKey : notnull
{
    private readonly Lock gate = new();
    private readonly LinkedList<(TKey Key, TValue Value)> newest = new();
    private readonly Dictionary<TKey, LinkedListNode<(TKey Key, TValue Value)>> known = [];

    /// <summary>The value of a key, remembered or made; two threads that ask at once may both make it.</summary>
    /// <param name="key">The key.</param>
    /// <param name="make">Makes the value.</param>
    /// <returns>The value.</returns>
    internal TValue Get(TKey key, Func<TKey, TValue> make)
    {
        lock (gate)
        {
            if (known.TryGetValue(key, out LinkedListNode<(TKey Key, TValue Value)>? node))
            {
                newest.Remove(node);
                newest.AddFirst(node);
                return node.Value.Value;
            }
        }

        TValue made = make(key);
        lock (gate)
        {
            if (!known.ContainsKey(key))
            {
                known.Add(key, newest.AddFirst((key, made)));
            }
        }

        Keep(most);
        return made;
    }

    /// <summary>Forgets all but the values asked for last.</summary>
    /// <param name="count">How many are kept.</param>
    internal void Keep(int count)
    {
        lock (gate)
        {
            while (newest.Count > count)
            {
                known.Remove(newest.Last!.Value.Key);
                newest.RemoveLast();
            }
        }
    }

    /// <summary>Forgets everything, for tests that ask whether it makes no difference.</summary>
    internal void Forget()
    {
        lock (gate)
        {
            newest.Clear();
            known.Clear();
        }
    }
}
