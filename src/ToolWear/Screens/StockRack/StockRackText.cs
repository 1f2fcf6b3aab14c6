using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Eyes;
using ToolWear.Results.Plans;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.StockRack;

/// <summary>The text of the stock rack: the bars, and what could be cut from the chosen one.</summary>
internal static class StockRackText
{
    private const string NoBars = "No bar is in the rack yet. Press a to add one.";

    // heading, empty row, heading of the cuts, and some cuts
    private const int Below = 8;

    /// <summary>Draws it.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="bars">The bars.</param>
    /// <param name="place">Where one is in the list.</param>
    /// <param name="units">The unit for people.</param>
    public static void Draw(Picture body, ImmutableArray<BarCuts> bars, ListPlace place, LengthUnit units)
    {
        if (bars.IsEmpty)
        {
            body.Put(0, 0, NoBars, Ink.Quiet);
            return;
        }

        Table table = BarTable.Bars.Over(bars, units);
        int y = body.PutList(
            0,
            Math.Max(2, body.Height - Below),
            bars.Length,
            place,
            width => table.Columns(place, width)
        );
        DrawCuts(body, y + 1, bars[place.Chosen], units);
    }

    private static void DrawCuts(Picture body, int y, BarCuts bar, LengthUnit units)
    {
        if (bar.Cuts.IsEmpty)
        {
            body.Put(0, y, EyeWords.NoToolToCut(bar.Bar.Steel), Ink.Quiet);
            return;
        }

        body.Put(0, y++, EyeWords.CouldBeCut(bar.Bar.Bar), Ink.Strong);
        string[] cuts = BarTable.Cuts.Over(bar.Cuts, units).ToText(body.Width - 2).TrimEnd('\n').Split('\n');
        // one line stays for what does not fit
        int room = body.Height - y;
        int shown = cuts.Length <= room ? cuts.Length : Math.Max(0, room - 1);
        for (int i = 0; i < shown; i++, y++)
        {
            bool mustBeUpset = i > 0 && bar.Cuts[i - 1].Stock.MustBeUpset;
            body.Put(
                2,
                y,
                cuts[i],
                mustBeUpset ? Ink.Warn
                    : i == 0 ? Ink.Quiet
                    : Ink.Plain
            );
        }

        if (shown < cuts.Length)
        {
            body.Put(2, y, Words.AndMore(cuts.Length - shown), Ink.Quiet);
        }
    }
}
