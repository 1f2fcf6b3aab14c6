using System.Text;

namespace ToolWear.Pens;

/// <summary>Cuts names that are too long: their beginning stays, and their last words, which tell a tool's place.</summary>
internal static class Shortened
{
    private const int MostTail = 14;
    private const int LeastHead = 4;

    /// <summary>A text in so many columns.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">Columns, 1 or more.</param>
    /// <returns>The text itself where it fits, else "E1 of …rough drift"; cut at its end where no last word fits.</returns>
    public static string In(string text, int width)
    {
        Rune[] runes = [.. text.EnumerateRunes()];
        if (runes.Length <= width)
        {
            return text;
        }

        int tail = 0;
        for (int i = runes.Length - 1; i > 0 && runes.Length - i <= Math.Min(MostTail, width - LeastHead - 1); i--)
        {
            tail = runes[i - 1] == new Rune(' ') ? runes.Length - i : tail;
        }

        return Of(runes[..Math.Max(0, width - 1 - tail)]) + "…" + Of(runes[^tail..]);
    }

    private static string Of(IEnumerable<Rune> runes) => string.Concat(runes);
}
