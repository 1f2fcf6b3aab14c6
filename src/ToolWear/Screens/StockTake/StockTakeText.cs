using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.StockTake;

/// <summary>The text of a stock-take.</summary>
internal static class StockTakeText
{
    private const string NothingMissing = "No tool that was looked for is missing.";

    // empty row, two lines below
    private const int Below = 3;

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
            body.Put(0, 0, NothingMissing, Ink.Quiet);
            return;
        }

        Table table = StockTakeTable.Columns.Over(tools);
        int y = body.PutList(
            0,
            body.Height - Below,
            tools.Length,
            place,
            width => table.Columns(place, width, row => InkOf(tools[row], today))
        );
        body.PutWrapped(y + 1, asked ?? Words.StockTakeLegend, asked is null ? Ink.Quiet : Ink.Warn);
    }

    private static Ink InkOf(ToolPresence tool, DateOnly today) =>
        tool.IsMissing ? Ink.Warn
        : tool.LookedFor?.On == today ? Ink.Quiet
        : Ink.Plain;
}
