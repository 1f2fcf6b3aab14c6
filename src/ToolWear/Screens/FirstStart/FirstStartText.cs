using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.FirstStart;

/// <summary>The text of the first start.</summary>
internal static class FirstStartText
{
    private const string FirstWords =
        "The shop is empty. Most shops begin with the table: mark, form, eye, place, steel, size now, scrap size, a few seconds a tool. Everything else can wait. The demo shows what it looks like after half a year.";

    /// <summary>Draws it.</summary>
    /// <param name="body">Where to.</param>
    public static void Draw(Picture body)
    {
        int y = 0;
        foreach (string line in Picture.Wrap(FirstWords, Math.Max(10, body.Width)))
        {
            body.Put(0, y++, line);
        }

        y++;
        foreach (KeyRow row in KeyTable.Of(ScreenName.FirstStart).Where(row => row.Where is not null))
        {
            body.Put(2, y, row.Shown, Ink.Key);
            foreach (string line in Picture.Wrap(row.Does, Math.Max(10, body.Width - 6)))
            {
                body.Put(6, y++, line);
            }
        }

        y++;
        foreach (string line in Picture.Wrap(Cautions.ShopCaution, Math.Max(10, body.Width)))
        {
            body.Put(0, y++, line, Ink.Warn);
        }
    }
}
