using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using ToolWear.Core.Findings;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Tools;
using ToolWear.Tests.Commands;
using Xunit;
using static ToolWear.Tests.Screens.NumberTests;

namespace ToolWear.Tests.Screens;

/// <summary>What each number of a wear card has to be.</summary>
/// <param name="card">The card, of which the files are asked, and the histories behind them.</param>
/// <param name="rack">The tool's row of the rack's file.</param>
/// <param name="forecast">The rows of the forecast's file, by tool and gauge mark.</param>
internal sealed class CardNumbers(
    Card card,
    Dictionary<string, string> rack,
    Dictionary<string, Dictionary<string, string>> forecast
)
{
    private readonly JsonElement json = JsonDocument.Parse(Card.Columns.Of(card).ToJson()).RootElement;

    private string Mark => card.Forecast.Tool.Mark.Text;

    /// <summary>The table of readings and what happened: row for row what the files hold.</summary>
    public void TakeHistory(Numbers words)
    {
        List<List<string>> rows = CsvCells.Of(card.Readings.ToCsv());
        List<string> names = rows[0];
        foreach (List<string> row in rows.Skip(1).Where(row => row.Count == names.Count))
        {
            string Cell(string name) => row[names.IndexOf(name)];
            words.TakeText(
                $"{Cell("gauge")} {Cell("segment")} {Cell("on")} {Numbers.Heats(Parsed(Cell("heats")))} "
                    + $"{Rounded(Cell("size_mm"), 2)} {Rounded(Cell("wear_mm"), 2)} {Rounded(Cell("fitted_mm"), 2)}"
            );
        }

        const int most = 12;
        (long Entry, string What)[] entries =
        [
            .. json.GetProperty("entries")
                .EnumerateArray()
                .Select(each => (each.GetProperty("entry").GetInt64(), each.GetProperty("what").GetString()!)),
        ];
        foreach ((long entry, string what) in entries.TakeLast(most))
        {
            words.TakeText($"{what} (entry {entry})");
        }

        words.Take("the last (?<most>#) of (?<all>#)(?!\\d)", ("most", $"{most}"), ("all", $"{entries.Length}"));
    }

    /// <summary>What it is, its verdict, its next session, when it was looked over.</summary>
    public void TakeHead(Numbers words)
    {
        words.TakeText($"{Mark} ");
        words.Take(
            $"(?<= for eye \\S+, |drift, |punch, |slitter, |fuller, |cut, |die, |bolster, |flatter, ){Steel()}(?= )"
        );
        // the chart leaves room for three lines of it
        string verdict = $"{rack["verdict"]}: {rack["why"]}";
        int taken = words.Take(System.Text.RegularExpressions.Regex.Escape(verdict));
        Assert.Equal(1, taken);
        if (card.NextSession is { } session)
        {
            words.Take(
                "(?<=\\): )(?<chance>(?:under |over )?#) in 100 by wear",
                ("chance", InHundred("chance_lasts_session"))
            );
            words.Take("next usual session \\((?<heats>#) heats\\)", ("heats", Numbers.Heats(session.Heats)));
            words.Take(
                "(?<chance>(?:under |over )?#) in 100 with cracks",
                ("chance", InHundred("chance_lasts_session_with_cracks"))
            );
            words.Take(
                "\\((?<cracks>#) cracks? in (?<tools>#) such tools(?:, (?<out>#) more left out)?",
                ("cracks", $"{session.OnRecord.Failures}"),
                ("tools", $"{session.OnRecord.Lives.Length}"),
                ("out", $"{session.OnRecord.LeftOut}")
            );
        }

        if (Dressing.Of(card.Shop, card.Forecast.Tool) is { } dressing)
        {
            words.Take(
                "ress (?:after about (?<after>#); |it: )(?<gone>#)(?= gone| heats since)",
                ("after", About($"{dressing.After}")),
                ("gone", Numbers.Heats(dressing.Gone))
            );
            words.Take("(?<learned>#) dressings on record", ("learned", $"{dressing.Learned}"));
        }

        if (LookedOver.Of(card.Shop, card.Forecast.Tool).Open.FirstOrDefault() is { } open)
        {
            words.Take(
                "(?<=First: found [a-z -]+ on )(?<on>\\d{4}-\\d\\d-\\d\\d)",
                ("on", $"{open.Found.On:yyyy-MM-dd}")
            );
        }

        words.Take("last looked over (?<on>\\d{4}-\\d\\d-\\d\\d)", ("on", rack["looked_over_on"]));
        words.Take(
            "(?<before>#) heats before these records",
            ("before", $"{card.Forecast.Tool.Tool.Start.HeatsBefore}")
        );
    }

    /// <summary>Sizes by the ledger, figures by the forecast's file.</summary>
    public void TakeGauges(Numbers words, ImmutableArray<GaugeForecast> gauges)
    {
        string all = words.Left;
        int[] begins = [.. gauges.Select(gauge => Begin(all, gauge)).Append(all.Length)];
        for (int i = 0; i < gauges.Length; i++)
        {
            string name = $"{Mark} {gauges[i].History.Gauge.Name}";
            TakeGauge(words.Part(begins[i], begins[i + 1], name), gauges[i], forecast[name]);
        }
    }

    /// <summary>The eye, the slit, what it could be made into: each number is one of the card's file.</summary>
    public void TakeWhole(Numbers words)
    {
        words.Take("more than 30(?=:)");
        words.Take("with 0\\.5 mm to clean up");
        List<List<string>> rows = CsvCells.Of(card.ByGauge.ToCsv());
        string[] gaugeColumns = [.. CsvCells.Of(ForecastTable.Of(card.Forecast.Gauges).ToCsv())[0]];
        List<double> figures =
        [
            .. rows[0]
                .Zip(rows[1])
                .Where(each => !gaugeColumns.Contains(each.First, StringComparer.Ordinal))
                .Select(each => each.Second)
                .Where(each => double.TryParse(each, NumberStyles.Float, CultureInfo.InvariantCulture, out _))
                .Select(Parsed),
            .. json.GetProperty("made_into")
                .EnumerateArray()
                .SelectMany(row => row.EnumerateObject())
                .Where(cell => cell.Value.ValueKind == JsonValueKind.Number)
                .Select(cell => cell.Value.GetDouble()),
        ];
        string[] found = [.. Found()];
        words.Take("(?<=Found heat-checked on )(?<on>\\d{4}-\\d\\d-\\d\\d)", ("on", found.Length > 0 ? found[^1] : ""));
        const int shown = 4;
        words.Take(
            $"and (?<more>#) more: toolwear make-into {Mark}",
            ("more", $"{json.GetProperty("made_into").GetArrayLength() - shown}")
        );
        foreach (JsonElement row in json.GetProperty("made_into").EnumerateArray())
        {
            words.Take(
                System.Text.RegularExpressions.Regex.Escape(row.GetProperty("heats_rest_on").GetString() ?? "-")
            );
        }

        double[] shares = [.. figures.Where(figure => Math.Abs(figure) < 10).Select(figure => figure * 100)];
        words.TakeAnyOf([.. figures, .. shares]);
    }

    private static int Begin(string text, GaugeForecast gauge)
    {
        int at = text.IndexOf($"{gauge.History.Gauge.Name}: start ", StringComparison.Ordinal);
        Assert.True(at >= 0, $"{gauge.History.Gauge.Name} is not there: {text}");
        return at;
    }

    private static void TakeGauge(Numbers one, GaugeForecast gauge, Dictionary<string, string> file)
    {
        GaugeHistory history = gauge.History;
        Assert.Equal(
            1,
            one.Take(
                "start (?:(?<start>#) mm|not known), now (?:(?<now>#) mm|not known)(?:, [a-z-]+ [0-9-]{10})?, (?:scrap (?:under|over) (?<scrap>#) mm|no scrap size)",
                ("start", Size(history.Start)),
                ("now", Size(history.LastKnown)),
                ("scrap", Size(history.Gauge.ScrapSize))
            )
        );
        double toGo = (history.Wear.LimitMm ?? 0) - Math.Max(0, history.LastKnownWearMm ?? 0);
        one.Take(
            $"(?<togo>#) mm {(toGo < 0 ? "past its limit" : "to go")} of (?<limit>#) mm when last known; (?<since>#) heats since",
            ("togo", Numbers.Rounded(Math.Abs(toGo), 2)),
            ("limit", Rounded(file["limit_mm"], 2)),
            ("since", Numbers.Heats(history.HeatsSinceKnown))
        );
        Estimate? rate = gauge.Alone.RateMmPerHeat as Estimate;
        one.Take(
            "(?<rate>#) mm a heat on (?<readings>#) readings; nine times in ten (?<low>#) to (?:(?<high>#)|no bound)",
            ("rate", Rounded(file["line_rate_mm_per_heat"], 4)),
            ("readings", file["line_readings"]),
            ("low", Numbers.Rounded(rate?.Low90 ?? 0, 4)),
            ("high", Numbers.Rounded(rate?.High90 ?? 0, 4))
        );
        TakeOutlook(one, gauge, file);
    }

    private static void TakeOutlook(Numbers one, GaugeForecast gauge, Dictionary<string, string> file)
    {
        one.Take(
            "about (?<left>#) heats? left; nine times in ten between (?<low>#) and (?<high>#)",
            ("left", About(file["heats_left"])),
            ("low", About(file["left_lo90"])),
            ("high", About(file["left_hi90"]))
        );
        one.Take(
            "(?:about (?<left>#) heats? left|readings can bound); nineteen times in twenty more than (?<low>#)",
            ("left", About(file["heats_left"])),
            ("low", About(file["left_lo90"]))
        );
        one.Take(
            "limit now \\((?<chance>#)%\\)",
            (
                "chance",
                Numbers.Rounded(
                    Parsed(file["chance_past_limit"].Length == 0 ? "0" : file["chance_past_limit"]) * 100,
                    0
                )
            )
        );
        one.Take("usually lasts (?<guess>#) heats", ("guess", Numbers.Heats(gauge.History.Wear.GuessHeats)));
        if (gauge.Forecast is { } forecast)
        {
            // in no file: the advice is worked out from the forecast
            MeasuringAdvice advice = MeasuringAdvice.Of(gauge.History.Wear, forecast);
            one.Take("after about (?<more>#) more heats", ("more", Numbers.Rounded(advice.MoreHeats, 0)));
        }
    }

    /// <summary>The days on which the ledger has it as heat-checked.</summary>
    private IEnumerable<string> Found() =>
        json.GetProperty("entries")
            .EnumerateArray()
            .Select(entry => entry.GetProperty("what").GetString()!)
            .Where(what => what.Contains("found heat-checked", StringComparison.Ordinal))
            .Select(what => what.Split(' ')[0]);

    private string Steel() =>
        System.Text.RegularExpressions.Regex.Escape(rack["steel"].Length == 0 ? "unknown steel" : rack["steel"]);

    private string InHundred(string property) =>
        json.GetProperty(property) is { ValueKind: JsonValueKind.Number } chance
            ? ChanceText.Of(chance.GetDouble())[..^" in 100".Length]
            : "";

    private static string Size(Length? size) => size is { } known ? Numbers.Rounded(known.Mm, 2) : "";

    private static double Parsed(string number) => double.Parse(number, CultureInfo.InvariantCulture);
}
