using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Verdicts;

namespace ToolWear.Core.Planning;

/// <summary>The lives of the shop's tools, in service and planned, for its plans.</summary>
public sealed class ShopLives
{
    /// <summary>How many draws a plan rests on: a certainty of 0.9 is good to about 0.005.</summary>
    public const int Draws = 4000;

    private const int Seed = 20_260_501;

    // streams of new tools, away from the numbers of tools, which are those of their entries
    private const long FirstNew = 1L << 40;

    private readonly ShopForecasts forecasts;
    private readonly Dictionary<ToolPlace, PlaceLives> places = [];
    private readonly Dictionary<string, (List<WearHistory> Histories, DrawnLives? Lives)> kinds = new(
        StringComparer.Ordinal
    );

    /// <summary>Prepares the lives of a shop; what is asked for is worked out once.</summary>
    /// <param name="forecasts">The shop with its forecasts.</param>
    public ShopLives(ShopForecasts forecasts) => this.forecasts = forecasts;

    /// <summary>The shop.</summary>
    public Shop Shop => forecasts.Shop;

    /// <summary>The tools of a place that a plan counts on: in service, not out.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The tools in the order of the rack, with a word where nothing can be counted on.</returns>
    public ImmutableArray<CountedTool> InService(ToolPlace place) =>
        [
            .. forecasts
                .InService.Where(tool => ToolPlace.Of(tool.Tool.Tool) == place)
                .Select(tool => new CountedTool(tool, NotCounted(tool))),
        ];

    /// <summary>The drawn lives of a place.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The lives.</returns>
    public PlaceLives At(ToolPlace place)
    {
        if (!places.TryGetValue(place, out PlaceLives? lives))
        {
            ImmutableArray<WearHistory> planned = Planned(place);
            // all that is drawn for one place comes from the same draws of its kinds
            Register(planned);
            (DrawnLives Lives, int At)[] fresh = [.. planned.Select(Find)];
            double[][] inService =
            [
                .. InService(place)
                    .Where(tool => tool.WhyNot is null)
                    .Select(tool =>
                        Earliest(tool.Forecast.Gauges.Select(each => Find(each.History.Wear)), tool.Forecast.Tool.Id)
                    )
                    .OfType<double[]>(),
            ];
            lives = new PlaceLives(
                inService,
                n => Earliest(fresh, FirstNew + n) ?? throw new InvalidOperationException($"no life for a new {place}"),
                Draws
            );
            places[place] = lives;
        }

        return lives;
    }

    private string? NotCounted(ToolForecast tool) =>
        forecasts.VerdictOf(tool) is { Verdict: Verdict.Out } judged ? judged.Why
        : tool.Gauges.All(gauge => gauge.Forecast is null)
            ? "nothing can be said of its heats left: measure it, and set the size at which it is done"
        : null;

    /// <summary>The histories of a tool still to be made: the gauge marks of the last one made there, else of its usual kind.</summary>
    private ImmutableArray<WearHistory> Planned(ToolPlace place)
    {
        // an eye with no series yet is like the others of its place, one with no tool yet like their tools
        Series? series =
            (place.Eye is { } eye ? Shop.Series.GetValueOrDefault(new SeriesKey(eye, place.Place, place.Form)) : null)
            ?? Shop.Series.Values.LastOrDefault(each => each.Place == place.Place && each.Form.Name == place.Form);
        ToolForecast? like =
            LastMade(tool => ToolPlace.Of(tool) == place)
            ?? LastMade(tool => tool.Place == place.Place && tool.Form.Name == place.Form);
        string steel = series?.Steel ?? like?.Tool.Tool.Steel ?? "unknown steel";
        double? guess = series?.GuessHeats ?? like?.Tool.Tool.GuessHeats;
        IEnumerable<(string Gauge, double Limit, double Resolution)> gauges = like is null
            ? [(UsualGauge(place), 1, 0)]
            : like
                .Gauges.Where(gauge => gauge.History.Wear.LimitMm is not null)
                .Select(gauge =>
                    (gauge.History.Gauge.Name, LimitOfNew(gauge.History), gauge.History.Wear.ResolutionMm)
                );
        return
        [
            .. gauges.Select(gauge =>
            {
                string word = place.Place == Place.None ? "" : Places.Words.Word(place.Place);
                string kind = string.Join(' ', new[] { place.Form, word, gauge.Gauge }.Where(each => each.Length > 0));
                return new WearHistory(
                    kind,
                    $"{kind} {steel}",
                    "",
                    gauge.Gauge,
                    gauge.Limit,
                    gauge.Resolution,
                    guess ?? GuessedLife.Assumed,
                    guess is null,
                    0,
                    []
                );
            }),
        ];
    }

    private ToolForecast? LastMade(Func<Tool, bool> belongs) =>
        forecasts
            .All.Values.Where(tool => belongs(tool.Tool.Tool))
            .LastOrDefault(tool => tool.Gauges.Any(gauge => gauge.History.Wear.LimitMm is not null));

    // wear is reckoned in shares of the limit, so any limit does where none is known
    private static double LimitOfNew(GaugeHistory history) => history.Wear.LimitMm ?? 1;

    private static string UsualGauge(ToolPlace place) =>
        ToolForms.TryFind(place.Form, out ToolForm form, out _) && !form.UsualGaugeMarks.IsEmpty
            ? form.UsualGaugeMarks[0].Name
            : "width";

    /// <summary>The heats of a tool in each draw: the earliest end over its gauge marks; null where none speaks.</summary>
    private static double[]? Earliest(IEnumerable<(DrawnLives Lives, int At)> gauges, long stream)
    {
        double[][] ends = [.. gauges.Select(gauge => gauge.Lives?.HeatsLeft(gauge.At, stream)).OfType<double[]>()];
        return ends.Length == 0 ? null : ends.Aggregate((one, other) => [.. one.Zip(other, Math.Min)]);
    }

    private (DrawnLives Lives, int At) Find(WearHistory gauge)
    {
        Register([gauge]);
        (List<WearHistory> histories, DrawnLives? lives) = kinds[gauge.Kind];
        return (lives!, histories.IndexOf(gauge));
    }

    // a planned tool says nothing of the others, but its group may be a new one
    private void Register(ImmutableArray<WearHistory> gauges)
    {
        foreach (IGrouping<string, WearHistory> same in gauges.GroupBy(gauge => gauge.Kind, StringComparer.Ordinal))
        {
            bool isKnown = kinds.TryGetValue(same.Key, out (List<WearHistory> Histories, DrawnLives? Lives) kind);
            List<WearHistory> histories = isKnown ? kind.Histories : Histories(same.Key);
            WearHistory[] more = [.. same.Where(gauge => !histories.Contains(gauge))];
            if (!isKnown || more.Length > 0)
            {
                histories.AddRange(more);
                kinds[same.Key] = (histories, DrawnLives.Of(histories, Draws, Seed));
            }
        }
    }

    private List<WearHistory> Histories(string kind) =>
        [
            .. forecasts
                .All.Values.SelectMany(tool => tool.Gauges)
                .Select(gauge => gauge.History.Wear)
                .Where(wear => wear.Kind == kind),
        ];
}

/// <summary>A tool in service as a plan sees it.</summary>
/// <param name="Forecast">The tool with its forecasts.</param>
/// <param name="WhyNot">Why no heat of it is counted on; null where it counts.</param>
public sealed record CountedTool(ToolForecast Forecast, string? WhyNot);
