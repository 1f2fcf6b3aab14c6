using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.StockTake;

/// <summary>The text of a stock-take.</summary>
public static class StockTakeText
{
    // heading, empty row, two lines below
    private const int Around = 4;

    /// <summary>How many tools fit.</summary>
    /// <param name="room">Rows of the body.</param>
    /// <returns>Rows, at least one.</returns>
    public static int RowsFor(int room) => Math.Max(1, room - Around);

    /// <summary>Draws the tools.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="tools">The tools.</param>
    /// <param name="place">Where one is in the list.</param>
    /// <param name="today">The shop's day; what was looked for today is marked.</param>
    /// <param name="asked">What is asked; null where nothing is.</param>
    public static void Draw(
        Picture body,
        ImmutableArray<ToolPresence> tools,
        ListPlace place,
        DateOnly today,
        string? asked
    )
    {
        if (tools.IsEmpty)
        {
            body.Put(0, 0, Words.NothingMissing, Ink.Quiet);
            return;
        }

        int rows = RowsFor(body.Height);
        int first = place.Show(tools.Length, rows);
        string[] lines = StockTakeTable.Columns.Over(tools).ToText(body.Width - 2).TrimEnd('\n').Split('\n');
        body.Put(2, 0, lines[0], Ink.Strong);
        int y = 1;
        for (int i = first; i < Math.Min(tools.Length, first + rows); i++, y++)
        {
            body.Put(0, y, i == place.Chosen ? ">" : "", Ink.Strong);
            body.Put(2, y, lines[1 + i], InkOf(tools[i], today));
            if (i == place.Chosen)
            {
                body.Tint(y, Ink.Chosen);
            }
        }

        foreach (string line in Picture.Wrap(asked ?? Words.StockTakeLegend, Math.Max(10, body.Width)))
        {
            body.Put(0, ++y, line, asked is null ? Ink.Quiet : Ink.Warn);
        }
    }

    private static Ink InkOf(ToolPresence tool, DateOnly today) =>
        tool.IsMissing ? Ink.Warn
        : tool.LookedFor?.On == today ? Ink.Quiet
        : Ink.Plain;
}
