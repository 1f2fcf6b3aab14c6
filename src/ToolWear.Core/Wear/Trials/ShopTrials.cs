using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Core.Wear.Trials;

/// <summary>What tools of one kind can differ in.</summary>
public enum TrialBy
{
    /// <summary>The steel they are made of.</summary>
    Steel,

    /// <summary>The lubricant they were used with.</summary>
    Lubricant,

    /// <summary>The way they were cooled.</summary>
    Cooling,

    /// <summary>Who worked with them.</summary>
    Hand,
}

/// <summary>One comparison that the shop's records allow to ask for.</summary>
/// <param name="By">What the groups differ in.</param>
/// <param name="Kind">The kind of tool and gauge mark: "drift rough width".</param>
/// <param name="A">The first group.</param>
/// <param name="B">The other.</param>
/// <param name="Comparison">What came of it.</param>
public sealed record ShopTrial(TrialBy By, string Kind, string A, string B, GroupComparison Comparison);

/// <summary>Every comparison of a shop.</summary>
/// <param name="All">Those that can say something and those that cannot.</param>
public sealed record ShopTrialList(ImmutableArray<ShopTrial> All)
{
    /// <summary>Those that can say something.</summary>
    public IEnumerable<ShopTrial> Speaking =>
        All.Where(trial => trial.Comparison.Verdict != TrialVerdict.NotEnoughData);

    /// <summary>How many have too little.</summary>
    public int Silent => All.Length - Speaking.Count();
}

/// <summary>Compares steels, lubricants and ways of cooling by how long the shop's tools last.</summary>
public static class ShopTrials
{
    // a tool speaks for a lubricant that it saw in so large a share of its heats
    private const double MostlyShare = 0.8;

    /// <summary>The words of <see cref="TrialBy"/>.</summary>
    public static Vocabulary<TrialBy> ByWords { get; } =
        new(
            "--by",
            (TrialBy.Steel, "steel"),
            (TrialBy.Lubricant, "lubricant"),
            (TrialBy.Cooling, "cooling"),
            (TrialBy.Hand, "hand")
        );

    /// <summary>The shop's histories, grouped by what is compared.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="by">What is compared.</param>
    /// <returns>The histories of all tools; the group is empty where a tool saw nothing in four fifths of its heats.</returns>
    public static ImmutableArray<WearHistory> Histories(Shop shop, TrialBy by) =>
        [
            .. shop.Tools.Values.SelectMany(tool =>
                ShopHistories.Of(shop, tool).Select(each => each.Wear with { Group = Seen(shop, tool, by) ?? "" })
            ),
        ];

    /// <summary>Every comparison of two groups of one kind, whether it can say something or not.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="stop">Stops between two of them.</param>
    /// <returns>By what is compared, then by kind.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ImmutableArray<ShopTrial> Of(Shop shop, CancellationToken stop = default)
    {
        ImmutableArray<ShopTrial>.Builder trials = ImmutableArray.CreateBuilder<ShopTrial>();
        foreach (TrialBy by in Enum.GetValues<TrialBy>())
        {
            var kinds = Histories(shop, by)
                .Where(history => history.LimitMm is not null)
                .GroupBy(history => history.Kind, StringComparer.Ordinal)
                .OrderBy(kind => kind.Key, StringComparer.Ordinal);
            foreach (IGrouping<string, WearHistory> kind in kinds)
            {
                foreach ((string a, string b) in Pairs(kind))
                {
                    stop.ThrowIfCancellationRequested();
                    trials.Add(new(by, kind.Key, a, b, GroupComparison.Of([.. kind], a, b)));
                }
            }
        }

        return trials.ToImmutable();
    }

    private static IEnumerable<(string A, string B)> Pairs(IEnumerable<WearHistory> kind)
    {
        string[] groups =
        [
            .. kind.Select(history => history.Group)
                .Where(group => group.Length > 0)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];
        return groups.SelectMany((a, i) => groups.Skip(i + 1).Select(b => (a, b)));
    }

    private static string? Seen(Shop shop, ToolInShop tool, TrialBy by) =>
        by switch
        {
            TrialBy.Steel => tool.Tool.Steel ?? "unknown steel",
            TrialBy.Lubricant => Mostly(shop, tool, session => session.Care.Lubricant ?? shop.Settings.Lubricant),
            TrialBy.Cooling => Mostly(shop, tool, session => Cooling(shop, session.Care)),
            _ => Mostly(shop, tool, session => session.Hand),
        };

    private static string? Cooling(Shop shop, Care care) =>
        (care.Cooling ?? shop.Settings.Cooling) is { } cooling ? Care.CoolingWords.Word(cooling) : null;

    private static string? Mostly(Shop shop, ToolInShop tool, Func<SessionOpened, string?> what)
    {
        (string? What, double Heats)[] worked =
        [
            .. tool
                .Events.Select(each => each.What)
                .OfType<HeatsWorked>()
                .GroupBy(heats => what(shop.Sessions[heats.Session].Opened), StringComparer.Ordinal)
                .Select(group => (group.Key, group.Sum(heats => shop.Weighted(tool.Tool, heats)))),
        ];
        double all = worked.Sum(each => each.Heats);
        return worked.FirstOrDefault(each => all > 0 && each.Heats >= MostlyShare * all).What;
    }
}
