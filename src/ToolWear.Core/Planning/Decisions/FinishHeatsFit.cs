using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning.Decisions;

// hf(h) = hmin + A exp(-h/s): for each s of a grid the least squares of hmin and A, which are linear, neither below zero;
// the s with the least sum of squares, then finer about it
/// <summary>How finish heats a head fall with the rough heats before them, as the sessions say that differ in both.</summary>
/// <param name="Least">hmin, the finish heats that are always needed.</param>
/// <param name="More">A, how many more without any rough heat.</param>
/// <param name="Helps">s, the rough heats that take two thirds of those away.</param>
/// <param name="Sessions">How many sessions it rests on.</param>
/// <param name="SdOfRest">Standard deviation of what it does not explain, heats a head.</param>
public sealed record FinishHeatsFit(double Least, double More, double Helps, int Sessions, double SdOfRest) : Estimated
{
    // three figures from fewer would fit anything
    private const int LeastSessions = 5;
    private const int LeastDifferent = 3;
    private const double LeastHelps = 0.2;
    private const double MostHelps = 20;

    /// <summary>Fits the curve to sessions.</summary>
    /// <param name="sessions">Rough heats a head h and finish heats a head of each session.</param>
    /// <returns>A <see cref="FinishHeatsFit"/>, or <see cref="NotEnoughData"/>: then the figures have to be given.</returns>
    public static Estimated Of(IReadOnlyCollection<(double Rough, double Finish)> sessions)
    {
        int different = sessions.Select(each => Math.Round(each.Rough, 1)).Distinct().Count();
        if (sessions.Count < LeastSessions)
        {
            return new NotEnoughData(sessions.Count, LeastSessions, "too few sessions tell rough and finish heats");
        }

        if (different < LeastDifferent)
        {
            return new NotEnoughData(different, LeastDifferent, "the sessions hardly differ in rough heats a head");
        }

        double best = Enumerable
            .Range(0, 81)
            .Select(i => LeastHelps * Math.Pow(MostHelps / LeastHelps, i / 80.0))
            .MinBy(s => Fit(sessions, s).Squares);
        double s = Enumerable
            .Range(-40, 81)
            .Select(i => Math.Clamp(best * Math.Exp(0.06 * i / 40), LeastHelps, MostHelps))
            .MinBy(each => Fit(sessions, each).Squares);
        (double hmin, double A, double squares) = Fit(sessions, s);
        return A <= 0
            ? new NotEnoughData(sessions.Count, sessions.Count + 1, "in the records rough heats save no finish heats")
            : new FinishHeatsFit(hmin, A, s, sessions.Count, Math.Sqrt(squares / Math.Max(1, sessions.Count - 3)));
    }

    /// <summary>Gathers the sessions of a pattern: heats a head on rough and on finish drifts.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="pattern">The pattern.</param>
    /// <returns>One for each session that tells both.</returns>
    public static ImmutableArray<(double Rough, double Finish)> InSessions(Shop shop, PatternDescribed pattern)
    {
        Dictionary<string, double> At(Place place) =>
            pattern
                .Stages.Where(stage =>
                    stage.Place == place && stage.Form is { } form && stage.Work == form.MainWork(place)
                )
                .SelectMany(stage => HeatsAHead.BySession(shop, pattern, stage))
                .GroupBy(each => each.Session, StringComparer.Ordinal)
                .ToDictionary(each => each.Key, each => each.Sum(heats => heats.HeatsAHead), StringComparer.Ordinal);
        Dictionary<string, double> finish = At(Place.Finish);
        return
        [
            .. At(Place.Rough)
                .Where(each => finish.ContainsKey(each.Key))
                .Select(each => (each.Value, finish[each.Key])),
        ];
    }

    private static (double Least, double More, double Squares) Fit(
        IReadOnlyCollection<(double Rough, double Finish)> sessions,
        double s
    )
    {
        double[] x = [.. sessions.Select(each => Math.Exp(-each.Rough / s))];
        double[] y = [.. sessions.Select(each => each.Finish)];
        double meanX = x.Average();
        double meanY = y.Average();
        double sxx = x.Sum(each => (each - meanX) * (each - meanX));
        double sxy = x.Zip(y, (a, b) => (a - meanX) * (b - meanY)).Sum();
        double A = sxx > 0 ? Math.Max(0, sxy / sxx) : 0;
        double hmin = meanY - (A * meanX);
        if (hmin < 0)
        {
            hmin = 0;
            A = x.Zip(y, (a, b) => a * b).Sum() / x.Sum(a => a * a);
        }

        return (hmin, A, x.Zip(y, (a, b) => Math.Pow(b - hmin - (A * a), 2)).Sum());
    }
}
