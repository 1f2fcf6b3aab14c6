using System.Globalization;
using System.Text.Json;
using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Eyes;
using ToolWear.Results.Tools;

namespace ToolWear.Tests.Commands;

/// <summary>The eyes of the demo's drifts: on the rack, on cards, and by the verb that reckons from figures alone.</summary>
public sealed class EyeTests(DemoFixture demo)
{
    [Fact]
    public void For_every_drift_the_racks_eye_is_eye_run_on_its_present_sizes()
    {
        JsonElement[] rack = Parse(demo.Site.Done("rack", "--as", "json"));
        int drifts = 0;
        foreach (ToolForecast tool in demo.Forecasts.Tools)
        {
            JsonElement row = rack.Single(each => each.GetProperty("tool").GetString() == tool.Tool.Mark.Text);
            if (ToolNow.Size(demo.Forecasts.Shop, tool) is not { } size)
            {
                Assert.Equal(JsonValueKind.Null, row.GetProperty("eye_length_mm").ValueKind);
                continue;
            }

            drifts++;
            EyeForecast eye = Assert.IsType<EyeForecast>(EyeNow.Of(demo.Forecasts, tool));
            Assert.Equal(Predicted(tool.Tool.Tool.Place, size.LengthMm), eye.Predicted.LengthMm, 9);
            Assert.Equal(Predicted(tool.Tool.Tool.Place, size.WidthMm), eye.Predicted.WidthMm, 9);
            Assert.Equal(eye.Eye.LengthMm, row.GetProperty("eye_length_mm").GetDouble());
            Assert.Equal(eye.Eye.WidthMm, row.GetProperty("eye_width_mm").GetDouble());
            if (eye.Heads == 0)
            {
                Assert.Equal(eye.Predicted, eye.Eye);
            }
        }

        Assert.Equal(17, drifts);
    }

    // five hatchet heads and three tomahawks were measured, two hammers and one adze
    [Theory]
    [InlineData("HF1", 5)]
    [InlineData("TF1", 3)]
    [InlineData("XF1", 0)]
    [InlineData("AF1", 0)]
    [InlineData("H5", 0)]
    public void The_shops_own_allowance_counts_from_three_heads_on(string mark, int heads)
    {
        Card card = CardOf(mark);
        Assert.Equal(heads, card.Drift!.Eye.Heads);
        Assert.Equal(heads > 0 ? heads : null, CellOf(EyeFigures.Columns.Of(card.Drift), "found_on_heads").Number);
        string text = OnOneLine(CardText.Of(card));
        Assert.Equal(heads > 0, text.Contains($"on {heads} heads", StringComparison.Ordinal));
        Assert.Contains("every head's handle fit by hand", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rework_changes_the_eye()
    {
        using TestSite site = new();
        site.Demo();
        double before = EyeWidth(site, "H5");
        site.Done("rework", "H5", "re-forged", "--gauge", "width", "--before", "13.1", "--after", "13.9");
        Assert.Equal(Predicted(Place.Rough, 13.9), EyeWidth(site, "H5"), 9);
        Assert.True(EyeWidth(site, "H5") > before + 0.5);
    }

    // the taper of 0.035 goes on 10 mm above the mark of the tomahawk's finish drift
    [Fact]
    public void A_tapered_drift_shows_its_new_mark_and_the_eye_both_ways_there()
    {
        Card card = CardOf("TF1");
        double s = CellOf(EyeFigures.Columns.Of(card.Drift), "deeper_mm").Number!.Value;
        Assert.InRange(s, 0.4, 10);
        Assert.Equal(70 - s, CellOf(EyeFigures.Columns.Of(card.Drift), "new_mark_mm").Number!.Value, 6);
        Assert.Equal(
            card.Drift!.Eye.Eye.LengthMm + (0.035 * s),
            CellOf(EyeFigures.Columns.Of(card.Drift), "length_there_mm").Number!.Value,
            9
        );
        Assert.Equal(
            card.Drift.Eye.Eye.WidthMm + (0.035 * s),
            CellOf(EyeFigures.Columns.Of(card.Drift), "width_there_mm").Number!.Value,
            9
        );
        Assert.Contains("deeper: new mark", OnOneLine(CardText.Of(card)), StringComparison.Ordinal);
        JsonElement verb = ParseOne(demo.Site.Done("drive-depth", "TF1", "--as", "json"));
        Assert.Equal(s, verb.GetProperty("shift_mm").GetDouble(), 9);
    }

    // the others' marks lie where the full-size part begins, and their eyes are inside: nothing is said of less deep
    [Theory]
    [InlineData("HF1")]
    [InlineData("XF1")]
    [InlineData("AF1")]
    public void A_drift_inside_with_its_mark_at_the_top_is_left_alone(string mark)
    {
        Card card = CardOf(mark);
        Assert.True(card.Drift!.IsInside);
        Assert.Null(card.Drift.Drive);
        Assert.DoesNotContain("less deep", OnOneLine(CardText.Of(card)), StringComparison.Ordinal);
    }

    // by hand: the tighter way binds, its change over the handle's taper of 0.035
    [Fact]
    public void A_slip_on_eye_shows_its_seat()
    {
        Card card = CardOf("TF1");
        EyeSize eye = card.Drift!.Eye.Eye;
        double seat = Math.Min(eye.LengthMm - 34.9, eye.WidthMm - 22.2) / 0.035;
        Assert.Equal(seat, CellOf(EyeFigures.Columns.Of(card.Drift), "seat_mm").Number!.Value, 9);
        Assert.Equal(12, CellOf(EyeFigures.Columns.Of(card.Drift), "seat_tolerance_mm").Number);
        Assert.Contains("its place on the handle", OnOneLine(CardText.Of(card)), StringComparison.Ordinal);
    }

    // 190 to 184 in four dressings on record, after each 188.5, 187, 185.4, 184
    [Fact]
    public void A_slitter_shows_its_dressings_left()
    {
        Card card = CardOf("HS2");
        double loss = (190.0 - 184) / 4;
        Assert.Equal(4, CellOf(SlitFigures.Columns.Of(card.Slit), "dressings").Number);
        Assert.Equal(loss, CellOf(SlitFigures.Columns.Of(card.Slit), "loss_a_dressing_mm").Number!.Value, 9);
        Assert.Equal(
            Math.Floor((184 - 130) / loss),
            CellOf(SlitFigures.Columns.Of(card.Slit), "dressings_left").Number
        );
        Assert.Contains("Dressings left: 36", OnOneLine(CardText.Of(card)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_adzes_worn_second_can_become_its_rough_and_the_opener_nothing()
    {
        Card second = CardOf("A2ND");
        Assert.Equal("A rough drift", MadeIntoTable.Offers.Over(second.Offers).Rows[0][0].Text);
        Assert.Contains("A rough drift", CardText.Of(second), StringComparison.Ordinal);
        Assert.Empty(CardOf("TO1").Offers);
        Assert.Contains("no other drift", CardText.Of(CardOf("TO1")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_speaks_against_making_it_into_another_stands_first_on_the_card_and_in_make_into()
    {
        using TestSite site = new();
        site.Demo();
        Says(site, "First: ", stands: false);
        site.Done("look-over", "A2ND", "heat-checked");
        Says(site, "First: found heat-checked on 2026-11-12: grind out every check, else it cracks.", stands: true);
        const string Unknown = "Its steel is unknown: make a trial piece first.";
        Says(site, Unknown, stands: false);
        MadeInto known = MadeInto.Of(demo.Forecasts, CardOf("A2ND").Forecast)!;
        // the card and make-into both say these
        Assert.Equal(Unknown, EyeText.CautionsOf(known with { SteelIsUnknown = true })[0]);
    }

    private static void Says(TestSite site, string caution, bool stands) =>
        Assert.All(
            ["card", "make-into"],
            verb => Assert.Equal(stands, OnOneLine(site.Done(verb, "A2ND")).Contains(caution, StringComparison.Ordinal))
        );

    [Fact]
    public void Scrapping_a_worn_drift_says_what_it_could_still_be_made_into()
    {
        using TestSite site = new();
        site.Demo();
        Ran worn = site.Run("scrap", "A2ND", "worn");
        Assert.Equal(0, worn.Exit);
        Assert.StartsWith("entry ", worn.Output, StringComparison.Ordinal);
        Assert.Contains("A rough drift (inside by 0.6", worn.Error, StringComparison.Ordinal);
        Assert.Contains(Wording.Cautions.MakeIntoCaution, worn.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal("", site.Run("scrap", "H4", "worn").Error);
        Assert.Equal("", site.Run("scrap", "AF1", "cracked").Error);
    }

    [Fact]
    public void The_cards_eye_says_the_same_in_csv_and_json()
    {
        int numbers = 0;
        foreach (Card card in demo.Cards)
        {
            JsonElement json = ParseOne(Card.Columns.Of(card).ToJson());
            List<List<string>> csv = CsvCells.Of(card.ByGauge.ToCsv());
            foreach (JsonProperty figure in Members(json, "eye").Concat(Members(json, "slit")))
            {
                int column = csv[0].IndexOf(figure.Name);
                Assert.True(column >= 0, figure.Name);
                string value = figure.Value.ValueKind == JsonValueKind.Null ? "" : figure.Value.ToString();
                Assert.All(csv.Skip(1), row => Assert.Equal(value, row[column]));
                numbers += figure.Value.ValueKind == JsonValueKind.Number ? 1 : 0;
            }
        }

        Assert.True(numbers > 150, $"only {numbers} figures were compared");
    }

    // every size of an eye in the words is its csv figure, to 0.1 mm
    [Fact]
    public void The_words_of_the_eye_are_its_figures_rounded()
    {
        foreach (string mark in (string[])["HF1", "TF1", "XF1", "A2ND", "H5"])
        {
            Card card = CardOf(mark);
            string text = OnOneLine(CardText.Of(card));
            string Tenths(string figure) =>
                CellOf(EyeFigures.Columns.Of(card.Drift), figure)
                    .Number!.Value.ToString("0.0", CultureInfo.InvariantCulture);
            Assert.Contains(
                $"about {Tenths("eye_length_mm")} x {Tenths("eye_width_mm")} mm",
                text,
                StringComparison.Ordinal
            );
            Assert.Contains($"predicted {Tenths("predicted_length_mm")}", text, StringComparison.Ordinal);
            Assert.Contains($"width predicted {Tenths("predicted_width_mm")}", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void An_eye_is_never_shown_finer_than_a_tenth_or_a_64th()
    {
        foreach (Card card in demo.Cards)
        {
            foreach (LengthUnit units in Enum.GetValues<LengthUnit>())
            {
                string text = EyeText.Of(card with { Units = units });
                string eye = text.Split("By its section")[0].Split("Dressings")[0];
                Assert.DoesNotMatch(@"[0-9]\.[0-9]{2}", eye);
                Assert.DoesNotMatch(@"/128", eye);
            }
        }
    }

    private Card CardOf(string mark) => demo.Cards.Single(card => card.Forecast.Tool.Mark.Text == mark);

    private double Predicted(Place place, double driftMm) =>
        ParseOne(
                demo.Site.Done(
                    "eye",
                    "--drift-mm",
                    driftMm.ToString("R", CultureInfo.InvariantCulture),
                    "--drift-c",
                    "250",
                    "--eye-c",
                    place == Place.Finish ? "750" : "925",
                    "--as",
                    "json"
                )
            )
            .GetProperty("eye_mm")
            .GetDouble();

    private static double EyeWidth(TestSite site, string mark) =>
        Parse(site.Done("rack", "--as", "json"))
            .Single(row => row.GetProperty("tool").GetString() == mark)
            .GetProperty("eye_width_mm")
            .GetDouble();

    private static JsonProperty[] Members(JsonElement json, string name) =>
        [.. json.GetProperty(name).EnumerateObject()];

    private static JsonElement[] Parse(string json) => [.. ParseOne(json).EnumerateArray()];

    private static JsonElement ParseOne(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return document.RootElement.Clone();
    }

    private static string OnOneLine(string text) =>
        string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private static Cell CellOf(Table figures, string name) =>
        figures.Rows[0][figures.InFiles.Single(each => each.Name == name).Index];
}
