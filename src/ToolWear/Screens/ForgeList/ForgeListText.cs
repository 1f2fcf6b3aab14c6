using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.ForgeList;

/// <summary>The text of the forge list: a row a batch, then the cut list and what to mind; details of the chosen row.</summary>
internal static class ForgeListText
{
    private const int Least = 4;

    /// <summary>How many rows there are: the batches, the cut list, what to mind.</summary>
    /// <param name="list">The list.</param>
    /// <returns>Rows.</returns>
    public static int Count(Core.Planning.ForgeList list) => list.Batches.Length + 2;

    /// <summary>Draws the list.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="list">The list.</param>
    /// <param name="units">The unit for people.</param>
    /// <param name="place">Where one is in the list.</param>
    /// <param name="isFewer">Whether the chosen batch is looked at with one fewer.</param>
    public static void Draw(Picture body, Core.Planning.ForgeList list, LengthUnit units, ListPlace place, bool isFewer)
    {
        int count = Count(list);
        place.Choose(place.Chosen, count);
        (string Line, Ink Ink)[] below = Details(body.Width, list, units, place.Chosen, isFewer);
        int height = Math.Max(Math.Min(1 + Least, body.Height), body.Height - 1 - below.Length);
        int y = body.PutList(0, height, count, place, width => Columns(list, units, place, width));
        foreach ((string line, Ink ink) in below)
        {
            body.Put(0, ++y, line, ink);
        }
    }

    private static IReadOnlyList<ListColumn> Columns(
        Core.Planning.ForgeList list,
        LengthUnit units,
        ListPlace place,
        int width
    )
    {
        // behind the batches stand the cut list and what to mind
        Func<int, string> Of(Func<ForgeBatch, string> of, int last = -1) =>
            row =>
                row < list.Batches.Length ? of(list.Batches[row])
                : row == last ? Words.CutListRow
                : last >= 0 ? Words.MindRow
                : "";
        Ink Strong(int row) => Ink.Strong;
        return
        [
            ListColumn.Mark(place),
            new("Forge by", 14, Of(batch => Words.Weekday(batch.ForgeBy), list.Batches.Length)),
            new("", 1, Of(batch => batch.IsLate ? "!" : ""), _ => Ink.Warn),
            new("No", 3, Of(batch => batch.Number.ToString(CultureInfo.InvariantCulture)), Strong, IsRight: true),
            new("What", 18, Of(batch => Shortened.In(batch.Tools.ToString(), 18)), Strong),
            new("Size", 12, Of(batch => Words.BatchSizes(batch, units))),
            new("Steel", 8, Of(batch => batch.Series?.Steel ?? "-")),
            new(
                "Cost",
                5,
                Of(batch => batch.TotalCost?.ToString("0", CultureInfo.InvariantCulture) ?? "-"),
                IsRight: true
            ),
            new(
                "One less",
                Math.Clamp(width - 70, 0, 9),
                Of(batch => Words.Percent(batch.SureWithOneFewer)),
                IsRight: true
            ),
            .. width < 90
                ? Array.Empty<ListColumn>()
                : [new("From", width - 80, Of(batch => From(batch, units)), _ => Ink.Quiet)],
        ];
    }

    private static string From(ForgeBatch batch, LengthUnit units) =>
        Words.CutsOf(batch.Stock, units) is { Length: > 0 } cuts ? cuts
        : Words.BuyOf(batch.Stock, units) is { } buy ? $"buy {buy}"
        : "-";

    private static (string Line, Ink Ink)[] Details(
        int width,
        Core.Planning.ForgeList list,
        LengthUnit units,
        int chosen,
        bool isFewer
    )
    {
        int room = Math.Max(20, width);
        IEnumerable<(string, Ink)> said =
            chosen < list.Batches.Length
                ?
                [
                    (
                        isFewer
                            ? Words.OneFewer(list.Batches[chosen])
                            : Words.BatchDetails(list.Batches[chosen], units),
                        Ink.Plain
                    ),
                ]
            : chosen == list.Batches.Length ? CutList(list.Cuts, units, !list.Batches.IsEmpty)
            : Mind(list, units);
        return
        [
            .. said.Append((Words.ForecastCautionShort, Ink.Quiet))
                .SelectMany(each => Picture.Wrap(each.Item1, room).Select(line => (line, each.Item2))),
        ];
    }

    private static IEnumerable<(string, Ink)> CutList(CutList cuts, LengthUnit units, bool hasBatches) =>
        cuts.Bars.IsEmpty
            ? [(hasBatches ? Words.NothingToCutNow : Words.NothingToForgeNow, Ink.Plain)]
            :
            [
                .. cuts.Bars.Select(bar => (Words.CutOf(bar, units), Ink.Plain)),
                .. cuts.Buy.Select(buy => ($"Buy {Words.BarsOf(buy, units)}.", Ink.Strong)),
            ];

    private static IEnumerable<(string, Ink)> Mind(Core.Planning.ForgeList list, LengthUnit units) =>
        [
            .. list.Calendar.Late.Select(late => (Words.Late(late), Ink.Warn)),
            .. list.Cuts.Shared.Select(shared => (Words.SharedBarOf(shared, units), Ink.Warn)),
            .. Words.NotPlanned(list).Select(sentence => (sentence, Ink.Warn)),
            (list.Batches.IsEmpty ? Words.NothingToForge : Words.PlannedSure(list.Sure), Ink.Plain),
            (Words.HeatsAHeadUsed(list), Ink.Plain),
            (Words.CracksPlanned(list), Ink.Plain),
        ];
}
