using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Plans;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Costs;

/// <summary>The text of the costs: heads first, then the tools of each place.</summary>
public static class CostsText
{
    private const int What = 2;
    private const int CostEnd = 30;
    private const int LifeEnd = 37;
    private const int LifeRangeEnd = 47;
    private const int AHeatEnd = 55;
    private const int RangeEnd = 69;
    private const int TrueEnd = 79;
    private const int Least = 5;

    /// <summary>How many rows fit, headings included.</summary>
    /// <param name="width">Columns.</param>
    /// <param name="room">Rows of the body.</param>
    /// <param name="below">What is said below the list.</param>
    /// <returns>Rows, at least one.</returns>
    public static int RowsFor(int width, int room, string below) =>
        Math.Max(Math.Min(Least, Math.Max(1, room)), room - 2 - Lines(below, width).Length);

    /// <summary>Draws the costs.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="costs">The costs.</param>
    /// <param name="place">Where one is in the list.</param>
    /// <param name="below">What is said below the list.</param>
    public static void Draw(Picture body, ToolingCosts costs, ListPlace place, string below)
    {
        int count = costs.Heads.Length + costs.Places.Length;
        int rows = RowsFor(body.Width, body.Height, below);
        int first = place.Show(count, rows);
        Table heads = CostTables.Heads.Over(costs.Heads);
        Table places = CostTables.Places.Over(costs.Places);
        DrawHeadings(body);
        for (int i = first; i < Math.Min(count, first + rows); i++)
        {
            int y = 1 + i - first;
            bool isHead = i < heads.Rows.Length;
            ImmutableArray<Cell> cells = isHead ? heads.Rows[i] : places.Rows[i - heads.Rows.Length];
            body.Put(0, y, i == place.Chosen ? ">" : "", Ink.Strong);
            if (isHead)
            {
                DrawHead(body, y, cells);
            }
            else
            {
                DrawPlace(body, y, cells);
            }

            if (i == place.Chosen)
            {
                body.Tint(y, Ink.Chosen);
            }
        }

        int at = 2 + Math.Min(rows, count);
        foreach (string line in Lines(below, body.Width))
        {
            body.Put(0, at++, line, Ink.Quiet);
        }
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
                ? $"about {Words.Money(aHead.Value)} a head, {Words.MoneyRange(aHead)}; {Words.TrueHead(head)}."
                : Words.Missing((NotEnoughData)head.CostAHead);
            return $"{head.Pattern}: {cost}{Words.WithoutStages(head)} {Words.HeadCostHeading}.";
        }

        PlaceHeatCost place = costs.Places[row - costs.Heads.Length];
        string assumed = string.Concat(Words.CostAssumptions(place).Select(sentence => " " + sentence));
        return $"{place.Tools}: {Words.ScrappedTrue(place)}.{assumed}";
    }

    private static string[] Lines(string below, int width) => [.. Picture.Wrap(below, Math.Max(20, width))];

    private static void DrawHeadings(Picture body)
    {
        body.Put(What, 0, "Head or tool", Ink.Strong);
        body.PutRight(CostEnd, 0, "To make", Ink.Strong);
        body.PutRight(LifeEnd, 0, "Heats", Ink.Strong);
        body.PutRight(LifeRangeEnd, 0, "9 in 10", Ink.Strong);
        body.PutRight(AHeatEnd, 0, "Cost", Ink.Strong);
        body.PutRight(RangeEnd, 0, "9 in 10", Ink.Strong);
        body.PutRight(TrueEnd, 0, "True", Ink.Strong);
    }

    private static void DrawHead(Picture body, int y, ImmutableArray<Cell> cells)
    {
        body.Put(What, y, cells[0].Shown, Ink.Strong, CostEnd - What - 8);
        body.PutRight(LifeRangeEnd, y, "a head", Ink.Quiet);
        body.PutRight(AHeatEnd, y, cells[1].Shown, Ink.Strong);
        body.PutRight(RangeEnd, y, Range(cells[2], cells[3]), Ink.Plain);
        body.PutRight(TrueEnd, y, cells[4].Shown, Ink.Plain);
    }

    private static void DrawPlace(Picture body, int y, ImmutableArray<Cell> cells)
    {
        body.Put(What, y, Shortened.In(cells[3].Shown, CostEnd - What - 8), Ink.Strong);
        body.PutRight(CostEnd, y, cells[4].Shown, Ink.Plain, 7);
        body.PutRight(LifeEnd, y, cells[7].Shown, Ink.Plain, 6);
        body.PutRight(LifeRangeEnd, y, Range(cells[8], cells[9]), Ink.Plain, 9);
        body.PutRight(AHeatEnd, y, cells[10].Shown, Ink.Strong, 7);
        body.PutRight(RangeEnd, y, Range(cells[11], cells[12]), Ink.Plain, 13);
        body.PutRight(TrueEnd, y, cells[15].Shown, Ink.Plain, 9);
    }

    private static string Range(Cell low, Cell high) =>
        !low.IsNumber ? "-"
        : high.IsNumber ? $"{low.Shown}-{high.Shown}"
        : $"over {low.Shown}";
}
