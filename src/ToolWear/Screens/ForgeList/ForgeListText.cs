using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.ForgeList;

/// <summary>The text of the forge list: a row a batch, then the cut list and what to mind; details of the chosen row.</summary>
public static class ForgeListText
{
    private const int Day = 2;
    private const int NumberEnd = 21;
    private const int What = 23;
    private const int Size = 42;
    private const int SteelAt = 55;
    private const int CostEnd = 69;
    private const int FewerEnd = 79;
    private const int Bar = 82;
    private const int Least = 4;

    /// <summary>How many rows there are: the batches, the cut list, what to mind.</summary>
    /// <param name="list">The list.</param>
    /// <returns>Rows.</returns>
    public static int Count(Core.Planning.ForgeList list) => list.Batches.Length + 2;

    /// <summary>How many rows fit beside the details of one.</summary>
    /// <param name="width">Columns.</param>
    /// <param name="room">Rows of the body.</param>
    /// <param name="list">The list.</param>
    /// <param name="units">The unit for people.</param>
    /// <param name="chosen">The row whose details are shown.</param>
    /// <param name="isFewer">Whether they are those of one fewer.</param>
    /// <returns>Rows, at least one.</returns>
    public static int RowsFor(
        int width,
        int room,
        Core.Planning.ForgeList list,
        LengthUnit units,
        int chosen,
        bool isFewer
    ) => Math.Max(Math.Min(Least, Math.Max(1, room)), room - 2 - Details(width, list, units, chosen, isFewer).Length);

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
        int rows = RowsFor(body.Width, body.Height, list, units, place.Chosen, isFewer);
        int first = place.Show(count, rows);
        DrawHeadings(body);
        for (int i = first; i < Math.Min(count, first + rows); i++)
        {
            int y = 1 + i - first;
            body.Put(0, y, i == place.Chosen ? ">" : "", Ink.Strong);
            if (i < list.Batches.Length)
            {
                DrawBatch(body, y, list.Batches[i], units);
            }
            else
            {
                body.Put(Day, y, i == list.Batches.Length ? Words.CutListRow : Words.MindRow, Ink.Strong);
            }

            if (i == place.Chosen)
            {
                body.Tint(y, Ink.Chosen);
            }
        }

        int at = 2 + Math.Min(rows, count);
        foreach ((string line, Ink ink) in Details(body.Width, list, units, place.Chosen, isFewer))
        {
            body.Put(0, at++, line, ink);
        }
    }

    private static void DrawHeadings(Picture body)
    {
        body.Put(Day, 0, "Forge by", Ink.Strong);
        body.PutRight(NumberEnd, 0, "No", Ink.Strong);
        body.Put(What, 0, "What", Ink.Strong);
        body.Put(Size, 0, "Size", Ink.Strong);
        body.Put(SteelAt, 0, "Steel", Ink.Strong);
        body.PutRight(CostEnd, 0, "Cost", Ink.Strong);
        body.PutRight(FewerEnd, 0, "One less", Ink.Strong);
        body.PutIfWide(Bar, 0, "From", Ink.Strong);
    }

    private static void DrawBatch(Picture body, int y, ForgeBatch batch, LengthUnit units)
    {
        body.Put(Day, y, Words.Weekday(batch.ForgeBy), Ink.Plain);
        body.Put(Day + 14, y, batch.IsLate ? "!" : "", Ink.Warn);
        body.PutRight(NumberEnd, y, batch.Number.ToString(CultureInfo.InvariantCulture), Ink.Strong, 3);
        body.Put(What, y, Shortened.In(batch.Tools.ToString(), Size - What - 1), Ink.Strong);
        body.Put(Size, y, Words.BatchSizes(batch, units), Ink.Plain, SteelAt - Size - 1);
        body.Put(SteelAt, y, batch.Series?.Steel ?? "-", Ink.Plain, CostEnd - SteelAt - 6);
        body.PutRight(CostEnd, y, batch.TotalCost?.ToString("0", CultureInfo.InvariantCulture) ?? "-", Ink.Plain, 6);
        body.PutRight(FewerEnd, y, Words.Percent(batch.SureWithOneFewer), Ink.Plain, 9);
        string cuts = Words.CutsOf(batch.Stock, units);
        string? buy = Words.BuyOf(batch.Stock, units);
        body.PutIfWide(
            Bar,
            y,
            cuts.Length > 0 ? cuts
                : buy is null ? "-"
                : $"buy {buy}",
            Ink.Quiet
        );
    }

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
