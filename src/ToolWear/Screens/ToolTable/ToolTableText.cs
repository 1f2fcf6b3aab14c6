using System.Collections.Immutable;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.ToolTable;

/// <summary>The text of the table of tools.</summary>
public static class ToolTableText
{
    private static readonly ImmutableArray<int> Columns = [0, 10, 22, 30, 39, 51, 61];

    /// <summary>Draws the table: the rows entered, then the one that is being typed.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="rows">The rows entered.</param>
    /// <param name="line">The row that is being typed.</param>
    /// <param name="remarks">What the shop says to the answers so far, empty for nothing.</param>
    public static void Draw(Picture body, IReadOnlyList<ToolSheet> rows, SheetLine line, string remarks)
    {
        for (int i = 0; i < line.Questions.Length; i++)
        {
            body.Put(Columns[i], 0, Words.Column(line.Questions[i]), Ink.Strong, Room(i));
        }

        int shown = Math.Max(0, Math.Min(rows.Count, body.Height - 5));
        int y = 1;
        foreach (ToolSheet row in rows.Skip(rows.Count - shown))
        {
            for (int i = 0; i < line.Questions.Length; i++)
            {
                body.Put(Columns[i], y, row[line.Questions[i]], Ink.Quiet, Room(i));
            }

            y++;
        }

        for (int i = 0; i < line.Questions.Length; i++)
        {
            string text = i == line.At ? line.Line.Text + "_" : line.Sheet[line.Questions[i]];
            body.Put(Columns[i], y, text, i == line.At ? Ink.Typed : Ink.Plain, Room(i));
        }

        foreach (
            string text in Picture.Wrap($"{Words.Question(line.Asked)}\n{remarks}".TrimEnd(), Math.Max(10, body.Width))
        )
        {
            body.Put(0, 1 + ++y, text, Ink.Quiet);
        }
    }

    private static int Room(int column) =>
        (column + 1 < Columns.Length ? Columns[column + 1] : 80) - Columns[column] - 1;
}
