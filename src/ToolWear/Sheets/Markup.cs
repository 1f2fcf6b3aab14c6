using System.Globalization;
using System.Text;
using ToolWear.Core.Measure;

namespace ToolWear.Sheets;

/// <summary>Texts and numbers as they may stand in HTML and SVG.</summary>
internal static class Markup
{
    /// <summary>A text in which nothing is markup and nothing hidden: for content and for values in quotes.</summary>
    /// <param name="text">Any text, from the store too.</param>
    /// <returns>The text with &lt; &gt; &amp; and quotes written out, line ends as spaces.</returns>
    public static string Of(string? text)
    {
        StringBuilder safe = new();
        foreach (Rune rune in (text ?? "").ReplaceLineEndings(" ").EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '<' => safe.Append("&lt;"),
                '>' => safe.Append("&gt;"),
                '&' => safe.Append("&amp;"),
                '"' => safe.Append("&quot;"),
                '\'' => safe.Append("&#39;"),
                '\t' => safe.Append(' '),
                // the two that XML itself does not allow
                0xFFFE or 0xFFFF => safe.Append(Rune.ReplacementChar),
                _ => safe.Append(FreeText.IsHidden(rune) ? Rune.ReplacementChar : rune),
            };
        }

        return safe.ToString();
    }

    /// <summary>A place in a drawing, to a hundredth.</summary>
    /// <param name="value">A finite number.</param>
    /// <returns>For example "12.5".</returns>
    public static string Of(double value) =>
        (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
}
