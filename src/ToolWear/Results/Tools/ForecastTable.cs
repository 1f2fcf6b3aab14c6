using ToolWear.Core.Measure;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Alone;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Core.Wear.Sisters;
using ToolWear.Wording;
using Row = ToolWear.Results.Column<ToolWear.Results.Tools.ForecastRow>;

namespace ToolWear.Results.Tools;

/// <summary>A gauge mark with what is foreseen of it, for planned work that is so hard against the usual.</summary>
internal sealed record ForecastRow(
    WearHistory Wear,
    ThisToolAlone Alone,
    Estimated Outlook,
    bool IsFollowed,
    HeatsLeft? Whole,
    double Load = 1
)
{
    public ForecastRow(GaugeForecast gauge, double load = 1)
        : this(
            gauge.History.Wear,
            gauge.Alone,
            gauge.Outlook,
            gauge.FollowedToItsLimit,
            gauge.Forecast?.HeatsLeft,
            load
        ) => WearNowMm = gauge.WearNowMm;

    // fit knows no shop: the model's own figure
    public ForecastRow(Forecasted fitted)
        : this(
            fitted.History,
            ThisToolAlone.Of(fitted.History),
            fitted.Outlook,
            fitted.FollowedToItsLimit,
            (fitted.Outlook as Forecast)?.HeatsLeftIfNotPast
        ) { }

    public Forecast? Forecast { get; } = Outlook as Forecast;

    /// <summary>A tool without sizes has no wear in mm.</summary>
    public Forecast? Sized => Wear.LimitMm is null ? null : Forecast;

    /// <summary>The wear to be expected now, also where it says nothing of what is left.</summary>
    public double? WearNowMm { get; } = Wear.LimitMm is null ? null : (Outlook as Forecast)?.WearNowMm;

    public HeatsLeft? Left { get; } = Whole?.AtLoad(Load);

    public double? LifeHeats => Whole is { Q05: not null } whole ? whole.Q50 + Wear.HeatsNow : null;

    public double? RateMmPerHeat =>
        Sized is not null && LifeHeats > 0 ? (Wear.LimitMm - Wear.Last.StartMm) / LifeHeats : null;

    public KindTraits? Traits => (Forecast as SisterForecast)?.Traits;

    public string? NotKnown =>
        Outlook is NotEnoughData missing ? missing.Why
        : Wear.GuessIsAssumed ? Words.Guess(Wear, Outlook)
        : null;
}

/// <summary>The forecast of every gauge mark, with the pinned columns.</summary>
internal static class ForecastTable
{
    internal const string Past = "past";

    public static Columns<ForecastRow> Columns { get; } =
    [
        Row.Text("kind", null, row => row.Wear.Kind)
            .Means(
                "form, place and gauge mark: tools of a kind are forecast together, kinds never influence each other"
            ),
        Row.Text("group", null, row => row.Wear.Group)
            .Means("the kind and the steel: tools of a group share what is learned most"),
        Row.Text("tool", "Tool", row => row.Wear.Tool),
        Row.Text("gauge", "Gauge", row => row.Wear.Gauge),
        Row.Number("heats_now", "Heats", row => row.Wear.HeatsNow, Quantity.Worked)
            .Means("weighted heats since the last rework of that gauge mark"),
        Row.Number("readings", "Read", row => row.Wear.Last.Readings.Length)
            .Means("caliper readings since the last rework; in card the readings themselves"),
        Row.Number("wear_now_mm", "Worn", row => row.WearNowMm, Quantity.Wear).Means("the wear expected now"),
        Row.Number("limit_mm", "Of", row => row.Wear.LimitMm, Quantity.Wear)
            .Means("the wear at which the tool is done"),
        Row.Number("rate_mm_per_heat", null, row => row.RateMmPerHeat, Quantity.Rate)
            .Means("the wear a weighted heat over that life, from its start to the limit"),
        Left("heats_left", "Left", left => left.Q50)
            .Means("about so many weighted heats until the limit, the middle of the forecast"),
        Left("left_lo80", null, left => left.Q10).Means("eight times in ten at least so many heats are left"),
        Left("left_hi80", null, left => left.Q90).Means("eight times in ten at most so many heats are left"),
        Left("left_lo90", "from", left => left.Q05).Means("nine times in ten at least so many heats are left"),
        Left("left_hi90", "to", left => left.Q95)
            .Means("nine times in ten at most so many heats are left; empty where the readings set no bound"),
        Row.Text(null, "", row => row.Forecast is null || row.IsFollowed ? null : Words.NotFollowedMark, none: ""),
        Row.Number("life_heats", null, row => row.LifeHeats, Quantity.Heats)
            .Means("the middle of its life since it was new or reworked: heats now and heats left together"),
        Row.Number("chance_past_limit", "Past", row => row.Forecast?.ChancePastLimitNow, Quantity.Chance)
            .Means("the chance that its wear is past the limit now"),
        Row.Number("line_rate_mm_per_heat", "A heat", row => row.Alone.Line?.Slope, Quantity.Rate)
            .Means("the slope of a straight line through this tool's own readings")
            .Ranked(3),
        Row.Number("line_se", null, row => row.Alone.Line?.SlopeSe, Quantity.Rate)
            .Means("the standard error of that slope"),
        Row.Number("line_readings", null, row => row.Alone.Line?.Readings).Means("readings that the line rests on"),
        Row.Number("p_first_cut", null, row => row.Traits?.ChanceOfFirstCut, Quantity.Chance)
            .Means("the chance that this sort has a first cut: a share of the limit gone in the first few heats"),
        Row.Number("p_faster", null, row => row.Traits?.ChanceOfFaster, Quantity.Chance)
            .Means("the chance that the last part of this sort's wear, past half its limit, runs faster"),
        Row.Number("p_slower", null, row => row.Traits?.ChanceOfSlower, Quantity.Chance)
            .Means("the chance that the last part of this sort's wear, past half its limit, runs slower"),
        Row.Text(null, "What is not known", row => row.NotKnown),
    ];

    public static Table Of(IEnumerable<GaugeForecast> gauges, LengthUnit units = LengthUnit.Mm, double load = 1) =>
        Columns.Over(gauges.Select(gauge => new ForecastRow(gauge, load)), units);

    private static Row Left(string name, string? heading, Func<HeatsLeft, double?> of) =>
        new(
            name,
            heading,
            (row, _) =>
                Cell.Of(
                    row.Left is { } left ? of(left) : null,
                    heats => row.Forecast is { AtOrPastLimit: true } ? Past : Words.About(heats)
                ),
            "heats"
        );
}
