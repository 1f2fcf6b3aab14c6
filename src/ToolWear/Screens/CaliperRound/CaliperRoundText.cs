using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Histories;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;
using ToolWear.Wording;

namespace ToolWear.Screens.CaliperRound;

/// <summary>What the round shows of the selected tool.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="History">The gauge mark that is read now, null where it has none.</param>
/// <param name="Of">"1 of 2".</param>
/// <param name="Expected">Where the reading is expected, null where no forecast speaks.</param>
/// <param name="Typed">What is typed.</param>
/// <param name="By">Who looks, null where nobody is named.</param>
/// <param name="Asked">The question what was found; null before the last gauge mark is done.</param>
internal sealed record InHand(
    ToolInShop Tool,
    GaugeHistory? History,
    string Of,
    ExpectedReading? Expected,
    string Typed,
    string? By,
    LookQuestion? Asked
);

/// <summary>The text of the caliper round.</summary>
internal static class CaliperRoundText
{
    private const string ToMeasureHeading = "To measure       heats since";
    private const string VerdictsHeading = "What came of it. Enter goes to the rack.";
    private const string SizeRead = "Size:";
    private const string NoScrapSize = "no size set";
    private const string NotKnown = "not known";
    private const string NoExpectation = "not enough data";

    private const int ListWidth = 28;

    /// <summary>Draws the list of tools and the selected tool.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="tools">The tools of the list.</param>
    /// <param name="wanting">How many of them want measuring; the rest follow.</param>
    /// <param name="place">Where one is in the list.</param>
    /// <param name="hand">The selected tool, null for none.</param>
    public static void Draw(
        Picture body,
        Shop shop,
        ImmutableArray<long> tools,
        int wanting,
        ListPlace place,
        InHand? hand
    )
    {
        bool hasList = body.Width >= 64;
        if (hasList)
        {
            DrawList(body, shop, tools, wanting, place);
        }

        int left = hasList ? ListWidth + 2 : 0;
        if (hand is not null)
        {
            Picture right = new(body.Width - left, body.Height);
            DrawHand(right, shop, hand);
            body.Put(left, 0, right);
        }
    }

    /// <summary>Draws the verdicts at the end of the round.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="tools">The tools that were measured.</param>
    /// <param name="forecasts">The forecasts, null while they are being worked out.</param>
    public static void DrawVerdicts(Picture body, Shop shop, IReadOnlyCollection<long> tools, ShopForecasts? forecasts)
    {
        body.Put(0, 0, VerdictsHeading, Ink.Strong);
        int y = 2;
        foreach (long id in tools)
        {
            int at = body.Put(0, y, shop.Tools[id].Mark.Text, Ink.Strong, 10);
            if (forecasts?.VerdictOf(id) is not { } judged)
            {
                body.Put(Math.Max(at + 1, 8), y++, Words.WorkingOut, Ink.Quiet);
                continue;
            }

            body.Put(Math.Max(at + 1, 8), y++, judged.Shown, Ink.Strong);
            foreach (string line in Picture.Wrap(judged.Why, Math.Max(10, body.Width - 10)))
            {
                body.Put(8, y++, line);
            }
        }
    }

    /// <summary>The findings with their keys.</summary>
    /// <param name="width">Columns.</param>
    /// <returns>Lines.</returns>
    internal static IEnumerable<string> FindingLines(int width) =>
        Picture.Flow(
            KeyTable.FindingKeys.Zip(ToolLookedOver.FindingWords.All, (key, word) => $"{key} {word}"),
            Math.Max(10, width)
        );

    private static void DrawList(Picture body, Shop shop, ImmutableArray<long> tools, int wanting, ListPlace place)
    {
        body.Put(0, 0, wanting == 0 ? Words.NothingToMeasure : ToMeasureHeading, Ink.Strong, ListWidth);
        ToolInShop Of(int row) => shop.Tools[tools[row]];
        body.PutList(
            1,
            Math.Max(1, body.Height - 1),
            tools.Length,
            place,
            width =>
                [
                    ListColumn.Mark(place),
                    new("", 7, row => Of(row).Mark.Text, row => row == place.Chosen ? Ink.Strong : Ink.Plain),
                    new("", 10, row => RackTable.PlaceOrForm(Of(row).Tool), _ => Ink.Quiet),
                    new(
                        "",
                        width - 21,
                        row => ToMeasure.HeatsSince(shop, Of(row)) is > 0 and var heats ? Words.About(heats) : "",
                        IsRight: true
                    ),
                ],
            width: ListWidth
        );
    }

    private static void DrawHand(Picture right, Shop shop, InHand hand)
    {
        LengthUnit units = shop.Settings.Units;
        List<HandLine> lines = [.. HandLines(hand, units, Math.Max(10, right.Width))];
        // the size that is typed must be seen: a low window leaves out what is needed least
        while (lines.Count + 1 > right.Height && lines.Exists(line => line.CanWait > 0))
        {
            int most = lines.Max(line => line.CanWait);
            lines.RemoveAll(line => line.CanWait == most);
        }

        int y = 0;
        foreach (HandLine line in hand.Asked is null ? lines : lines.Take(1))
        {
            right.Put(0, y++, line.Text, line.Ink);
        }

        y += y + 1 < right.Height ? 1 : 0;
        if (hand.Asked is { } asked)
        {
            DrawFindings(right, y, hand, asked);
        }
        else if (hand.History is not null)
        {
            int at = right.Put(0, y, SizeRead, Ink.Strong);
            at = right.PutTyped(at + 1, y, hand.Typed);
            right.Put(at + 2, y, Echo(hand.Typed, units), Ink.Quiet);
        }
    }

    private static void DrawFindings(Picture right, int y, InHand hand, LookQuestion asked)
    {
        (string Text, Ink Ink)[] lines =
        [
            .. asked
                .Lines(hand.Tool.Mark.Text)
                .SelectMany(
                    (line, i) => Picture.Wrap(line, right.Width).Select(each => (each, i == 0 ? Ink.Strong : Ink.Plain))
                ),
            .. asked.AsksPart ? [] : FindingLines(right.Width).Select(line => (line, Ink.Plain)),
            .. hand.By is { } by ? [(LookedBy(by), Ink.Quiet)] : Array.Empty<(string, Ink)>(),
            .. Picture.Wrap(Cautions.FindingCaution, Math.Max(10, right.Width)).Select(line => (line, Ink.Warn)),
        ];
        for (int i = 0; i < lines.Length; i++)
        {
            right.Put(0, y + i, lines[i].Text, lines[i].Ink);
        }
    }

    private static IEnumerable<HandLine> HandLines(InHand hand, LengthUnit units, int width)
    {
        Tool tool = hand.Tool.Tool;
        string unit = SizeShown.Mark(units);
        string Size(Length? size) => size is { } known ? $"{SizeShown.Caliper(known, units)} {unit}" : NotKnown;
        IEnumerable<HandLine> Lines(string text, Ink ink, int canWait) =>
            Picture.Wrap(text, width).Select(line => new HandLine(line, ink, canWait));
        string eye = tool.Eye is { } name ? $", eye {name}" : "";
        string what = $"{tool.Mark}  {RackTable.PlaceOrForm(tool)}{eye}, {tool.Steel ?? Cautions.UnknownSteel}";
        if (hand.History is not { } history)
        {
            return [.. Lines(what, Ink.Strong, 0), .. Lines(Words.NoGaugeMark, Ink.Warn, 0)];
        }

        GaugeMark gauge = history.Gauge;
        string from = gauge.FromMark is { } mark ? $", {SizeShown.Caliper(mark, units)} {unit} from the mark" : "";
        string on =
            Words.AfterRework(history) is { } after ? after
            : history.LastReadOn is { } day ? $", read {day:yyyy-MM-dd}"
            : "";
        string scrap = gauge.ScrapSize is { } least
            ? $"{(gauge.Wears == Wears.Smaller ? "under" : "over")} {Size(least)}"
            : NoScrapSize;
        return
        [
            .. Lines(what, Ink.Strong, 0),
            .. Lines($"{gauge.Name} ({hand.Of}){from}", Ink.Strong, 0),
            .. Lines($"start     {Size(history.Start)}", Ink.Plain, 2),
            .. Lines($"last      {Size(history.LastKnown)}{on}", Ink.Plain, 0),
            .. Lines($"expected  {hand.Expected?.InWords(units) ?? NoExpectation}", Ink.Plain, 0),
            .. Lines($"scrap     {scrap}", Ink.Plain, 1),
            .. Lines(Cautions.MeasureCaution, Ink.Warn, 0),
        ];
    }

    /// <summary>A line about the selected tool; the greater CanWait, the sooner it is left out, 0 never.</summary>
    private sealed record HandLine(string Text, Ink Ink, int CanWait);

    private static string Echo(string typed, LengthUnit units) =>
        typed.Length == 0 ? ""
        : SizeText.TryParse(typed, units, out TypedSize size, out _)
            ? $"= {SizeShown.Caliper(size.Length, units)} {SizeShown.Mark(units)}"
        : "?";

    internal static string LookedBy(string by) => $"looked over by {by}";
}
