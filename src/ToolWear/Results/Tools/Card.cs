using System.Collections.Immutable;
using ToolWear.Core.Eyes;
using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Core.Wear.Verdicts;
using ToolWear.Results.Eyes;
using Gauge = ToolWear.Results.Column<ToolWear.Results.Tools.CardGauge>;
using Happened = ToolWear.Results.Column<ToolWear.Core.Ledger.Entered>;
using Row = ToolWear.Results.Column<ToolWear.Results.Tools.Card>;

namespace ToolWear.Results.Tools;

/// <summary>All that is shown of one tool.</summary>
internal sealed record Card(ShopForecasts All, ToolForecast Forecast, LengthUnit Units)
{
    private static readonly Columns<Entered> EntryColumns =
    [
        Happened.Number("entry", "Entry", entered => entered.Number),
        Happened.Text("what", "What", entered => EntryWords.Of(entered.What, LengthUnit.Mm)),
    ];

    private static readonly Columns<CardGauge> GaugeColumns =
    [
        .. ForecastTable.Columns.Select(column => column.From<CardGauge>(each => each.Gauge)),
        .. EyeFigures.Columns.Select(column => column.From<CardGauge>(each => each.Card.Drift)),
        .. SlitFigures.Columns.Select(column => column.From<CardGauge>(each => each.Card.Slit)),
        Gauge.Text(
            "made_into",
            null,
            each =>
                string.Join("; ", each.Card.Offers.Select(offer => MadeIntoTable.Into.Of(offer, LengthUnit.Mm).Text))
        ),
    ];

    /// <summary>The card in JSON; its csv is <see cref="ByGauge"/>.</summary>
    public static Columns<Card> Columns { get; } =
    [
        Row.Text("tool", null, card => card.Forecast.Tool.Mark.Text),
        Row.Text("state", null, card => ToolStates.Words.Word(card.Forecast.Tool.State)),
        Row.Text("verdict", null, card => card.Verdict?.Word),
        Row.Text("why", null, card => card.Verdict?.Why),
        Row.Number("chance_lasts_session", null, card => card.NextSession?.ByWear, Quantity.Chance)
            .Means("the chance that it is inside its limits after its next usual session"),
        Row.Number("chance_lasts_session_with_cracks", null, card => card.NextSession?.WithCracks, Quantity.Chance)
            .Means("the same, and that it neither cracks nor breaks"),
        Row.Number("until_near_heats", null, card => card.Forecast.EnoughToday, Quantity.Heats),
        Row.Part("eye", card => EyeFigures.Columns.Of(card.Drift)).Means("the figures of the eye"),
        Row.Part("slit", card => SlitFigures.Columns.Of(card.Slit)).Means("the figures of a slit"),
        Row.Part("made_into", card => MadeIntoTable.Offers.Over(card.Offers))
            .Means("what the tool can still be made into"),
        Row.Part("gauges", card => ForecastTable.Of(card.Forecast.Gauges))
            .Means("the gauge marks of a tool, as in forecast"),
        Row.Part("readings", card => HistoryTable.Columns.Over(HistoryTable.Rows(card.Shop, card.Forecast))),
        Row.Part("entries", card => EntryColumns.Over(card.Entries)).Means("what happened to the tool, entry by entry"),
    ];

    public Shop Shop => All.Shop;

    public static Card Of(ShopForecasts all, ToolInShop tool, LengthUnit units) => new(all, all.Of(tool.Id), units);

    /// <summary>The verdict; null for a scrapped tool.</summary>
    public Judged? Verdict { get; } = Forecast.Tool.State == ToolState.Scrapped ? null : All.VerdictOf(Forecast);

    /// <summary>Whether it lasts its next usual session; null where that cannot be said.</summary>
    public SessionOutlook? NextSession { get; } = SessionOutlook.Of(All.Shop, Forecast);

    /// <summary>Its entries in the ledger, in the order of its history.</summary>
    public ImmutableArray<Entered> Entries { get; } =
    [.. All.Shop.HistoryOf(Forecast.Tool).Select(each => each.Entered)];

    /// <summary>Null where it is no drift or its size is not known.</summary>
    public DriftOutlook? Drift { get; } = DriftOutlooks.Of(All, Forecast);

    /// <summary>Null where it is no slitter or punch, or opens no slit any more.</summary>
    public SlitOutlook? Slit { get; } = IsAtItsEnd(All.Shop, Forecast) ? null : SlitOutlooks.Of(All.Shop, Forecast);

    /// <summary>What it can be made into; null where nothing can be said.</summary>
    public MadeInto? Into { get; } = MadeInto.Of(All, Forecast);

    public ImmutableArray<MadeIntoOffer> Offers => Into?.Offers ?? [];

    /// <summary>When it is dressed; null where it is not dressed by heats, or never again.</summary>
    public string? Dressed { get; } =
        IsAtItsEnd(All.Shop, Forecast) ? null : FindingWords.DressedByNow(All.Shop, Forecast);

    /// <summary>Its readings, as in the wear history.</summary>
    public Table Readings => HistoryTable.Columns.Over(HistoryTable.Rows(Shop, Forecast), Units);

    /// <summary>Its gauge marks, each with the tool's eye, its slit and what it can be made into.</summary>
    public Table ByGauge =>
        GaugeColumns.Over(Forecast.Gauges.Select(gauge => new CardGauge(this, new ForecastRow(gauge))), Units);

    private static bool IsAtItsEnd(Shop shop, ToolForecast forecast) =>
        forecast.Tool.State == ToolState.Scrapped
        || LookedOver.Of(shop, forecast.Tool).Unread is { Rule.Wear: WearSays.Nothing };
}

/// <summary>A gauge mark of a card.</summary>
internal sealed record CardGauge(Card Card, ForecastRow Gauge);
