using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>Remembers the forecasts of the kinds asked for last.</summary>
internal static class KindMemo
{
    // a shop's kinds and as many of the state before; each holds some hundred kilobytes at most
    private const int Most = 96;
    private static readonly Memo<Kind, SisterForecasts> Remembered = new(Most);

    /// <summary>Forgets everything.</summary>
    internal static void Forget() => Remembered.Forget();

    /// <summary>The forecasts of a kind, remembered or made.</summary>
    /// <param name="histories">The histories of one kind, in their order.</param>
    /// <param name="make">Makes the forecasts.</param>
    /// <returns>The forecasts.</returns>
    internal static SisterForecasts Get(
        IReadOnlyList<WearHistory> histories,
        Func<IReadOnlyList<WearHistory>, SisterForecasts> make
    ) => Remembered.Get(new Kind([.. histories]), kind => make(kind.Histories));

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
