using System.Collections.Immutable;

namespace ToolWear.Core.Measure;

/// <summary>What may stand in a note or a name that nothing else reads.</summary>
public static class FreeText
{
    /// <summary>The most characters of one text.</summary>
    public const int MostCharacters = 2000;

    /// <summary>What is wrong with one of several texts.</summary>
    /// <param name="texts">The texts; null for one that was left out.</param>
    /// <returns>A sentence, or null where nothing is.</returns>
    public static string? Fault(ImmutableArray<string?> texts)
    {
        foreach (string? text in texts)
        {
            if (text is not null && Fault(text) is { } fault)
            {
                return fault;
            }
        }

        return null;
    }

    private static string? Fault(string text) =>
        text.Length > MostCharacters ? $"a text of {text.Length} characters: at most {MostCharacters}"
        : text.Any(c => char.IsControl(c) && c is not ('\t' or '\r' or '\n'))
            ? "control characters cannot stand in a text"
        : null;
}
