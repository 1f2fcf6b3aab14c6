using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Pens;
using ToolWear.Results.Plans;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.ForgeList;

/// <summary>The text of the forge list: a row a batch, then the cut list and what to mind; details of the chosen row.</summary>
internal static class ForgeListText
{
    private const string CutListRow = "Cut list, and what to buy";
    private const string MindRow = "What to mind";
    private const string NothingToCutNow = "Nothing to cut.";
    private const string NothingToForgeNow =
        $"{PlanWords.NothingToForge} Orders ask for heats: o on the tool rack adds one.";

    private const int Least = 4;

    // a line has room for some batches, and a bar may give dozens
    private const int MostNamed = 6;
    private const int MostShared = 2;

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
        int room = body.Height - 2 - Least;
        if (below.Length > room && room > 2)
        {
            below = [.. below[..(room - 2)], (TheRest, Ink.Quiet), below[^1]];
        }

        int height = Math.Max(Math.Min(1 + Least, body.Height), body.Height - 1 - below.Length);
        int y = body.PutList(0, height, count, place, width => Columns(list, units, place, width));
        foreach ((string line, Ink ink) in below)
        {
            body.Put(0, ++y, line, ink);
        }
    }

    private const string TheRest = "… all of it: toolwear forge-list";

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
                : row == last ? CutListRow
                : last >= 0 ? MindRow
                : "";
        Ink Strong(int row) => Ink.Strong;
        return
        [
            ListColumn.Mark(place),
            new("Forge by", 14, Of(batch => Words.Weekday(batch.ForgeBy), list.Batches.Length)),
            new("", 1, Of(batch => batch.IsLate ? "!" : ""), _ => Ink.Warn),
            new("No", 3, Of(batch => batch.Number.ToString(CultureInfo.InvariantCulture)), Strong, IsRight: true),
            new("What", 18, Of(batch => Shortened.In(batch.Tools.ToString(), 18)), Strong),
            new("Size", 12, Of(batch => PlanWords.BatchSizes(batch, units))),
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
        PlanWords.CutsOf(batch.Stock, units) is { Length: > 0 } cuts ? cuts
        : PlanWords.BuyOf(batch.Stock, units) is { } buy ? $"buy {buy}"
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
                ? [(isFewer ? OneFewer(list.Batches[chosen]) : BatchDetails(list.Batches[chosen], units), Ink.Plain)]
            : chosen == list.Batches.Length ? CutList(list.Cuts, units, !list.Batches.IsEmpty)
            : Mind(list, units);
        return
        [
            .. said.Append((Cautions.ForecastCautionShort, Ink.Quiet))
                .SelectMany(each => Picture.Wrap(each.Item1, room).Select(line => (line, each.Item2))),
        ];
    }

    private static IEnumerable<(string, Ink)> CutList(CutList cuts, LengthUnit units, bool hasBatches) =>
        cuts.Bars.IsEmpty
            ? [(hasBatches ? NothingToCutNow : NothingToForgeNow, Ink.Plain)]
            :
            [
                .. cuts.Bars.Select(bar => (PlanWords.CutOf(bar, units, MostNamed), Ink.Plain)),
                .. cuts.Buy.Select(buy => ($"Buy {PlanWords.BarsOf(buy, units)}.", Ink.Strong)),
            ];

    private static IEnumerable<(string, Ink)> Mind(Core.Planning.ForgeList list, LengthUnit units) =>
        [
            .. list.Calendar.Late.Select(late => (PlanWords.Late(late), Ink.Warn)),
            .. list.WaysOut.Select(way => (PlanWords.Sooner(way), Ink.Warn)),
            .. list.Cuts.Shared.Length > MostShared
                ? [($"{list.Cuts.Shared.Length} bars are needed by several batches each.", Ink.Warn)]
                : list.Cuts.Shared.Select(shared => (PlanWords.SharedBarOf(shared, units), Ink.Warn)),
            .. PlanWords.NotPlanned(list).Select(sentence => (sentence, Ink.Warn)),
            (list.Batches.IsEmpty ? PlanWords.NothingToForge : PlanWords.PlannedSure(list.Sure), Ink.Plain),
            (PlanWords.HeatsAHeadUsed(list), Ink.Plain),
            (PlanWords.CracksPlanned(list), Ink.Plain),
        ];

    private static string BatchDetails(ForgeBatch batch, LengthUnit units)
    {
        string cuts = PlanWords.CutsOf(batch.Stock, units);
        string buy = PlanWords.BuyOf(batch.Stock, units) is { } bars ? $"Buy {bars}. " : "";
        string cost = batch.TotalCost is { } total
            ? $"Cost {PlanWords.Money((double)total)}: {PlanWords.CostParts(batch.Cost, batch.Number)}. "
            : "";
        string hours = batch is { TotalCost: null, Hours: { } known } ? $"{Words.Heats((double)known)} hours. " : "";
        return $"{batch.Number} {batch.Tools}: {BatchWhy(batch)}\n"
            + (cuts.Length > 0 ? $"From {cuts}. " : "")
            + buy
            + hours
            + cost
            + $"Certainty {Words.Percent(batch.Sure)}, with one fewer {Words.Percent(batch.SureWithOneFewer)}."
            + PlanWords.StockNotes(batch);
    }

    private static string OneFewer(ForgeBatch batch)
    {
        string saved = batch.Cost.Total is { } cost ? $", {cost:0} saved" : "";
        string hours = batch.Cost.Hours is { } known ? $", {Words.Heats((double)known)} hours less" : "";
        return $"With {batch.Number - 1} instead of {batch.Number} {batch.Tools}: certainty {Words.Percent(batch.SureWithOneFewer)} instead of {Words.Percent(batch.Sure)}{saved}{hours}. If it fails, order {batch.Needed.Order} stops on {Words.Weekday(batch.Needed.WantedOn)} or after.";
    }

    private static string BatchWhy(ForgeBatch batch) =>
        $"{batch.Why}{(batch.IsLate ? $"; ready on {Words.Weekday(batch.ReadyBy)} at the earliest, until then {Words.Percent(batch.SureUntil)} sure" : "")}.";
}
