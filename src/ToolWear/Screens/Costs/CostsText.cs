using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Plans;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.Costs;

/// <summary>The text of the costs: heads first, then the tools of each place.</summary>
internal static class CostsText
{
    private const int Least = 5;

    /// <summary>Draws the costs.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="costs">The costs.</param>
    /// <param name="place">Where one is in the list.</param>
    /// <param name="below">What is said below the list.</param>
    public static void Draw(Picture body, ToolingCosts costs, ListPlace place, string below)
    {
        int count = costs.Heads.Length + costs.Places.Length;
        string[] lines = [.. Picture.Wrap(below, Math.Max(20, body.Width))];
        int height = Math.Max(Math.Min(1 + Least, body.Height), body.Height - 1 - lines.Length);
        Table heads = CostTables.Heads.Over(costs.Heads);
        Table places = CostTables.Places.Over(costs.Places);
        int y = body.PutList(0, height, count, place, width => Columns(heads, places, place, width));
        foreach (string line in lines)
        {
            body.Put(0, ++y, line, Ink.Quiet);
        }
    }

    // heads and tools have columns of their own in files, and stand under the same headings here
    private static IReadOnlyList<ListColumn> Columns(Table heads, Table places, ListPlace place, int width)
    {
        Func<int, string> Of(Func<ImmutableArray<Cell>, string> head, Func<ImmutableArray<Cell>, string> tools) =>
            row => row < heads.Rows.Length ? head(heads.Rows[row]) : tools(places.Rows[row - heads.Rows.Length]);
        const int what = 20;
        return
        [
            ListColumn.Mark(place),
            new(
                "Head or tool",
                what,
                Of(cells => cells[0].Shown, cells => Shortened.In(cells[3].Shown, what)),
                _ => Ink.Strong
            ),
            new("To make", 7, Of(_ => "", cells => cells[4].Shown), IsRight: true),
            new("Heats", 6, Of(_ => "", cells => cells[7].Shown), IsRight: true),
            new("9 in 10", 9, Of(_ => "a head", cells => Range(cells[8], cells[9])), IsRight: true),
            new("Cost", 7, Of(cells => cells[1].Shown, cells => cells[10].Shown), _ => Ink.Strong, IsRight: true),
            new(
                "9 in 10",
                13,
                Of(cells => Range(cells[2], cells[3]), cells => Range(cells[11], cells[12])),
                IsRight: true
            ),
            new(
                "True",
                Math.Clamp(width - 70, 0, 9),
                Of(cells => cells[4].Shown, cells => cells[15].Shown),
                IsRight: true
            ),
        ];
    }

    /// <summary>What is said of the chosen row.</summary>
    /// <param name="costs">The costs.</param>
    /// <param name="row">The row, from 0.</param>
    /// <returns>A few sentences.</returns>
    public static string Said(ToolingCosts costs, int row)
    {
        if (row < costs.Heads.Length)
        {
            HeadCost head = costs.Heads[row];
            string cost = head.CostAHead is Estimate aHead
                ? $"about {PlanWords.Money(aHead.Value)} a head, {MoneyRange(aHead)}; {TrueHead(head)}."
                : Words.Missing((NotEnoughData)head.CostAHead);
            return $"{head.Pattern}: {cost}{WithoutStages(head)} {PlanWords.HeadCostHeading}.";
        }

        PlaceHeatCost place = costs.Places[row - costs.Heads.Length];
        string assumed = string.Concat(PlanWords.CostAssumptions(place).Select(sentence => " " + sentence));
        return $"{place.Tools}: {ScrappedTrue(place)}.{assumed}";
    }

    private static string Range(Cell low, Cell high) =>
        !low.IsNumber ? "-"
        : high.IsNumber ? $"{low.Shown}-{high.Shown}"
        : $"over {low.Shown}";

    private static string ScrappedTrue(PlaceHeatCost place) =>
        place.TrueCostAHeat is { } cost
            ? $"true {PlanWords.Money(cost)} a heat, {place.Scrapped} scrapped at {Words.About(place.TrueLife!.Value)} heats"
        : place.Scrapped > 0
            ? $"{place.Scrapped} scrapped at {Words.About(place.TrueLife!.Value)} heats; their cost is not on record"
        : "none scrapped yet, so no true figure";

    private static string TrueHead(HeadCost head) =>
        head.TrueCostAHead is { } cost
            ? $"with the true figures of scrapped tools at {head.TrueStages} of {head.Stages} stages {PlanWords.Money(cost)}"
            : "no tool of it was scrapped yet, so no true figure";

    private static string WithoutStages(HeadCost head) =>
        head.WithoutStages.IsEmpty
            ? ""
            : $" Left out, no cost of its tools is on record: {Words.And([.. head.WithoutStages])}.";

    internal static string MoneyRange(Estimate estimate) =>
        estimate.High90 is { } high
            ? $"{PlanWords.Money(estimate.Low90)} to {PlanWords.Money(high)}"
            : $"{PlanWords.Money(estimate.Low90)} or more";
}
