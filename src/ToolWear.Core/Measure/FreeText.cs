using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace ToolWear.Core.Measure;

/// <summary>What may stand in a note or a name that nothing else reads.</summary>
public static class FreeText
{
    /// <summary>The most characters of one text.</summary>
    public const int MostCharacters = 2000;

    private const int MostShown = 40;
    private const char ZeroWidthNonJoiner = '\u200C';
    private const char ZeroWidthJoiner = '\u200D';

    /// <summary>What is wrong with names or notes.</summary>
    /// <param name="names">Names, each on one line; null for one that was left out.</param>
    /// <param name="notes">Notes, in which all stands but NUL: whoever shows them takes care. Null for one that was left out.</param>
    /// <returns>A sentence, or null where nothing is.</returns>
    public static string? Fault(ImmutableArray<string?> names, ImmutableArray<string?> notes)
    {
        foreach (string? name in names)
        {
            if (name is not null && NameFault(name) is { } fault)
            {
                return fault;
            }
        }

        foreach (string? note in notes)
        {
            if (note is not null && NoteFault(note) is { } fault)
            {
                return fault;
            }
        }

        return null;
    }

    /// <summary>What is wrong with a note.</summary>
    /// <param name="note">The note.</param>
    /// <returns>A sentence, or null where nothing is.</returns>
    public static string? NoteFault(string note) =>
        note.Length > MostCharacters ? $"a text of {note.Length} characters; at most {MostCharacters}"
        : !IsWellFormed(note) ? "half a letter (a lone surrogate) cannot stand in a text"
        : note.Contains('\0', StringComparison.Ordinal) ? "a NUL cannot stand in a text"
        : null;

    /// <summary>What is wrong with a name on one line.</summary>
    /// <param name="name">The name.</param>
    /// <returns>A sentence, or null where nothing is.</returns>
    public static string? NameFault(string name) =>
        NoteFault(name)
        ?? (
            name.FirstOrDefault(BreaksTheLine, ' ') is not ' ' and var sign
                ? $"holds the control character or line end U+{(int)sign:X4}; take it out"
                : null
        );

    /// <summary>Whether a character is not seen itself but changes how a terminal or a page shows what stands around it.</summary>
    /// <param name="rune">The character.</param>
    /// <returns>True for control characters, line ends, marks of direction and invisible ones; not for those that join letters.</returns>
    public static bool IsHidden(Rune rune) =>
        Rune.GetUnicodeCategory(rune) switch
        {
            UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => true,
            UnicodeCategory.Format => rune.Value is not (ZeroWidthJoiner or ZeroWidthNonJoiner),
            _ => false,
        };

    /// <summary>A text from outside as a sentence repeats it: its beginning on one line, nothing hidden in it.</summary>
    /// <param name="text">The text.</param>
    /// <param name="most">The most characters of it.</param>
    /// <returns>The beginning, with three points behind where there is more.</returns>
    public static string Shown(string text, int most = MostShown)
    {
        int length = Math.Min(text.Length, most);
        bool isSplit = length < text.Length && char.IsSurrogatePair(text, length - 1);
        StringBuilder shown = new(length);
        foreach (Rune rune in text.AsSpan(0, isSplit ? length - 1 : length).EnumerateRunes())
        {
            _ = shown.Append(IsHidden(rune) ? Rune.ReplacementChar : rune);
        }

        return shown.Append(length < text.Length ? "..." : "").ToString();
    }

    /// <summary>What is left of a word where case, spaces, hyphens and the like do not matter.</summary>
    /// <param name="text">The text.</param>
    /// <returns>Its letters and digits, small.</returns>
    public static string Bare(string text) => string.Concat(text.Where(char.IsLetterOrDigit)).ToLowerInvariant();

    /// <summary>Whether every surrogate stands in a pair.</summary>
    /// <param name="text">The text.</param>
    /// <returns>False where one stands alone.</returns>
    public static bool IsWellFormed(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (!char.IsSurrogate(text[i]))
            {
                continue;
            }

            if (!char.IsHighSurrogate(text[i]) || i + 1 == text.Length || !char.IsLowSurrogate(text[i + 1]))
            {
                return false;
            }

            i++;
        }

        return true;
    }

    private static bool BreaksTheLine(char c) => char.IsControl(c) || c is '\u2028' or '\u2029';
}
