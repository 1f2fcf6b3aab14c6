using System.Collections.Immutable;
using System.Text.Json;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Verdicts;
using ToolWear.Tables;

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
public sealed record Card(
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
    /// <summary>Makes the card of a tool.</summary>
    /// <param name="all">The shop with its forecasts.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>The card.</returns>
    public static Card Of(ShopForecasts all, ToolInShop tool, LengthUnit units)
    {
        Shop shop = all.Shop;
        ToolForecast forecast = all.All[tool.Id];
        return new(
            shop,
            forecast,
            tool.State == ToolState.Scrapped ? null : all.VerdictOf(forecast),
            SessionOutlook.Of(shop, forecast),
            ForecastTable.Of(forecast.Gauges, units),
            HistoryTable.Of(shop, [forecast], units),
            [.. shop.HistoryOf(tool).Select(each => each.Entered)],
            units
        );
    }

    /// <summary>The card as JSON: tool, verdict, why, the chances to last the next session, gauges, readings, entries.</summary>
    /// <returns>Indented JSON with a line end.</returns>
    public string ToJson() =>
        JsonText.Of(json =>
        {
            json.WriteStartObject();
            json.WriteString("tool", Forecast.Tool.Mark.Text);
            json.WriteString("state", ToolStates.Words.Word(Forecast.Tool.State));
            json.WriteString("verdict", Verdict?.Word);
            json.WriteString("why", Verdict?.Why);
            Write(json, "chance_lasts_session", NextSession?.ByWear);
            Write(json, "chance_lasts_session_with_cracks", NextSession?.WithCracks);
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
