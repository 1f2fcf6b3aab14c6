using System.Collections.Concurrent;
using System.Collections.Immutable;
using ToolWear.Core.Findings;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Alone;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Core.Wear.Ranges;
using ToolWear.Core.Wear.Sisters;
using ToolWear.Core.Wear.Verdicts;

namespace ToolWear.Core.Wear;

/// <summary>The forecasts and verdicts of a shop, each worked out when it is first asked for.</summary>
/// <remarks>
/// One tool asks for the kinds of its own gauge marks and nothing else, except where its verdict hangs on how overdue
/// the readings of the others are. Several threads may ask at once.
/// </remarks>
public sealed class ShopForecasts
{
    private readonly ImmutableDictionary<string, KindForecasts> before;
    private readonly ConcurrentDictionary<string, KindScores> scores;
    private readonly ConcurrentDictionary<(string Form, Place Place), Lazy<KeptRanges>> ranges = new();
    private readonly ConcurrentDictionary<string, Lazy<KindForecasts>> kinds = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<long, Lazy<ImmutableArray<GaugeHistory>>> histories = new();
    private readonly ConcurrentDictionary<long, Lazy<ToolForecast>> forecasts = new();
    private readonly ConcurrentDictionary<long, Judged> verdicts = new();
    private readonly Lazy<ILookup<string, (long Tool, int Gauge)>> members;
    private readonly Lazy<ImmutableArray<ToolForecast>> tools;
    private readonly Lazy<ImmutableHashSet<long>> overdue;

    private ShopForecasts(Shop shop, ShopForecasts? earlier)
    {
        Shop = shop;
        before = earlier?.WorkedOut() ?? ImmutableDictionary<string, KindForecasts>.Empty;
        scores = new(earlier?.scores ?? [], StringComparer.Ordinal);
        Eyes = new(this);
        members = new(() =>
            shop
                .Tools.Values.SelectMany(tool =>
                    tool.Tool.GaugeMarks.Select(
                        (gauge, i) => (Kind: ShopHistories.KindOf(tool.Tool, gauge), tool.Id, i)
                    )
                )
                .ToLookup(each => each.Kind, each => (each.Id, each.i), StringComparer.Ordinal)
        );
        tools = new(() => Rack(shop).AsParallel().AsOrdered().Select(tool => Of(tool.Id)).ToImmutableArray());
        overdue = new(() => ShopVerdicts.MostOverdue(Tools));
    }

    /// <summary>The shop.</summary>
    public Shop Shop { get; }

    /// <summary>The kinds that were asked for so far.</summary>
    internal IEnumerable<string> KindsAsked => kinds.Keys;

    /// <summary>The measured eyes beside the drifts that made them.</summary>
    public EyesMade Eyes { get; }

    /// <summary>Every tool there ever was, in the order in which they were added; scrapped ones are sisters to the others.</summary>
    public IEnumerable<ToolForecast> All => Shop.Tools.Keys.Select(Of);

    /// <summary>The tools in service, then those set aside, each in the order of the rack.</summary>
    public ImmutableArray<ToolForecast> Tools => tools.Value;

    /// <summary>The tools in service, in the order of the rack.</summary>
    public IEnumerable<ToolForecast> InService => Tools.Where(each => each.Tool.State == ToolState.InService);

    /// <summary>The forecasts of a shop; nothing is worked out yet.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="before">Those of an earlier or a supposed state: kinds whose histories are the same are taken over.</param>
    /// <returns>The forecasts.</returns>
    public static ShopForecasts Of(Shop shop, ShopForecasts? before = null) => new(shop, before);

    /// <summary>Works out what the rack shows, several kinds at a time.</summary>
    /// <param name="stop">Stops between two kinds.</param>
    /// <returns>These forecasts.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ShopForecasts WithRack(CancellationToken stop)
    {
        string[] wanted = [.. members.Value.Where(IsOnRack).Select(kind => kind.Key)];
        Parallel.ForEach(wanted, new ParallelOptions { CancellationToken = stop }, kind => _ = Kind(kind).Sisters);
        _ = Tools;
        return this;
    }

    /// <summary>One tool with its forecasts.</summary>
    /// <param name="tool">The number of a tool of the shop.</param>
    /// <returns>The tool.</returns>
    public ToolForecast Of(long tool) =>
        forecasts.GetOrAdd(tool, each => new Lazy<ToolForecast>(() => Forecast(Shop.Tools[each]))).Value;

    /// <summary>One tool with its forecasts, where these forecasts know it.</summary>
    /// <param name="tool">Its number.</param>
    /// <returns>The tool; null where it was added after the shop they are of.</returns>
    public ToolForecast? Find(long tool) => Shop.Tools.ContainsKey(tool) ? Of(tool) : null;

    /// <summary>The verdict of a tool.</summary>
    /// <param name="tool">A tool of the shop that is not scrapped.</param>
    /// <returns>Its verdict.</returns>
    public Judged VerdictOf(ToolForecast tool) =>
        verdicts.GetOrAdd(tool.Tool.Id, id => ShopVerdicts.Of(Shop, tool, () => overdue.Value.Contains(id)));

    /// <summary>The verdict of a tool, where there is one.</summary>
    /// <param name="tool">Its number.</param>
    /// <returns>The verdict; null for a tool that is scrapped here or was added after the shop they are of.</returns>
    public Judged? VerdictOf(long tool) =>
        Find(tool) is { Tool.State: not ToolState.Scrapped } known ? VerdictOf(known) : null;

    /// <summary>How the ranges held that were said before the last hundred readings of each form and place.</summary>
    public ImmutableArray<KeptRanges> Ranges =>
        [
            .. members
                .Value.Select(SortOf)
                .Distinct()
                .AsParallel()
                .Select(sort => Held(sort, 100, 1, stops: false))
                .Where(sort => sort.Readings > 0)
                .OrderBy(sort => sort.Place)
                .ThenBy(sort => sort.Form, StringComparer.Ordinal),
        ];

    /// <summary>How the ranges held that were said before the last readings of one form and place: what widens the next.</summary>
    /// <param name="form">The form's name.</param>
    /// <param name="place">The place.</param>
    /// <returns>The record of the last readings: of none where they are too few to widen anything, and of no more than show
    /// that nothing is widened.</returns>
    public KeptRanges RangesOf(string form, Place place) =>
        ranges
            .GetOrAdd(
                (form, place),
                sort => new Lazy<KeptRanges>(() => Held(sort, KeptRanges.Window, KeptRanges.Least, stops: true))
            )
            .Value;

    /// <summary>The tools that are not scrapped: in service, then set aside, each in the order of the rack.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The tools.</returns>
    internal static IEnumerable<ToolInShop> Rack(Shop shop) =>
        shop
            .Tools.Values.Where(tool => tool.State != ToolState.Scrapped)
            .OrderBy(tool => tool.State)
            .ThenBy(tool => tool, RackOrder.Instance);

    /// <summary>What the ledger says of a tool's gauge marks.</summary>
    /// <param name="tool">The tool's number.</param>
    /// <returns>One for each gauge mark, in their order.</returns>
    internal ImmutableArray<GaugeHistory> HistoriesOf(long tool) =>
        histories
            .GetOrAdd(
                tool,
                each => new Lazy<ImmutableArray<GaugeHistory>>(() => ShopHistories.Of(Shop, Shop.Tools[each]))
            )
            .Value;

    /// <summary>A kind; one that no tool is of yet has no histories.</summary>
    /// <param name="kind">Its name.</param>
    /// <returns>The kind.</returns>
    internal KindForecasts Kind(string kind) =>
        kinds.GetOrAdd(kind, each => new Lazy<KindForecasts>(() => Gather(each))).Value;

    /// <summary>The place of a gauge mark's history among those of its kind.</summary>
    /// <param name="kind">The kind's name.</param>
    /// <param name="tool">The tool's number.</param>
    /// <param name="gauge">The place of the gauge mark on the tool.</param>
    /// <returns>The place.</returns>
    internal int At(string kind, long tool, int gauge) =>
        members.Value[kind].TakeWhile(each => each != (tool, gauge)).Count();

    private bool IsOnRack(IEnumerable<(long Tool, int Gauge)> kind) =>
        kind.Any(each => Shop.Tools[each.Tool].State != ToolState.Scrapped);

    private KindForecasts Gather(string kind)
    {
        ImmutableArray<WearHistory> now =
        [
            .. members.Value[kind].Select(each => HistoriesOf(each.Tool)[each.Gauge].Wear),
        ];
        double widening =
            members.Value[kind].Any() && SortOf(members.Value[kind]) is var (form, place)
                ? RangesOf(form, place).Widening
                : 1;
        return
            before.GetValueOrDefault(kind) is { } known
            && known.Widening == widening
            && known.Histories.AsSpan().SequenceEqual(now.AsSpan())
            ? known
            : new(now, widening);
    }

    private (string Form, Place Place) SortOf(IEnumerable<(long Tool, int Gauge)> kind)
    {
        Tool first = Shop.Tools[kind.First().Tool].Tool;
        return (first.Form.Name, first.Place);
    }

    private KeptRanges Held((string Form, Place Place) sort, int last, int least, bool stops)
    {
        (string Kind, ImmutableArray<GaugeHistory> Members)[] of =
        [
            .. members
                .Value.Where(kind => SortOf(kind) == sort)
                .Select(kind =>
                    (kind.Key, ImmutableArray.CreateRange(kind.Select(each => HistoriesOf(each.Tool)[each.Gauge])))
                ),
        ];
        long[] entries =
        [
            .. of.SelectMany(kind => kind.Members)
                .SelectMany(member => member.Readings)
                .Where(reading => !reading.IsStart)
                .Select(reading => reading.Entry)
                .OrderDescending()
                .Take(last),
        ];
        int enough = stops ? KeptRanges.Enough(entries.Length) : int.MaxValue;
        List<ReadingScore> scored = [];
        foreach ((string kind, ImmutableArray<GaugeHistory> each) in entries.Length < least ? [] : of)
        {
            KindScores? known = scores.GetValueOrDefault(kind);
            scores[kind] = KindScores.Of(Shop, each, entries[^1], enough - scored.Count(KeptRanges.IsInside), known);
            scored.AddRange(scores[kind].Scores);
        }

        return KeptRanges.Of(sort.Form, sort.Place, scored);
    }

    private ImmutableDictionary<string, KindForecasts> WorkedOut() =>
        before.SetItems(
            kinds
                .Where(kind => kind.Value.IsValueCreated)
                .Select(kind => KeyValuePair.Create(kind.Key, kind.Value.Value))
        );

    private ToolForecast Forecast(ToolInShop tool)
    {
        // nothing is left of what ended; of what is in the shop sizes may say nothing any more
        string? why =
            tool.State == ToolState.Scrapped ? "it is scrapped"
            : LookedOver.Of(Shop, tool).Unread is { Found.Finding: var found }
                ? $"found {Ledger.ToolLookedOver.FindingWords.Word(found)}"
            : null;
        Dressing? dressing = why is null ? Dressing.Of(Shop, tool) : null;
        return new(
            tool,
            [.. HistoriesOf(tool.Id).Select((history, gauge) => Forecast(tool, history, gauge, why, dressing))],
            ShopHistories.UsualSession(Shop, tool)
        );
    }

    private GaugeForecast Forecast(ToolInShop tool, GaugeHistory history, int gauge, string? why, Dressing? dressing)
    {
        SisterForecasts sisters = Kind(history.Wear.Kind).Sisters;
        Estimated outlook = sisters.Tools[At(history.Wear.Kind, tool.Id, gauge)];
        return new(
            history,
            ThisToolAlone.Of(history.Wear),
            why is null
                ? outlook is SisterForecast forecast
                && dressing?.Takes.GetValueOrDefault(history.Gauge.Name) is { } takes
                && history.Wear.LimitMm - history.LastKnownWearMm is { } spare
                    ? forecast with
                    {
                        EndsAfter = takes.Heats(Math.Max(0, spare)),
                    }
                    : outlook
                : new NotEnoughData(0, 1, why),
            sisters.FollowedToItsLimit
        )
        {
            Ranges = RangesOf(tool.Tool.Form.Name, tool.Tool.Place),
            Curve = outlook as SisterForecast,
        };
    }
}
