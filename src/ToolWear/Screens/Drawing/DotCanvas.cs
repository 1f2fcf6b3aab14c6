using System.Text;
using ToolWear.Pens;

namespace ToolWear.Screens.Drawing;

/// <summary>A drawing in dots: two by four of them in a cell of braille, or one mark a cell where the font has none.</summary>
/// <remarks>Layers lie over each other: a cell bears the ink of its highest, and in plain marks only that one.</remarks>
internal sealed class DotCanvas
{
    // the bit of a dot in U+2800, row by row, left before right (The Unicode Standard, Braille Patterns)
    private static readonly int[] Bits = [0x01, 0x08, 0x02, 0x10, 0x04, 0x20, 0x40, 0x80];

    private readonly int[] dots;
    private readonly int[] layers;
    private readonly bool hasBraille;

    /// <summary>An empty drawing.</summary>
    /// <param name="columns">Cells across.</param>
    /// <param name="rows">Cells down.</param>
    /// <param name="hasBraille">Whether the font can be trusted with braille.</param>
    public DotCanvas(int columns, int rows, bool hasBraille)
    {
        Columns = columns;
        Rows = rows;
        this.hasBraille = hasBraille;
        dots = new int[columns * rows];
        layers = new int[columns * rows];
    }

    /// <summary>Cells across.</summary>
    public int Columns { get; }

    /// <summary>Cells down.</summary>
    public int Rows { get; }

    /// <summary>Dots across.</summary>
    public int Width => Columns * 2;

    /// <summary>Dots down.</summary>
    public int Height => Rows * 4;

    /// <summary>Sets a dot; outside the drawing nothing happens.</summary>
    /// <param name="x">From the left, 0 first.</param>
    /// <param name="y">From the top, 0 first.</param>
    /// <param name="layer">Its layer, from 1.</param>
    public void Set(int x, int y, int layer)
    {
        if (x < 0 || y < 0 || x >= Width || y >= Height)
        {
            return;
        }

        int cell = (y / 4 * Columns) + (x / 2);
        dots[cell] |= Bits[(y % 4 * 2) + (x % 2)];
        layers[cell] = Math.Max(layers[cell], layer);
    }

    /// <summary>Puts the drawing into a picture.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="left">The column of its left edge.</param>
    /// <param name="top">The row of its upper edge.</param>
    /// <param name="marks">The plain mark of each layer, from layer 1.</param>
    /// <param name="inks">The ink of each layer, from layer 1.</param>
    public void PutInto(Picture picture, int left, int top, string marks, IReadOnlyList<Ink> inks)
    {
        // a drawing that is scrolled may stick out above
        for (int row = Math.Max(0, -top); row < Math.Min(Rows, picture.Height - top); row++)
        {
            for (int column = 0; column < Columns; column++)
            {
                int layer = layers[(row * Columns) + column];
                if (layer > 0)
                {
                    string text = hasBraille
                        ? new Rune(0x2800 + dots[(row * Columns) + column]).ToString()
                        : marks[layer - 1].ToString();
                    picture.Put(left + column, top + row, text, inks[layer - 1]);
                }
            }
        }
    }
}
