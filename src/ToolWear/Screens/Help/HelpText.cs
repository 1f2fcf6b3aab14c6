using ToolWear.Keys;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Help;

/// <summary>The text of help, from the table of keys.</summary>
internal static class HelpText
{
    private const int KeyColumns = 11;

    /// <summary>Draws help.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="screen">The screen that is explained.</param>
    /// <param name="first">The first line shown, from 0.</param>
    /// <returns>How many lines there are.</returns>
    public static int Draw(Picture body, ScreenName screen, int first)
    {
        List<(string Key, string Text)> lines = [.. Lines(screen, body.Width)];
        for (int i = 0; i < body.Height && first + i < lines.Count; i++)
        {
            (string key, string text) = lines[first + i];
            body.Put(0, i, key, Ink.Key, KeyColumns - 1);
            body.Put(key.Length == 0 && text.Length > 0 && text[0] != ' ' ? 0 : KeyColumns, i, text.TrimStart());
        }

        return lines.Count;
    }

    private static IEnumerable<(string Key, string Text)> Lines(ScreenName screen, int width)
    {
        foreach (string line in Picture.Wrap(Words.About(screen), Math.Max(10, width)))
        {
            yield return ("", line);
        }

        yield return ("", "");
        foreach (KeyRow row in KeyTable.Of(screen))
        {
            string[] text = [.. Picture.Wrap(row.Does, Math.Max(10, width - KeyColumns))];
            yield return (row.Shown + (row.Records ? KeyWords.RecordsMark : ""), text[0]);
            foreach (string more in text.Skip(1))
            {
                yield return ("", " " + more);
            }
        }

        if (KeyTable.Of(screen).Any(row => row.Records && row.Where is not null))
        {
            yield return ("", "");
            foreach (string line in Picture.Wrap(KeyWords.RecordsLegend, Math.Max(10, width)))
            {
                yield return ("", line);
            }
        }
    }
}
