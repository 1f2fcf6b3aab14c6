using System.Collections.Immutable;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.ToolTable;

/// <summary>The text of the table of tools.</summary>
internal static class ToolTableText
{
    private static readonly ImmutableArray<int> Columns = [0, 10, 22, 30, 39, 51, 61];

    /// <summary>Draws the table: the rows entered, then the one that is being typed.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="rows">The rows entered.</param>
    /// <param name="line">The row that is being typed.</param>
    /// <param name="remarks">What the shop says to the answers so far, empty for nothing.</param>
    public static void Draw(Picture body, ImmutableArray<GuidedLine> rows, GuidedLine line, string remarks)
    {
        // in a narrow window the columns move left, so that the one that is typed is seen
        int moved = Math.Max(0, Columns[line.At] + Room(line.At) - body.Width);
        int[] seen = [.. Enumerable.Range(0, line.Questions.Length).Where(column => Columns[column] >= moved)];
        void Put(int column, int row, string text, Ink ink)
        {
            if (Columns[column] - moved < body.Width)
            {
                body.Put(Columns[column] - moved, row, text, ink, Room(column));
            }
        }

        string[] below =
        [
            .. Picture.Wrap($"{line.Questions[line.At].Meaning}\n{remarks}".TrimEnd(), Math.Max(10, body.Width)),
        ];
        // headings, the row that is typed, an empty one; a low window shows rows first
        int shown = Math.Max(Math.Min(rows.Length, 1), Math.Min(rows.Length, body.Height - below.Length - 3));
        int y = 1 + shown;
        foreach (int column in seen)
        {
            Put(column, 0, line.Questions[column].Name, Ink.Strong);
            for (int i = 0; i < shown; i++)
            {
                Put(column, 1 + i, rows[rows.Length - shown + i][column], Ink.Quiet);
            }

            if (column != line.At)
            {
                Put(column, y, line[column], Ink.Plain);
            }
        }

        body.PutTyped(Columns[line.At] - moved, y, line.Line.Text, Room(line.At));
        foreach (string text in below)
        {
            body.Put(0, 1 + ++y, text, Ink.Quiet);
        }
    }

    private static int Room(int column) =>
        (column + 1 < Columns.Length ? Columns[column + 1] : 80) - Columns[column] - 1;
}
