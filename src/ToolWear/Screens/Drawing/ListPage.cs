using System.Drawing;
using ToolWear.Doors;
using ToolWear.Pens;

namespace ToolWear.Screens.Drawing;

/// <summary>A column of a list: pure text, which the library's table draws.</summary>
/// <param name="Heading">What stands over it; empty for nothing.</param>
/// <param name="Width">Columns.</param>
/// <param name="Text">The cell of a row, by its number from 0.</param>
/// <param name="Ink">Its ink; null for plain.</param>
/// <param name="IsRight">Whether it stands at the right, as numbers do.</param>
internal sealed record ListColumn(
    string Heading,
    int Width,
    Func<int, string> Text,
    Func<int, Ink>? Ink = null,
    bool IsRight = false
)
{
    /// <summary>The mark at the row that is chosen.</summary>
    public static ListColumn Mark(ListPlace place) =>
        new("", 1, row => row == place.Chosen ? ">" : "", _ => Pens.Ink.Strong);

    /// <summary>A text as it stands in the column: cut where it is too long, on its side.</summary>
    public string Set(string text)
    {
        // the table of the library draws what it is given, whatever a terminal would make of it
        string fit = Picture.Fit(HarmlessWriter.Of(text), Width);
        string space = new(' ', Width - Picture.ColumnsOf(fit));
        return IsRight ? space + fit : fit + space;
    }
}

/// <summary>A list where it stands in a picture.</summary>
/// <param name="At">Its place, headings included.</param>
/// <param name="Columns">Its columns, from the left, one empty column between two.</param>
/// <param name="Place">Which row is chosen of how many.</param>
internal sealed record ListPage(Rectangle At, IReadOnlyList<ListColumn> Columns, ListPlace Place)
{
    /// <summary>Whether a row of headings stands over it.</summary>
    public bool HasHeadings => Columns.Any(column => column.Heading.Length > 0);
}
