using System.Collections.Concurrent;
using System.Collections.Immutable;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Lifetimes;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Core.Wear.Ranges;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear.Core.Planning;

/// <summary>The lives of the shop's tools, in service and planned, for its plans.</summary>
public sealed class ShopLives
{
    /// <summary>How many draws a plan rests on: a certainty of 0.9 is good to about 0.005.</summary>
    public const int Draws = KindForecasts.Draws;

    // streams of new tools, away from the numbers of tools, which are those of their entries
    private const long FirstNew = 1L << 40;

    private readonly ShopForecasts forecasts;
    private readonly ILookup<ToolPlace, long> inService;
    private readonly ConcurrentDictionary<ToolPlace, Lazy<PlaceLives>> places = new();

    /// <summary>Prepares the lives of a shop; what is asked for is worked out once, by several threads where they ask.</summary>
    /// <param name="forecasts">The shop with its forecasts.</param>
    public ShopLives(ShopForecasts forecasts)
    {
        this.forecasts = forecasts;
        inService = ShopForecasts
            .Rack(forecasts.Shop)
            .Where(tool => tool.State == ToolState.InService)
            .ToLookup(tool => ToolPlace.Of(tool.Tool), tool => tool.Id);
    }

    /// <summary>The shop's forecasts.</summary>
    internal ShopForecasts Forecasts => forecasts;

    /// <summary>The shop.</summary>
    public Shop Shop => forecasts.Shop;

    /// <summary>How the ranges held that were said of its tools, by form and place.</summary>
    public ImmutableArray<KeptRanges> Ranges => forecasts.Ranges;

    /// <summary>The tools of a place that a plan counts on: in service, with no finding that forbids their use.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The tools in the order of the rack, with a word where nothing can be counted on.</returns>
    public ImmutableArray<CountedTool> InService(ToolPlace place) =>
        [.. inService[place].Select(forecasts.Of).Select(tool => new CountedTool(tool, NotCounted(tool)))];

    /// <summary>The cracks and breaks on record of tools like those of a place.</summary>
    /// <param name="place">The place.</param>
    /// <returns>What is on record; where no tool failed, plans reckon with wear alone.</returns>
    public ShopFailures Failures(ToolPlace place) => ShopFailures.Of(Shop, place.Form, place.Place, SteelOf(place));

    /// <summary>How many heats a tool of a place is guessed to last.</summary>
    /// <param name="place">The place.</param>
    /// <returns>Weighted heats, above zero.</returns>
    public double Guess(ToolPlace place) => GuessOf(place).Heats;

    private (double Heats, bool IsAssumed) GuessOf(ToolPlace place)
    {
        _ = ToolForms.TryFind(place.Form, out ToolForm form, out _);
        return (SeriesLike(place)?.GuessHeats ?? Like(place)?.Tool.GuessHeats) is { } said
            ? (said, false)
            : (Shop.Settings.GuessHeats(form, place.Place, SteelOf(place)), true);
    }

    /// <summary>The steel that a new tool of a place is made of; null where nobody said.</summary>
    internal string? SteelOf(ToolPlace place) => SeriesLike(place)?.Steel ?? Like(place)?.Tool.Steel;

    /// <summary>The drawn lives of a place.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The lives.</returns>
    public PlaceLives At(ToolPlace place) =>
        places.GetOrAdd(place, each => new Lazy<PlaceLives>(() => Draw(each))).Value;

    private PlaceLives Draw(ToolPlace place)
    {
        ImmutableArray<WearHistory> planned = Planned(place);
        DrawnNewLives[] fresh = [.. planned.Select(gauge => forecasts.Kind(gauge.Kind).Lives.NewTools(gauge))];
        DrawnCracks? cracks = DrawnCracks.Of(Failures(place), planned[0].GuessHeats, Draws, KindForecasts.Seed);
        double[][] there =
        [
            .. InService(place)
                .Where(tool => tool.WhyNot is null)
                .Select(tool => Left(tool.Forecast, cracks))
                .OfType<double[]>(),
        ];
        double most = Like(place) is { } like ? NewByDressing(like) : HeatsLeft.Most;
        double New(int n, int draw)
        {
            double heats = Math.Min(most, cracks?.Heats(draw, FirstNew + n, 0) ?? most);
            foreach (DrawnNewLives gauge in fresh)
            {
                heats = Math.Min(heats, gauge.Heats(draw, FirstNew + n));
            }

            return heats;
        }

        return new PlaceLives(there, New, Draws);
    }

    /// <summary>The heats of a tool in each draw: the earliest end over its gauge marks, or a crack; null where no gauge
    /// mark speaks.</summary>
    private double[]? Left(ToolForecast tool, DrawnCracks? cracks)
    {
        float[][] ends =
        [
            .. tool
                .Gauges.Select((gauge, i) => (gauge.History.Wear.Kind, i))
                .Select(each =>
                    forecasts.Kind(each.Kind).Left(forecasts.At(each.Kind, tool.Tool.Id, each.i), tool.Tool.Id)
                )
                .Where(end => end.Length > 0),
        ];
        if (ends.Length == 0)
        {
            return null;
        }

        double[] left = [.. ends[0]];
        foreach (float[] end in ends.AsSpan(1))
        {
            for (int i = 0; i < left.Length; i++)
            {
                left[i] = Math.Min(left[i], end[i]);
            }
        }

        // where nobody knows the heats before the records, those since stand for all
        double used = cracks is null ? 0 : ShopFailures.HeatsFromNew(Shop, tool.Tool) ?? Since(tool);
        double dressedOut = tool.Gauges.Min(gauge => gauge.Forecast?.EndsAfter ?? double.PositiveInfinity);
        for (int i = 0; i < left.Length; i++)
        {
            left[i] = Math.Min(Math.Min(left[i], dressedOut), cracks?.Heats(i, tool.Tool.Id, used) ?? HeatsLeft.Most);
        }

        return left;
    }

    // a new one is dressed like the last
    private double NewByDressing(ToolInShop like) =>
        Dressing.Of(Shop, like) is { } dressing
            ? forecasts
                .HistoriesOf(like.Id)
                .Where(each => each.Wear.LimitMm is not null)
                .Select(each => (Takes: dressing.Takes.GetValueOrDefault(each.Gauge.Name), each.Wear.LimitMm))
                .Min(each =>
                    each.Takes is { } takes
                        ? (takes with { HeatsSince = 0 }).Heats(each.LimitMm!.Value)
                        : HeatsLeft.Most
                )
            : HeatsLeft.Most;

    private double Since(ToolForecast tool) =>
        tool
            .Tool.Events.Select(each => each.What)
            .OfType<HeatsWorked>()
            .Sum(heats => Shop.Weighted(tool.Tool.Tool, heats));

    private string? NotCounted(ToolForecast tool) =>
        LookedOver.Of(Shop, tool.Tool).Forbids is { } found
            ? found.Words + (found.Next is { } next ? $", {next.Deed} it first, then it counts again" : "")
        : tool.Gauges.All(gauge => gauge.Forecast is null)
            ? "nothing can be said of its heats left: measure it, and set the size at which it is done"
        : null;

    /// <summary>The histories of a tool still to be made: the gauge marks of the last one made there, else of its usual kind.</summary>
    private ImmutableArray<WearHistory> Planned(ToolPlace place)
    {
        ToolInShop? like = Like(place);
        string steel = SteelOf(place) ?? "unknown steel";
        (double guess, bool isAssumed) = GuessOf(place);
        IEnumerable<(string Gauge, double Limit, double Resolution)> gauges = like is null
            ? [(UsualGauge(place), 1, 0)]
            : forecasts
                .HistoriesOf(like.Id)
                .Where(history => history.Wear.LimitMm is not null)
                .Select(history => (history.Gauge.Name, history.Wear.LimitMm!.Value, history.Wear.ResolutionMm));
        return
        [
            .. gauges.Select(gauge =>
            {
                string kind = ShopHistories.KindOf(place.Form, place.Place, gauge.Gauge);
                return new WearHistory(
                    kind,
                    $"{kind} {steel}",
                    "",
                    gauge.Gauge,
                    gauge.Limit,
                    gauge.Resolution,
                    guess,
                    isAssumed,
                    0,
                    []
                );
            }),
        ];
    }

    // an eye with no series yet is like the others of its place, one with no tool yet like their tools
    private Series? SeriesLike(ToolPlace place) =>
        (place.Eye is { } eye ? Shop.Series.GetValueOrDefault(new SeriesKey(eye, place.Place, place.Form)) : null)
        ?? Shop.Series.Values.LastOrDefault(each => each.Place == place.Place && each.Form.Name == place.Form);

    private ToolInShop? Like(ToolPlace place) =>
        LastMade(tool => ToolPlace.Of(tool) == place)
        ?? LastMade(tool => tool.Place == place.Place && tool.Form.Name == place.Form);

    private ToolInShop? LastMade(Func<Tool, bool> belongs) =>
        Shop
            .Tools.Values.Where(tool => belongs(tool.Tool))
            .LastOrDefault(tool => forecasts.HistoriesOf(tool.Id).Any(history => history.Wear.LimitMm is not null));

    private static string UsualGauge(ToolPlace place) =>
        ToolForms.TryFind(place.Form, out ToolForm form, out _) && !form.UsualGaugeMarks.IsEmpty
            ? form.UsualGaugeMarks[0].Name
            : "width";
}

/// <summary>A tool in service as a plan sees it.</summary>
/// <param name="Forecast">The tool with its forecasts.</param>
/// <param name="WhyNot">Why no heat of it is counted on; null where it counts.</param>
public sealed record CountedTool(ToolForecast Forecast, string? WhyNot);
