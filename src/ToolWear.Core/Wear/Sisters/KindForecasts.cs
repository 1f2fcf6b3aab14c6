using System.Collections.Concurrent;
using System.Collections.Immutable;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>One kind of a shop's tools: its histories, and what has been asked of them so far.</summary>
/// <remarks>Each answer is worked out when it is first asked for. Histories never change, so no answer can be stale.</remarks>
internal sealed class KindForecasts
{
    /// <summary>How many draws a plan rests on: a certainty of 0.9 is good to about 0.005.</summary>
    internal const int Draws = 4000;

    /// <summary>The seed of the draws.</summary>
    internal const int Seed = 20_260_501;

    private readonly Lazy<SisterForecasts> sisters;
    private readonly Lazy<DrawnLives> lives;
    private readonly ConcurrentDictionary<(int At, long Tool), float[]> left = new();

    /// <summary>A kind of which nothing has been asked.</summary>
    /// <param name="histories">Its histories; none at all leaves what is common.</param>
    /// <param name="widening">How many times as wide its ranges are as the model's.</param>
    internal KindForecasts(ImmutableArray<WearHistory> histories, double widening)
    {
        (Histories, Widening) = (histories, widening);
        sisters = new(() => SisterForecasts.Of(histories, widening));
        lives = new(() => DrawnLives.Of(histories, Draws, Seed, widening));
    }

    /// <summary>How many times as wide its ranges are as the model's, at least 1.</summary>
    internal double Widening { get; }

    /// <summary>The histories, in the order of their tools.</summary>
    internal ImmutableArray<WearHistory> Histories { get; }

    /// <summary>The forecasts, in the order of the histories.</summary>
    internal SisterForecasts Sisters => sisters.Value;

    /// <summary>The drawn lives.</summary>
    internal DrawnLives Lives => lives.Value;

    /// <summary>The heats left of one tool in each draw.</summary>
    /// <param name="at">The place of its history.</param>
    /// <param name="tool">The tool's number.</param>
    /// <returns>Weighted heats, in single precision since a plan holds many; empty where nothing can be said.</returns>
    internal float[] Left(int at, long tool) =>
        left.GetOrAdd(
            (at, tool),
            key => Array.ConvertAll(Lives.HeatsLeft(key.At, key.Tool) ?? [], heats => (float)heats)
        );
}
