using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>Remembers the forecasts of the kinds asked for last: what did not change is not worked out again.</summary>
/// <remarks>A forecast belongs to the immutable histories it was made from, so what is remembered cannot be stale.</remarks>
internal static class KindMemo
{
    // a shop's kinds and as many of the state before; each holds some hundred kilobytes at most
    private const int Most = 96;
    private static readonly Lock Gate = new();
    private static readonly LinkedList<(Kind Kind, SisterForecasts Forecasts)> Newest = new();
    private static readonly Dictionary<Kind, LinkedListNode<(Kind Kind, SisterForecasts Forecasts)>> Known = [];

    /// <summary>The forecasts of a kind, remembered or made.</summary>
    /// <param name="histories">The histories of one kind, in their order.</param>
    /// <param name="make">Makes the forecasts.</param>
    /// <returns>The forecasts.</returns>
    internal static SisterForecasts Get(
        IReadOnlyList<WearHistory> histories,
        Func<IReadOnlyList<WearHistory>, SisterForecasts> make
    )
    {
        Kind kind = new([.. histories]);
        lock (Gate)
        {
            if (Known.TryGetValue(kind, out LinkedListNode<(Kind Kind, SisterForecasts Forecasts)>? node))
            {
                Newest.Remove(node);
                Newest.AddFirst(node);
                return node.Value.Forecasts;
            }
        }

        SisterForecasts made = make(kind.Histories);
        lock (Gate)
        {
            if (!Known.ContainsKey(kind))
            {
                Known.Add(kind, Newest.AddFirst((kind, made)));
            }

            if (Newest.Count > Most)
            {
                Known.Remove(Newest.Last!.Value.Kind);
                Newest.RemoveLast();
            }
        }

        return made;
    }

    private readonly struct Kind(ImmutableArray<WearHistory> histories) : IEquatable<Kind>
    {
        public ImmutableArray<WearHistory> Histories { get; } = histories;

        public bool Equals(Kind other) => Histories.AsSpan().SequenceEqual(other.Histories.AsSpan());

        public override bool Equals(object? obj) => obj is Kind other && Equals(other);

        public override int GetHashCode()
        {
            HashCode hash = new();
            foreach (WearHistory history in Histories)
            {
                hash.Add(history);
            }

            return hash.ToHashCode();
        }
    }
}
