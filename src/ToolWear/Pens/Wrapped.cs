using System.Text;

namespace ToolWear.Pens;

/// <summary>Sentences laid out in lines of the narrowest screen.</summary>
internal static class Wrapped
{
    /// <summary>Columns of the narrowest screen.</summary>
    public const int Columns = 80;

    /// <summary>Breaks a text between words; a word longer than a line stands alone.</summary>
    /// <param name="text">Any text; its own line ends count as spaces.</param>
    /// <param name="first">What stands before the first line.</param>
    /// <param name="rest">What stands before each further line.</param>
    /// <param name="width">Columns of a line.</param>
    /// <returns>Lines, each with its line end.</returns>
    public static string Of(string text, string first = "", string rest = "", int width = Columns)
    {
        StringBuilder lines = new(first);
        int column = first.Length;
        bool isFirst = true;
        foreach (string word in text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (!isFirst && column + 1 + word.Length > width)
            {
                lines.Append('\n').Append(rest);
                column = rest.Length;
                isFirst = true;
            }

            lines.Append(isFirst ? "" : " ").Append(word);
            column += word.Length + (isFirst ? 0 : 1);
            isFirst = false;
        }

        return lines.Append('\n').ToString();
    }
}
