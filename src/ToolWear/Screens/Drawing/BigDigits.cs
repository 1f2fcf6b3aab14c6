using System.Drawing;
using ToolWear.Pens;

namespace ToolWear.Screens.Drawing;

/// <summary>Figures large enough to be read from three metres: five dots high, drawn with full blocks.</summary>
internal static class BigDigits
{
    /// <summary>Dots from top to bottom.</summary>
    public const int Dots = 5;

    private static readonly Dictionary<char, string[]> Shapes = new()
    {
        ['0'] = ["###", "# #", "# #", "# #", "###"],
        ['1'] = [" # ", "## ", " # ", " # ", "###"],
        ['2'] = ["###", "  #", "###", "#  ", "###"],
        ['3'] = ["###", "  #", " ##", "  #", "###"],
        ['4'] = ["# #", "# #", "###", "  #", "  #"],
        ['5'] = ["###", "#  ", "###", "  #", "###"],
        ['6'] = ["###", "#  ", "###", "# #", "###"],
        ['7'] = ["###", "  #", "  #", " # ", " # "],
        ['8'] = ["###", "# #", "###", "# #", "###"],
        ['9'] = ["###", "# #", "###", "  #", "###"],
        ['.'] = [" ", " ", " ", " ", "#"],
    };

    /// <summary>Draws a number as large as its place allows.</summary>
    /// <param name="picture">Where to.</param>
    /// <param name="column">The left edge.</param>
    /// <param name="row">The top edge.</param>
    /// <param name="width">Columns it may take.</param>
    /// <param name="height">Rows it may take.</param>
    /// <param name="number">Digits and at most one point.</param>
    /// <param name="ink">Its ink.</param>
    /// <returns>What it took.</returns>
    public static Size Draw(Picture picture, int column, int row, int width, int height, string number, Ink ink)
    {
        int dots = number.Sum(each => Shapes[each][0].Length + 1) - 1;
        int tall = height / Dots;
        int wide = Math.Min(tall * 2, width / dots);
        if (tall == 0 || wide == 0)
        {
            picture.Put(column, row, number, Ink.Strong, width);
            return new Size(Math.Min(width, number.Length), 1);
        }

        // a dot is about twice as tall as wide: never stretch it further
        tall = Math.Min(tall, wide);
        int at = column;
        foreach (string[] shape in number.Select(each => Shapes[each]))
        {
            for (int y = 0; y < Dots * tall; y++)
            {
                string line = string.Concat(shape[y / tall].Select(dot => new string(dot == '#' ? '█' : ' ', wide)));
                picture.Put(at, row + y, line, ink);
            }

            at += (shape[0].Length + 1) * wide;
        }

        return new Size(dots * wide, Dots * tall);
    }
}
