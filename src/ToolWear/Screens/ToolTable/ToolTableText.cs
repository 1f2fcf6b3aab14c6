using System.Collections.Immutable;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;

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
    public static void Draw(Picture body, IReadOnlyList<ToolSheet> rows, SheetLine line, string remarks)
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

        string[] below = [.. Picture.Wrap($"{Question(line.Asked)}\n{remarks}".TrimEnd(), Math.Max(10, body.Width))];
        // headings, the row that is typed, an empty one; a low window shows rows first
        int shown = Math.Max(Math.Min(rows.Count, 1), Math.Min(rows.Count, body.Height - below.Length - 3));
        int y = 1 + shown;
        foreach (int column in seen)
        {
            Put(column, 0, Column(line.Questions[column]), Ink.Strong);
            for (int i = 0; i < shown; i++)
            {
                Put(column, 1 + i, rows[rows.Count - shown + i][line.Questions[column]], Ink.Quiet);
            }

            if (column != line.At)
            {
                Put(column, y, line.Sheet[line.Questions[column]], Ink.Plain);
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

    internal static string Column(Asked asked) =>
        asked switch
        {
            Asked.Mark => "Mark",
            Asked.Form => "Form",
            Asked.Eye => "Eye",
            Asked.Place => "Place",
            Asked.Steel => "Steel",
            Asked.Start => "New or in use",
            Asked.Before => "Heats before",
            Asked.Size => "Size now",
            _ => "Scrap size",
        };

    internal static string Question(Asked asked) =>
        asked switch
        {
            Asked.Mark => "The mark stamped on the tool, such as R3.",
            Asked.Form =>
                "What it is: the first letters do, or the arrows. drift, slitter, slot punch, punch, fuller, ...",
            Asked.Eye => "The eye it works for, such as H; empty where it serves all.",
            Asked.Place =>
                "Its place in the series: opener, rough, second, finish, none. The first letters do, or the arrows.",
            Asked.Steel => "Its steel, such as 4140; empty where nobody knows.",
            Asked.Start => "New from the fire, or in use already: the arrows change it.",
            Asked.Before =>
                "Heats it worked before these records, roughly; empty where nobody knows, or where it is new.",
            Asked.Size => "The size at its gauge mark now (of a new tool, as made); empty where not measured yet.",
            _ =>
                "The size at which it is done: under it for a drift, over it for a fuller's flat; empty where none is set.",
        };
}
