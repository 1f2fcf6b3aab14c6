using System.Text;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Tools;

/// <summary>The mark stamped on a tool: "R3". Its case is kept; equality is exact.</summary>
/// <remarks>1 to 40 characters in normal form C, no control characters, no space at either end. The default is no mark.</remarks>
public readonly record struct ToolMark
{
    /// <summary>The most characters of a mark or a name.</summary>
    public const int MostCharacters = 40;

    private ToolMark(string text) => Text = text;

    /// <summary>The mark as stamped.</summary>
    public string Text { get; }

    /// <summary>Reads a mark.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="mark">The mark, brought to normal form C.</param>
    /// <param name="refusal">What is wrong and what would be right, where it cannot be one.</param>
    /// <returns>True where it can be a mark.</returns>
    public static bool TryParse(string text, out ToolMark mark, out string refusal)
    {
        refusal = Fault("mark", text) ?? "";
        mark = refusal.Length == 0 ? new(NormalFormC.Of(text)) : default;
        return refusal.Length == 0;
    }

    /// <summary>What is wrong with a text as a mark or a name.</summary>
    /// <param name="noun">What it names: "mark", "pattern".</param>
    /// <param name="text">The text.</param>
    /// <returns>A sentence, or null where nothing is.</returns>
    public static string? Fault(string noun, string text)
    {
        if (!FreeText.IsWellFormed(text) || text.EnumerateRunes().Any(IsHidden))
        {
            return $"{noun}: control and invisible characters cannot stand in it";
        }

        int length = NormalFormC.Of(text).Length;
        return length == 0 || text.Trim().Length != text.Length
                ? $"{noun} \"{FreeText.Shown(text)}\": 1 to {MostCharacters} characters with no space at either end"
            : length > MostCharacters ? $"{noun} of {length} characters: at most {MostCharacters}"
            : null;
    }

    /// <summary>The mark as stamped.</summary>
    /// <returns>The text, empty for no mark.</returns>
    public override string ToString() => Text ?? "";

    private static bool IsHidden(Rune rune) =>
        FreeText.IsHidden(rune)
        || Rune.GetUnicodeCategory(rune)
            is System.Globalization.UnicodeCategory.Format
                or System.Globalization.UnicodeCategory.PrivateUse;
}
