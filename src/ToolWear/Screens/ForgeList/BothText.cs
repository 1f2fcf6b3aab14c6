using ToolWear.Core.Planning;
using ToolWear.Pens;
using ToolWear.Results.Plans;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.ForgeList;

/// <summary>The text of two forge lists side by side: as things are, and as they would be.</summary>
internal static class BothText
{
    internal const string SupposedOnly = "Only supposed: nothing is recorded. Esc goes back to the plan as it is.";

    private const int What = 2;
    private const int Least = 24;

    /// <summary>Draws both.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="both">The two lists.</param>
    /// <param name="supposed">What is supposed, in words.</param>
    /// <param name="first">The first place shown.</param>
    /// <returns>How many places there are.</returns>
    public static int Draw(Picture body, TwoForgeLists both, string supposed, int first)
    {
        int now = Least;
        int then = now + ((body.Width - now) / 2);
        int rows = RowsFor(body.Height);
        body.Put(now, 0, PlanWords.AsItIs, Ink.Strong, then - now - 1);
        body.Put(then, 0, supposed, Ink.Strong);
        for (int i = first; i < Math.Min(both.Places.Length, first + rows); i++)
        {
            PlaceInBoth place = both.Places[i];
            int y = 1 + i - first;
            Ink ink = place.Differs ? Ink.Strong : Ink.Plain;
            body.Put(0, y, place.Differs ? "*" : "", Ink.Strong);
            body.Put(What, y, place.Tools.ToString(), ink, now - What - 1);
            body.Put(now, y, PlanWords.SideOf(place.Now), ink, then - now - 1);
            body.Put(then, y, PlanWords.SideOf(place.Then), ink);
        }

        int at = 2 + Math.Min(rows, both.Places.Length);
        body.Put(now, at, PlanWords.SideTotal(both.Now), Ink.Strong, then - now - 1);
        body.Put(then, at, PlanWords.SideTotal(both.Then), Ink.Strong);
        body.Put(now, at + 1, PlanWords.SideLate(both.Now), Ink.Plain, then - now - 1);
        body.Put(then, at + 1, PlanWords.SideLate(both.Then), Ink.Plain);
        foreach (
            string line in Picture.Wrap($"{SupposedOnly}\n{Cautions.ForecastCautionShort}", Math.Max(20, body.Width))
        )
        {
            body.Put(0, at++ + 2, line, Ink.Quiet);
        }

        return both.Places.Length;
    }

    /// <summary>How many places fit.</summary>
    /// <param name="room">Rows of the body.</param>
    /// <returns>Rows, at least one.</returns>
    public static int RowsFor(int room) => Math.Max(1, room - 8);
}
