using System.Collections.Immutable;
using ToolWear.Core.Planning;
using ToolWear.Results;
using ToolWear.Results.Plans;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Orders;

/// <summary>The text of the open orders.</summary>
public static class OrdersText
{
    private const int Order = 2;
    private const int Pattern = 20;
    private const int HeadsEnd = 38;
    private const int HeatsEnd = 45;
    private const int Due = 47;
    private const int Done = 64;
    private const int Late = 82;

    /// <summary>How many orders fit.</summary>
    /// <param name="width">Columns.</param>
    /// <param name="room">Rows of the body.</param>
    /// <param name="book">The orders.</param>
    /// <param name="chosen">The chosen one, from 0.</param>
    /// <returns>Rows, at least one.</returns>
    public static int RowsFor(int width, int room, OrderBook book, int chosen) =>
        Math.Max(1, room - 2 - Below(width, book, chosen).Count());

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
            string none = hasPatterns ? Words.NoOrdersYet : Words.NoOrdersNoPatterns;
            foreach (string line in Picture.Wrap(none, Math.Max(20, body.Width)))
            {
                body.Put(0, row++, line, Ink.Quiet);
            }

            return;
        }

        place.Choose(place.Chosen, book.Orders.Length);
        int rows = RowsFor(body.Width, body.Height, book, place.Chosen);
        int first = place.Show(book.Orders.Length, rows);
        Table table = OrderTable.Columns.Over(book.Orders);
        DrawHeadings(body, table.Columns);
        for (int i = first; i < Math.Min(book.Orders.Length, first + rows); i++)
        {
            DrawOrder(body, 1 + i - first, table.Rows[i], book.Orders[i], isChosen: i == place.Chosen);
        }

        int y = 2 + Math.Min(rows, book.Orders.Length);
        foreach ((string line, Ink ink) in Below(body.Width, book, place.Chosen))
        {
            body.Put(0, y++, line, ink);
        }
    }

    private static void DrawHeadings(Picture body, ImmutableArray<Column> columns)
    {
        body.Put(Order, 0, columns[0].Heading!, Ink.Strong);
        body.Put(Pattern, 0, columns[1].Heading!, Ink.Strong);
        body.PutRight(HeadsEnd, 0, columns[2].Heading!, Ink.Strong);
        body.PutRight(HeatsEnd, 0, columns[3].Heading!, Ink.Strong);
        body.Put(Due, 0, columns[5].Heading!, Ink.Strong);
        body.Put(Done, 0, columns[6].Heading!, Ink.Strong);
    }

    private static void DrawOrder(Picture body, int y, ImmutableArray<Cell> cells, OrderOutlook order, bool isChosen)
    {
        Ink ink = order.HeadsLate > 0 ? Ink.Warn : Ink.Plain;
        body.Put(0, y, isChosen ? ">" : "", Ink.Strong);
        body.Put(Order, y, cells[0].Shown, Ink.Strong, Pattern - Order - 1);
        body.Put(Pattern, y, cells[1].Shown, Ink.Plain, HeadsEnd - Pattern - 6);
        body.PutRight(HeadsEnd, y, cells[2].Shown, Ink.Plain, 6);
        body.PutRight(HeatsEnd, y, cells[3].Shown, Ink.Plain, 6);
        body.Put(Due, y, cells[5].Shown, Ink.Plain, Done - Due - 2);
        body.Put(Done - 2, y, order.HeadsLate > 0 ? "!" : "", Ink.Warn);
        body.Put(Done, y, cells[6].Shown, ink, Late - Done - 2);
        body.PutIfWide(Late, y, cells[7].Shown, ink);
        if (isChosen)
        {
            body.Tint(y, Ink.Chosen);
        }
    }

    /// <summary>What is said of the chosen order, and of every other that is late.</summary>
    private static IEnumerable<(string Line, Ink Ink)> Below(int width, OrderBook book, int chosen)
    {
        int room = Math.Max(20, width);
        OrderOutlook order = book.Orders[Math.Clamp(chosen, 0, book.Orders.Length - 1)];
        string pattern = order.Order.Pattern;
        PatternCapacity capacity = book.Calendar.Capacities.Single(each => each.Pattern == pattern);
        string stages = string.Join("; ", book.Stages[pattern].Select(Words.HeatsOfStage));
        foreach (string line in Picture.Wrap($"{Words.Capacity(capacity)} Heats a head: {stages}.", room))
        {
            yield return (line, Ink.Quiet);
        }

        foreach (LateOrder late in book.Calendar.Late.OrderBy(each => each.Order.Order != order.Order.Order).Take(3))
        {
            foreach (string line in Picture.Wrap(Words.Late(late), room))
            {
                yield return (line, Ink.Warn);
            }
        }
    }
}
