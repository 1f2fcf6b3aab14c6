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
/// <param name="Shop">The shop they were worked out in.</param>
/// <param name="Members">The gauge marks of the kind there, in the order in which their tools were added.</param>
/// <param name="From">The number of the first reading that was asked for.</param>
/// <param name="UpTo">The number of the last that was scored.</param>
/// <param name="Scores">The scores in the order of the ledger.</param>
internal sealed record KindScores(
    Shop Shop,
    ImmutableArray<GaugeHistory> Members,
    long From,
    long UpTo,
    ImmutableArray<ReadingScore> Scores
)
{
    // so far out one reading says no more than that the model was wrong
    private const double Least = 1e-9;

    /// <summary>Scores the readings of a kind.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="members">The gauge marks of the kind, in the order in which their tools were added.</param>
    /// <param name="from">The number of the first reading that is asked for.</param>
    /// <param name="enough">After so many that lay inside the rest is not asked for.</param>
    /// <param name="before">The scores of another state of the shop, null for none: those that hold are taken over.</param>
    /// <returns>The scores.</returns>
    internal static KindScores Of(
        Shop shop,
        ImmutableArray<GaugeHistory> members,
        long from,
        int enough,
        KindScores? before
    )
    {
        long upTo = before is not null && before.From <= from ? before.HoldUpTo(shop, members) : 0;
        List<ReadingScore> scores =
        [
            .. (before?.Scores ?? []).Where(score => score.Entry >= from && score.Entry <= upTo),
        ];
        int inside = scores.Count(KeptRanges.IsInside);
        List<WearHistory> then = [];
        long last = 0;
        KindPool? pool = null;
        foreach (
            (int at, GaugeReading reading) in members
                .SelectMany((member, at) => member.Readings.Where(each => !each.IsStart).Select(each => (at, each)))
                .Where(each => each.each.Entry >= from && each.each.Entry > upTo)
                .OrderBy(each => each.each.Entry)
                .TakeWhile(_ => inside < enough)
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
            if (!WasSaid(then[at], reading))
            {
                continue;
            }

            (KindPool now, int[] place) = KindPool.Of(then, pool);
            pool?.Dispose();
            pool = now;
            scores.Add(new(reading.Entry, Score(now.Tools[place[at]], now, then[at], reading)));
            inside += KeptRanges.IsInside(scores[^1]) ? 1 : 0;
        }

        pool?.Dispose();
        return new(shop, members, from, inside < enough ? long.MaxValue : Math.Max(upTo, last), [.. scores]);
    }

    /// <summary>The number of the last entry up to which nothing differs that a score rests on.</summary>
    private long HoldUpTo(Shop later, ImmutableArray<GaugeHistory> members)
    {
        if (
            !later.Settings.Said.SequenceEqual(Shop.Settings.Said)
            || !later.Series.SequenceEqual(Shop.Series)
            || !later.Patterns.SequenceEqual(Shop.Patterns)
        )
        {
            return 0;
        }

        long upTo = Math.Min(UpTo, Shop.Ledger.Count);
        for (int i = 0; i < Math.Max(members.Length, Members.Length) && upTo > 0; i++)
        {
            upTo =
                i < members.Length && i < Members.Length && members[i].Tool.Id == Members[i].Tool.Id
                    ? Math.Min(upTo, Alike(Members[i], members[i]))
                    : Math.Min(upTo, Math.Min(IdAt(members, i), IdAt(Members, i)) - 1);
        }

        return upTo;
    }

    private static long IdAt(ImmutableArray<GaugeHistory> members, int i) =>
        i < members.Length ? members[i].Tool.Id : long.MaxValue;

    // a mark says nothing of wear; heats entered late change readings that stand before them
    private static long Alike(GaugeHistory one, GaugeHistory other) =>
        one.Tool.Tool != other.Tool.Tool with { Mark = one.Tool.Mark }
            ? 0
            : one.Readings.Except(other.Readings)
                .Concat(other.Readings.Except(one.Readings))
                .Select(reading => reading.Entry)
                .Append(FirstOther(one.Tool.Events, other.Tool.Events))
                .Min() - 1;

    // both in the order of the ledger
    private static long FirstOther(Entries one, Entries other)
    {
        int same = one.AsSpan().CommonPrefixLength(other.AsSpan());
        return Math.Min(NumberAt(one, same), NumberAt(other, same));
    }

    private static long NumberAt(Entries entries, int i) => i < entries.Count ? entries[i].Number : long.MaxValue;

    private static WearHistory At(Shop shop, GaugeHistory member, long entry) =>
        ShopHistories.Of(shop, member.Tool, entry).First(each => each.Gauge.Name == member.Gauge.Name).Wear;

    // not where its start was not known, or what follows it was entered before it
    private static bool WasSaid(WearHistory then, GaugeReading reading) =>
        then.LimitMm is not null
        && then.Last.StartMm is not null
        && then.Segments.Length == reading.Segment
        && then.HeatsNow <= reading.Heats + WearHistory.Rounding;

    private static double Score(PooledTool tool, KindPool pool, WearHistory then, GaugeReading reading)
    {
        Mixture mixture = new(tool.Record, TargetWeights.Of(pool, tool.Group, tool.Likelihood));
        double k = Math.Max(0, reading.Heats - then.HeatsNow);
        double above = mixture.Above(k, reading.WearMm / tool.Record.Limit, withReading: true);
        return NormalCurve.Inverse(Math.Clamp(1 - above, Least, 1 - Least));
    }
}
