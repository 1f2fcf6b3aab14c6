using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.ForgeList;

/// <summary>The text of the forge list: batch by batch what to forge, by when, why, from which bar.</summary>
public static class ForgeListText
{
    /// <summary>Draws the list.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="list">The list, null while it is being worked out.</param>
    /// <param name="units">The unit for people.</param>
    /// <param name="first">The first line shown.</param>
    /// <returns>How many lines there are.</returns>
    public static int Draw(Picture body, Core.Planning.ForgeList? list, LengthUnit units, int first)
    {
        string[] lines = list is null ? [Words.WorkingOut] : [.. Lines(list, units, Math.Max(20, body.Width))];
        for (int i = 0; i < body.Height && first + i < lines.Length; i++)
        {
            string line = lines[first + i];
            body.Put(0, i, line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong);
        }

        return lines.Length;
    }

    private static IEnumerable<string> Lines(Core.Planning.ForgeList list, LengthUnit units, int width)
    {
        if (list.Batches.IsEmpty)
        {
            yield return Words.NothingToForge;
        }

        foreach (ForgeBatch batch in list.Batches)
        {
            yield return Words.BatchHeading(batch, units);
            foreach (string line in Picture.Wrap(Words.BatchDetails(batch), width - 2))
            {
                yield return "  " + line;
            }
        }

        IEnumerable<string> below = list
            .SharedBars.Select(sentence => sentence + ".")
            .Concat(list.Calendar.Late.Select(Words.Late))
            .Append(Words.CracksNotPlanned)
            .Append(Words.ForecastCautionShort);
        foreach (string line in Picture.Wrap(string.Join('\n', below), width - 2))
        {
            yield return "  " + line;
        }
    }
}
