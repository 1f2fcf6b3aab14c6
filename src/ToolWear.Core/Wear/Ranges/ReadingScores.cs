using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear.Core.Wear.Ranges;

/// <summary>A reading beside the range that was said before it.</summary>
/// <param name="Entry">The number of its entry.</param>
/// <param name="Score">Where it lay in that range: the normal number as often undercut, 1.645 at the end of a 90 % range.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct ReadingScore(long Entry, double Score);

// score = Phi^-1(chance that the forecast of before gave to a lower reading); a standard normal number where the model is right
/// <summary>The last readings of a kind, each beside the forecast worked out again from the ledger up to there.</summary>
/// <remarks>What is known of the shop (limits, guesses, factors) is that of today; what happened is that of then.</remarks>
internal static class ReadingScores
{
    // so far out one reading says no more than that the model was wrong
    private const double Least = 1e-9;

    /// <summary>Scores the readings of a kind.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="members">The gauge marks of the kind, in the order in which their tools were added.</param>
    /// <param name="known">The scores of the readings up to an entry.</param>
    /// <param name="from">The number of the first reading that is asked for.</param>
    /// <param name="upTo">The entry up to which scores are known, 0 for none.</param>
    /// <returns>The scores in the order of the ledger.</returns>
    internal static ImmutableArray<ReadingScore> Of(
        Shop shop,
        ImmutableArray<GaugeHistory> members,
        ImmutableArray<ReadingScore> known,
        long from,
        long upTo
    )
    {
        List<ReadingScore> scores = [.. known.Where(score => score.Entry >= from)];
        List<WearHistory> then = [];
        long last = 0;
        KindPool? pool = null;
        foreach (
            (int at, GaugeReading reading) in members
                .SelectMany((member, at) => member.Readings.Where(each => !each.IsStart).Select(each => (at, each)))
                .Where(each => each.each.Entry >= from && each.each.Entry > upTo)
                .OrderBy(each => each.each.Entry)
        )
        {
            for (int i = 0; i < members.Length && members[i].Tool.Id < reading.Entry; i++)
            {
                ToolInShop tool = members[i].Tool;
                if (i == then.Count)
                {
                    then.Add(At(shop, members[i], reading.Entry));
                }
                else if (tool.Events.Exists(each => each.Number >= last && each.Number < reading.Entry))
                {
                    then[i] = At(shop, members[i], reading.Entry);
                }
            }

            last = reading.Entry;
            (KindPool now, int[] place) = KindPool.Of(then, pool);
            pool?.Dispose();
            pool = now;
            if (Score(now, place[at], then[at], reading) is { } score)
            {
                scores.Add(new(reading.Entry, score));
            }
        }

        pool?.Dispose();
        return [.. scores];
    }

    /// <summary>Whether what was said of a shop holds in a later one: entries were added, none of which speaks of the past.</summary>
    internal static bool Hold(Shop earlier, Shop later) =>
        earlier.Ledger.Count <= later.Ledger.Count
        && (earlier.Ledger.IsEmpty || ReferenceEquals(earlier.Ledger[^1], later.Ledger[earlier.Ledger.Count - 1]))
        && later
            .Ledger.Skip(earlier.Ledger.Count)
            .All(each =>
                each.What
                    is not (
                        EntryCrossedOut
                        or EntryCountsAgain
                        or SettingChanged
                        or PatternDescribed
                        or SeriesDescribed
                        or ToolCorrected
                    )
            );

    private static WearHistory At(Shop shop, GaugeHistory member, long entry) =>
        ShopHistories.Of(shop, member.Tool, entry).First(each => each.Gauge.Name == member.Gauge.Name).Wear;

    // none where no range was said: its start was not known, or what follows it was entered before it
    private static double? Score(KindPool pool, int place, WearHistory then, GaugeReading reading)
    {
        if (
            then.LimitMm is not { } limit
            || then.Last.StartMm is null
            || then.Segments.Length != reading.Segment
            || then.HeatsNow > reading.Heats + WearHistory.Rounding
        )
        {
            return null;
        }

        PooledTool tool = pool.Tools[place];
        Mixture mixture = new(tool.Record, TargetWeights.Of(pool, tool.Group, tool.Likelihood));
        double k = Math.Max(0, reading.Heats - then.HeatsNow);
        double above = mixture.Above(k, reading.WearMm / limit, withReading: true);
        return NormalCurve.Inverse(Math.Clamp(1 - above, Least, 1 - Least));
    }
}
