using ToolWear.Pens;
using ToolWear.Screens.Drawing;

namespace ToolWear.Tests.Screens;

/// <summary>The list of a picture as text, without the library that draws it.</summary>
internal static class ListText
{
    /// <summary>Writes the rows that are in sight into the picture.</summary>
    public static Picture WithList(this Picture picture)
    {
        if (picture.List is not { } list)
        {
            return picture;
        }

        int y = list.At.Y;
        if (list.HasHeadings)
        {
            Write(picture, list, y++, column => (column.Heading, Ink.Strong));
        }

        for (int row = list.Place.First; y < list.At.Bottom; row++, y++)
        {
            int at = row;
            Write(picture, list, y, column => (column.Text(at), column.Ink?.Invoke(at) ?? Ink.Plain));
            if (row == list.Place.Chosen && list.At.Width == picture.Width)
            {
                picture.Tint(y, Ink.Chosen);
            }
        }

        return picture;
    }

    private static void Write(Picture picture, ListPage list, int y, Func<ListColumn, (string Text, Ink Ink)> of)
    {
        int x = list.At.X;
        foreach (ListColumn column in list.Columns)
        {
            (string text, Ink ink) = of(column);
            if (column.Width > 0 && !string.IsNullOrWhiteSpace(text))
            {
                picture.Put(x, y, column.Set(text), ink);
            }

            x += column.Width + 1;
        }
    }
}
