using System.Collections.Concurrent;
using System.Collections.Immutable;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear.Core.Wear;

/// <summary>The drawn lives of the kinds asked for last: an order more, or another certainty, leaves them as they are.</summary>
/// <remarks>They belong to immutable histories, a number of draws and a seed, so what is remembered cannot be stale.</remarks>
internal sealed class RememberedLives
{
    // a shop's kinds and as many of the state before; a gauge mark drawn 4000 times takes 16 kilobytes
    private const int Most = 64;
    private static readonly Memo<(KindKey, int, int), RememberedLives> Remembered = new(Most);

    private readonly ConcurrentDictionary<(int At, long Tool), float[]> left = new();

    private RememberedLives(KindKey kind, int draws, int seed) => Lives = DrawnLives.Of(kind.Histories, draws, seed);

    /// <summary>The draws.</summary>
    internal DrawnLives Lives { get; }

    /// <summary>Forgets everything.</summary>
    internal static void Forget() => Remembered.Forget();

    /// <summary>The drawn lives of a kind, remembered or made.</summary>
    internal static RememberedLives Of(ImmutableArray<WearHistory> kind, int draws, int seed) =>
        Remembered.Get((new KindKey(kind), draws, seed), key => new RememberedLives(key.Item1, draws, seed));

    /// <summary>The heats left of one tool in each draw; empty where nothing can be said of its history.</summary>
    internal float[] Left(int at, long tool) =>
        left.GetOrAdd(
            (at, tool),
            key => Array.ConvertAll(Lives.HeatsLeft(key.At, key.Tool) ?? [], heats => (float)heats)
        );
}
