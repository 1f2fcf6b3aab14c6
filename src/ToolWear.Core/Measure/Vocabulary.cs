using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ToolWear.Core.Measure;

/// <summary>The words of one closed list of the trade, as files, commands and screens write them.</summary>
/// <remarks>Words are lower case and compared exactly; every value has one word.</remarks>
/// <typeparam name="T">The enum behind the words.</typeparam>
public sealed class Vocabulary<T>
    where T : struct, Enum
{
    // a list of the trade is short: looking through it takes no longer than a dictionary would, and a dictionary for
    // each enum would be hundreds of methods that a program compiled ahead still has to compile when it starts
    private readonly T[] values;

    /// <summary>Makes a vocabulary.</summary>
    /// <param name="noun">What the words are about, for messages: "finding".</param>
    /// <param name="pairs">Each value with its word.</param>
    /// <exception cref="ArgumentException">A word or a value stands there twice.</exception>
    public Vocabulary(string noun, params ImmutableArray<(T Value, string Word)> pairs)
    {
        Noun = noun;
        values = new T[pairs.Length];
        string[] words = new string[pairs.Length];
        for (int i = 0; i < pairs.Length; i++)
        {
            (values[i], words[i]) = pairs[i];
            if (Array.IndexOf(words, words[i]) < i || Place(values[i]) < i)
            {
                throw new ArgumentException($"{noun} \"{words[i]}\" stands there twice", nameof(pairs));
            }
        }

        All = ImmutableCollectionsMarshal.AsImmutableArray(words);
    }

    /// <summary>What the words are about: "finding".</summary>
    public string Noun { get; }

    /// <summary>Every word, in the order in which it is listed.</summary>
    public ImmutableArray<string> All { get; }

    /// <summary>The word of a value.</summary>
    /// <param name="value">A value of the list.</param>
    /// <returns>Its word.</returns>
    /// <exception cref="KeyNotFoundException">It is none of them.</exception>
    public string Word(T value) =>
        Place(value) is >= 0 and var at ? All[at] : throw new KeyNotFoundException($"{Noun} {value}");

    /// <summary>Reads a word.</summary>
    /// <param name="word">What was typed.</param>
    /// <param name="value">Its value.</param>
    /// <param name="refusal">Which words there are, where it is none of them.</param>
    /// <returns>True where it is one of the words.</returns>
    public bool TryParse(ReadOnlySpan<char> word, out T value, out string refusal)
    {
        int at = 0;
        while (at < All.Length && !word.SequenceEqual(All[at]))
        {
            at++;
        }

        bool isKnown = at < All.Length;
        value = isKnown ? values[at] : default;
        refusal = isKnown ? "" : NearNames.Refusal(Noun, word.ToString(), All);
        return isKnown;
    }

    private int Place(T value)
    {
        int wanted = Unsafe.BitCast<T, int>(value);
        for (int i = 0; i < values.Length; i++)
        {
            if (Unsafe.BitCast<T, int>(values[i]) == wanted)
            {
                return i;
            }
        }

        return -1;
    }
}
