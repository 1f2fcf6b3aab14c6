using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>The forecasts of all tools of one kind, made together.</summary>
public sealed class SisterForecasts
{
    private const double SuspectAbove = 0.5;
    private const double FollowedFrom = 0.6;

    private SisterForecasts(ImmutableArray<Estimated> tools, bool followedToItsLimit)
    {
        Tools = tools;
        FollowedToItsLimit = followedToItsLimit;
    }

    /// <summary>A <see cref="SisterForecast"/> or the reason why there is none, in the order of the histories.</summary>
    public ImmutableArray<Estimated> Tools { get; }

    /// <summary>Whether one tool of the kind was read between 60 % of its limit and the limit. Until then each range
    /// may be too narrow, and has to say so.</summary>
    public bool FollowedToItsLimit { get; }

    /// <summary>Forecasts every tool of a kind.</summary>
    /// <remarks>A tool that is only planned can be forecast too: a history without readings at no heats.</remarks>
    /// <param name="kind">Histories of one kind, those of scrapped tools too; the order does not matter to the figures.</param>
    /// <param name="widening">How many times as wide every range is made as the model's, at least 1.</param>
    /// <returns>One forecast a history.</returns>
    /// <exception cref="ArgumentException">The histories are of more than one kind.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Ranges would become narrower.</exception>
    public static SisterForecasts Of(IReadOnlyList<WearHistory> kind, double widening = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(widening, 1);

        if (kind.Any(history => history.Kind != kind[0].Kind))
        {
            throw new ArgumentException("kinds never influence each other", nameof(kind));
        }

        bool followed = kind.Any(WasFollowed);
        Estimated?[] missing = [.. kind.Select(Missing)];
        if (!missing.Contains(null))
        {
            return new([.. missing!], followed);
        }

        (KindPool pool, int[] place) = KindPool.Of(kind);
        using KindPool held = pool;
        KindTraits traits = TraitSums.Of(pool);
        double[] usual = [.. Enumerable.Range(0, pool.Groups).Select(g => Math.Exp(TargetWeights.MeanMu(pool, g)))];
        int taught = kind.Count(history => history.Teaches);
        ImmutableArray<Estimated> tools =
        [
            .. kind.Select(
                (history, i) =>
                    missing[i]
                    ?? (
                        Of(pool, place[i], history, traits, widening) with
                        {
                            UsualHeats = history.GuessHeats * usual[pool.Tools[place[i]].Group],
                            Teachers = taught - (history.Teaches ? 1 : 0),
                        }
                    )
            ),
        ];
        return new(tools, followed);
    }

    /// <summary>Forecasts tools of any number of kinds, several kinds at a time.</summary>
    /// <param name="histories">The histories in any order.</param>
    /// <param name="stop">Stops between two kinds.</param>
    /// <returns>The forecasts by kind; inside a kind in the order of its histories.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ImmutableDictionary<string, SisterForecasts> OfAll(
        IEnumerable<WearHistory> histories,
        CancellationToken stop = default
    )
    {
        (string Kind, WearHistory[] Tools)[] kinds =
        [
            .. histories
                .GroupBy(history => history.Kind, StringComparer.Ordinal)
                .Select(kind => (kind.Key, kind.ToArray())),
        ];
        SisterForecasts[] forecasts = new SisterForecasts[kinds.Length];
        Parallel.For(
            0,
            kinds.Length,
            new ParallelOptions { CancellationToken = stop },
            i => forecasts[i] = Of(kinds[i].Tools)
        );
        return kinds
            .Zip(forecasts)
            .ToImmutableDictionary(kind => kind.First.Kind, kind => kind.Second, StringComparer.Ordinal);
    }

    private static NotEnoughData? Missing(WearHistory history) =>
        (history.LimitMm, history.Last.StartMm) switch
        {
            (null, _) when !history.IsByHeatsAlone => new NotEnoughData(0, 1, "no size is set at which it is worn out"),
            (_, null) => new NotEnoughData(0, 1, "its size after the last rework is not known"),
            _ => null,
        };

    private static SisterForecast Of(KindPool pool, int target, WearHistory history, KindTraits traits, double widening)
    {
        PooledTool tool = pool.Tools[target];
        Mixture mixture = new(tool.Record, TargetWeights.Of(pool, tool.Group, tool.Likelihood));
        double start = history.Last.StartMm!.Value;
        return new SisterForecast(mixture, start, traits, Suspect(history, mixture.Gross), widening);
    }

    private static ImmutableArray<SuspectReading> Suspect(WearHistory history, double[] gross) =>
        [
            .. history
                .Segments.SelectMany((segment, s) => segment.Readings.Select((_, j) => (s, j)))
                .Zip(gross, (at, chance) => new SuspectReading(at.s, at.j, chance))
                .Where(reading => reading.Chance > SuspectAbove),
        ];

    private static bool WasFollowed(WearHistory history) =>
        history.LimitMm is { } limit
        && history.Segments.Any(segment =>
            segment.Readings.Any(reading => reading.WearMm >= FollowedFrom * limit && reading.WearMm <= limit)
        );
}
