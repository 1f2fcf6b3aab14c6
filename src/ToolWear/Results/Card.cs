using System.Collections.Immutable;
using System.Text.Json;
using ToolWear.Core.Eyes;
using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Verdicts;
using ToolWear.Pens;

namespace ToolWear.Results;

/// <summary>All that is shown of one tool.</summary>
/// <param name="Shop">The shop.</param>
/// <param name="Forecast">The tool with its forecasts.</param>
/// <param name="Verdict">The verdict; null for a scrapped tool.</param>
/// <param name="NextSession">Whether it lasts its next usual session; null where that cannot be said.</param>
/// <param name="Gauges">Its gauge marks, as in the forecast.</param>
/// <param name="Readings">Its readings, as in the wear history.</param>
/// <param name="Entries">Its entries in the ledger, in the order of its history.</param>
/// <param name="Units">The unit for people.</param>
internal sealed record Card(
    Shop Shop,
    ToolForecast Forecast,
    Judged? Verdict,
    SessionOutlook? NextSession,
    Table Gauges,
    Table Readings,
    ImmutableArray<Entered> Entries,
    LengthUnit Units
)
{
    /// <summary>The drift's outlook; null where it is no drift or its size is not known.</summary>
    public DriftOutlook? Drift { get; init; }

    /// <summary>The slitter's or punch's outlook; null for other tools.</summary>
    public SlitOutlook? Slit { get; init; }

    /// <summary>What it can be made into; null where nothing can be said.</summary>
    public MadeInto? Into { get; init; }

    /// <summary>The figures of the eye.</summary>
    public Calculated Eye => EyeFigures.Of(Drift, Units);

    /// <summary>The figures of the slit.</summary>
    public Calculated SlitFigures => Results.SlitFigures.Of(Slit, Units);

    /// <summary>What it can be made into, a row a place.</summary>
    public Table MadeInto => MadeIntoTable.Of(Into?.Offers ?? [], Units);

    /// <summary>Makes the card of a tool.</summary>
    /// <param name="all">The shop with its forecasts.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>The card.</returns>
    public static Card Of(ShopForecasts all, ToolInShop tool, LengthUnit units)
    {
        Shop shop = all.Shop;
        ToolForecast forecast = all.Of(tool.Id);
        return new(
            shop,
            forecast,
            tool.State == ToolState.Scrapped ? null : all.VerdictOf(forecast),
            SessionOutlook.Of(shop, forecast),
            ForecastTable.Of(forecast.Gauges, units),
            HistoryTable.Of(shop, [forecast], units),
            [.. shop.HistoryOf(tool).Select(each => each.Entered)],
            units
        )
        {
            Drift = DriftOutlooks.Of(all, forecast),
            Slit = SlitOutlooks.Of(shop, forecast),
            Into = Core.Wear.MadeInto.Of(all, forecast),
        };
    }

    /// <summary>The card as CSV: its gauge marks, each with the tool's eye, its slit and what it can be made into.</summary>
    /// <returns>The whole file.</returns>
    public string ToCsv()
    {
        ImmutableArray<Figure> whole = [.. Eye.All, .. SlitFigures.All, new("made_into", "", IntoNames())];
        return (
            Gauges with
            {
                Columns = [.. Gauges.Columns, .. whole.Select(figure => new Column(figure.Name, null))],
                Rows = [.. Gauges.Rows.Select(row => row.AddRange(whole.Select(figure => figure.Value)))],
            }
        ).ToCsv();
    }

    /// <summary>The card as JSON: tool, verdict, why, the chances to last the next session, eye, slit,
    /// what it can be made into, gauges, readings, entries.</summary>
    /// <returns>Indented JSON with a line end.</returns>
    public string ToJson() =>
        JsonPen.Of(json =>
        {
            json.WriteStartObject();
            json.WriteString("tool", Forecast.Tool.Mark.Text);
            json.WriteString("state", ToolStates.Words.Word(Forecast.Tool.State));
            json.WriteString("verdict", Verdict?.Word);
            json.WriteString("why", Verdict?.Why);
            Write(json, "chance_lasts_session", NextSession?.ByWear);
            Write(json, "chance_lasts_session_with_cracks", NextSession?.WithCracks);
            if (Forecast.EnoughToday is { } more)
            {
                json.WriteNumber("until_near_heats", more);
            }
            else
            {
                json.WriteNull("until_near_heats");
            }

            json.WritePropertyName("eye");
            Eye.Write(json);
            json.WritePropertyName("slit");
            SlitFigures.Write(json);
            json.WritePropertyName("made_into");
            MadeInto.Write(json);
            json.WritePropertyName("gauges");
            Gauges.Write(json);
            json.WritePropertyName("readings");
            Readings.Write(json);
            json.WriteStartArray("entries");
            foreach (Entered entered in Entries)
            {
                json.WriteStartObject();
                json.WriteNumber("entry", entered.Number);
                json.WriteString("what", EntryWords.Of(entered.What, LengthUnit.Mm));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        });

    private Cell IntoNames() => Cell.Of(string.Join("; ", MadeInto.Rows.Select(row => row[0].Text)));

    private static void Write(Utf8JsonWriter json, string name, double? chance)
    {
        if (chance is { } known)
        {
            json.WriteNumber(name, known);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
