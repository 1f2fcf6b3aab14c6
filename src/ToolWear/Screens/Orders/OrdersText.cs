using System.Globalization;
using ToolWear.Core.Planning;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Plans;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.Orders;

/// <summary>The text of the open orders.</summary>
internal static class OrdersText
{
    private const string NoOrdersYet = $"{PlanWords.NoOrders} Press a to add one.";
    private const string NoOrdersNoPatterns =
        $"{PlanWords.NoOrders} An order is so many heads of a pattern. Add a pattern first (p).";

    /// <summary>Draws the orders.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="book">The orders.</param>
    /// <param name="place">Where one is in the list.</param>
    /// <param name="hasPatterns">Whether the shop has a pattern that could be ordered.</param>
    public static void Draw(Picture body, OrderBook book, ListPlace place, bool hasPatterns)
    {
        if (book.Orders.IsEmpty)
        {
            int row = 0;
            string none = hasPatterns ? NoOrdersYet : NoOrdersNoPatterns;
            foreach (string line in Picture.Wrap(none, Math.Max(20, body.Width)))
            {
                body.Put(0, row++, line, Ink.Quiet);
            }

            return;
        }

        place.Choose(place.Chosen, book.Orders.Length);
        (string Line, Ink Ink)[] below = [.. Below(body.Width, book, place.Chosen)];
        Table table = OrderTable.Columns.Over(book.Orders);
        int height = body.Height - 1 - below.Length;
        int y = body.PutList(0, height, book.Orders.Length, place, width => Columns(table, book, place, width));
        foreach ((string line, Ink ink) in below)
        {
            body.Put(0, ++y, line, ink);
        }
    }

    private static IReadOnlyList<ListColumn> Columns(Table table, OrderBook book, ListPlace place, int width)
    {
        ListColumn Of(int cell, int columns, Func<int, Ink>? ink = null, bool isRight = false) =>
            new(table.Columns[cell].Heading!, columns, row => table.Rows[row][cell].Shown, ink, isRight);
        bool IsLate(int row) => book.Orders[row].HeadsLate > 0;
        Ink InkOf(int row) => IsLate(row) ? Ink.Warn : Ink.Plain;
        return
        [
            ListColumn.Mark(place),
            Of(0, 17, _ => Ink.Strong),
            Of(1, 12),
            Of(2, 5, isRight: true),
            Of(3, 6, isRight: true),
            Of(5, 14),
            new("", 1, row => IsLate(row) ? "!" : "", _ => Ink.Warn),
            Of(6, Math.Min(16, Math.Max(0, width - 63)), InkOf),
            .. width < 90 ? Array.Empty<ListColumn>() : [Of(7, width - 79, InkOf)],
        ];
    }

    /// <summary>What is said of the chosen order, and of every other that is late.</summary>
    private static IEnumerable<(string Line, Ink Ink)> Below(int width, OrderBook book, int chosen)
    {
        int room = Math.Max(20, width);
        OrderOutlook order = book.Orders[Math.Clamp(chosen, 0, book.Orders.Length - 1)];
        string pattern = order.Order.Pattern;
        PatternCapacity capacity = book.Calendar.Capacities.Single(each => each.Pattern == pattern);
        string stages = string.Join("; ", book.Stages[pattern].Select(HeatsOfStage));
        foreach (string line in Picture.Wrap($"{PlanWords.Capacity(capacity)} Heats a head: {stages}.", room))
        {
            yield return (line, Ink.Quiet);
        }

        foreach (LateOrder late in book.Calendar.Late.OrderBy(each => each.Order.Order != order.Order.Order).Take(3))
        {
            foreach (string line in Picture.Wrap(PlanWords.Late(late), room))
            {
                yield return (line, Ink.Warn);
            }
        }
    }

    private static string HeatsOfStage(HeatsAHead stage)
    {
        string guess = stage.Stage.HeatsAHead is { } first ? $"first guess {Words.Heats(first)}" : "no first guess";
        string spread = stage.Spread is { } sd and > 0
            ? $", spread {sd.ToString("0.#", CultureInfo.InvariantCulture)}"
            : "";
        return stage.IsLearned
                ? $"{stage.Stage.Name} {Words.Heats(stage.Heats)} by {stage.Sessions} sessions{spread} ({guess})"
            : stage.Stage.HeatsAHead is null ? $"{stage.Stage.Name} not known"
            : $"{stage.Stage.Name} {Words.Heats(stage.Heats)}, first guess";
    }
}
