using System.Text;
using System.Text.RegularExpressions;

namespace ToolWear.Pens;

/// <summary>Sentences laid out in lines of the narrowest screen.</summary>
internal static partial class Wrapped
{
    // a blank at which no line is broken
    private const char Bound = '\u00a0';

    /// <summary>Columns of the narrowest screen.</summary>
    public const int Columns = 80;

    /// <summary>Breaks a text between words, never between a number and its unit; a word longer than a line stands alone.</summary>
    /// <param name="text">Any text; its own line ends count as spaces.</param>
    /// <param name="first">What stands before the first line.</param>
    /// <param name="rest">What stands before each further line.</param>
    /// <param name="width">Columns of a line.</param>
    /// <param name="columns">How many columns a text takes; null where each sign takes one.</param>
    /// <returns>Lines, each with its line end.</returns>
    public static string Of(
        string text,
        string first = "",
        string rest = "",
        int width = Columns,
        Func<string, int>? columns = null
    )
    {
        columns ??= TextPen.Width;
        StringBuilder lines = new(first);
        int column = first.Length;
        bool isFirst = true;
        foreach (
            string word in BeforeUnit()
                .Replace(text, $"{Bound}")
                .Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)
        )
        {
            if (!isFirst && column + 1 + columns(word) > width)
            {
                lines.Append('\n').Append(rest);
                column = rest.Length;
                isFirst = true;
            }

            lines.Append(isFirst ? "" : " ").Append(word);
            column += columns(word) + (isFirst ? 0 : 1);
            isFirst = false;
        }

        return lines.Append('\n').Replace(Bound, ' ').ToString();
    }

    /// <summary>A text in which a line that is too long is broken between words; what follows stands below its beginning.</summary>
    /// <param name="text">Lines.</param>
    /// <param name="width">Columns of a line.</param>
    /// <param name="columns">How many columns a text takes; null where each sign takes one.</param>
    /// <returns>The lines, none wider unless by one word.</returns>
    public static string Lines(string text, int width, Func<string, int>? columns = null) =>
        string.Join(
            '\n',
            text.Split('\n')
                .Select(line =>
                {
                    string indent = line[..^line.TrimStart().Length];
                    return (columns ?? TextPen.Width)(line) <= width
                        ? line
                        : Of(line, indent, indent, width, columns).TrimEnd('\n');
                })
        );

    /// <summary>A command line as a shell takes it in several lines; what stands in quotes stays in one.</summary>
    /// <param name="line">The line.</param>
    /// <returns>Lines, each with its line end.</returns>
    public static string Command(string line)
    {
        string kept = string.Join(
            '\'',
            line.Split('\'').Select((part, i) => i % 2 == 1 ? part.Replace(' ', Bound) : part)
        );
        return Of(kept, "  ", "    ", Columns - 2).TrimEnd('\n').Replace("\n", " \\\n", StringComparison.Ordinal)
            + "\n";
    }

    [GeneratedRegex(@"(?<=\d) (?=(%|(mm|kg|in|h)\b))")]
    private static partial Regex BeforeUnit();
}
