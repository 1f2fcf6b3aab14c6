using ToolWear.Keys;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.FirstStart;

/// <summary>The text of the first start.</summary>
internal static class FirstStartText
{
    /// <summary>Draws it.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="path">The path that is typed, null where none is.</param>
    public static void Draw(Picture body, string? path)
    {
        int y = 0;
        if (path is not null)
        {
            int at = body.Put(0, y, Words.ImportFrom, Ink.Strong);
            body.PutTyped(at + 1, y, path);
            y += 2;
        }

        foreach (string line in Picture.Wrap(Words.FirstWords, Math.Max(10, body.Width)))
        {
            body.Put(0, y++, line);
        }

        y++;
        foreach (KeyRow row in KeyTable.Of(ScreenName.FirstStart).Where(row => row.Where is not null))
        {
            if (row.Act != Act.Back && row.Act != Act.Enter)
            {
                body.Put(2, y, row.Shown, Ink.Key);
                foreach (string line in Picture.Wrap(row.Does, Math.Max(10, body.Width - 6)))
                {
                    body.Put(6, y++, line);
                }
            }
        }

        y++;
        foreach (string line in Picture.Wrap(Words.ShopCaution, Math.Max(10, body.Width)))
        {
            body.Put(0, y++, line, Ink.Warn);
        }
    }
}
