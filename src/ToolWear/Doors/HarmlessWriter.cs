using System.Text;
using ToolWear.Core.Measure;

namespace ToolWear.Doors;

/// <summary>Hands text on to a terminal without what a terminal would obey: a note must not clear the screen.</summary>
/// <remarks>
/// Control characters, marks of direction and invisible ones come out as the replacement character; line ends and TAB
/// stay. Everything the program says passes here, whoever wrote it; files that it writes do not.
/// </remarks>
/// <param name="inner">Where it goes.</param>
public sealed class HarmlessWriter(TextWriter inner) : TextWriter
{
    /// <inheritdoc />
    public override Encoding Encoding => inner.Encoding;

    /// <summary>A text as it comes out.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>The text, the same where nothing in it does harm.</returns>
    public static string Of(string text)
    {
        if (!text.AsSpan().ContainsAnyExceptInRange(' ', '~'))
        {
            return text;
        }

        StringBuilder shown = new(text.Length);
        int at = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            at += rune.Utf16SequenceLength;
            bool endsLine = rune.Value is '\n' || (rune.Value is '\r' && at < text.Length && text[at] == '\n');
            shown.Append(endsLine || rune.Value is '\t' || !FreeText.IsHidden(rune) ? rune : Rune.ReplacementChar);
        }

        return shown.ToString();
    }

    /// <inheritdoc />
    public override void Write(char value) => inner.Write(Of(value.ToString()));

    /// <inheritdoc />
    public override void Write(string? value) => inner.Write(Of(value ?? ""));

    /// <inheritdoc />
    public override void Write(char[] buffer, int index, int count) =>
        inner.Write(Of(new string(buffer, index, count)));

    /// <inheritdoc />
    public override void Flush() => inner.Flush();
}
