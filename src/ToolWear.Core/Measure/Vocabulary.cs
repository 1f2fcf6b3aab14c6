using System.Collections.Immutable;

namespace ToolWear.Core.Measure;

/// <summary>The words of one closed list of the trade, as files, commands and screens write them.</summary>
/// <remarks>Words are lower case and compared exactly; every value has one word.</remarks>
/// <typeparam name="T">The enum behind the words.</typeparam>
public sealed class Vocabulary<T>
    where T : struct, Enum
{
    private readonly ImmutableArray<(T Value, string Word)> pairs;
    private readonly ImmutableDictionary<T, string> words;

    /// <summary>Makes a vocabulary.</summary>
    /// <param name="noun">What the words are about, for messages: "finding".</param>
    /// <param name="pairs">Each value with its word.</param>
    public Vocabulary(string noun, params ImmutableArray<(T Value, string Word)> pairs)
    {
        Noun = noun;
        All = [.. pairs.Select(pair => pair.Word)];
        this.pairs = pairs;
        words = pairs.ToImmutableDictionary(pair => pair.Value, pair => pair.Word);
    }

    /// <summary>What the words are about: "finding".</summary>
    public string Noun { get; }

    /// <summary>Every word, in the order in which it is listed.</summary>
    public ImmutableArray<string> All { get; }

    /// <summary>The word of a value.</summary>
    /// <param name="value">A value of the list.</param>
    /// <returns>Its word.</returns>
    public string Word(T value) => words[value];

    /// <summary>Reads a word.</summary>
    /// <param name="word">What was typed.</param>
    /// <param name="value">Its value.</param>
    /// <param name="refusal">Which words there are, where it is none of them.</param>
    /// <returns>True where it is one of the words.</returns>
    public bool TryParse(ReadOnlySpan<char> word, out T value, out string refusal)
    {
        // the lists are short: looking through is quicker than a table
        foreach ((T each, string itsWord) in pairs)
        {
            if (word.SequenceEqual(itsWord))
            {
                value = each;
                refusal = "";
                return true;
            }
        }

        value = default;
        refusal = $"{Noun} \"{FreeText.Shown(word.ToString())}\": one of {string.Join(", ", All)}";
        return false;
    }
}
