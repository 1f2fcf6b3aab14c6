using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>The histories of a kind in their order, equal where every history is.</summary>
internal readonly struct KindKey(ImmutableArray<WearHistory> histories) : IEquatable<KindKey>
{
    /// <summary>The histories.</summary>
    public ImmutableArray<WearHistory> Histories { get; } = histories;

    public bool Equals(KindKey other) => Histories.AsSpan().SequenceEqual(other.Histories.AsSpan());

    public override bool Equals(object? obj) => obj is KindKey other && Equals(other);

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
