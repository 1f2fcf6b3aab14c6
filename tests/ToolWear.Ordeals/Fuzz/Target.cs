using System.Text;
using ToolWear.Core.Measure;

namespace ToolWear.Ordeals.Fuzz;

/// <summary>Something that takes input from outside and must take it or refuse it civilly.</summary>
internal abstract class Target
{
    /// <summary>What it is.</summary>
    public abstract string Name { get; }

    /// <summary>Tries input.</summary>
    /// <param name="chance">Which.</param>
    /// <returns>True where it was taken, false where it was refused.</returns>
    /// <exception cref="Exception">Anything: it was neither.</exception>
    public abstract bool Try(Random chance);

    /// <summary>Looks at a refusal: a sentence of bearable length that a terminal can be shown.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="most">The most characters.</param>
    /// <exception cref="InvalidOperationException">It is none.</exception>
    protected static void MustBeCivil(string? sentence, int most = 1500)
    {
        if (
            string.IsNullOrWhiteSpace(sentence)
            || sentence.Length > most
            || sentence.Contains("   at ", StringComparison.Ordinal)
            || sentence.Contains("Exception", StringComparison.Ordinal)
            || sentence.EnumerateRunes().Any(rune => rune.Value != '\n' && FreeText.IsHidden(rune))
        )
        {
            throw new InvalidOperationException($"no civil refusal: {Start(sentence ?? "nothing")}");
        }
    }

    /// <summary>The input, changed a little or nine times in a hundred noise.</summary>
    protected static byte[] Changed(byte[] valid, Random chance) =>
        chance.Next(100) < 9 ? Mutation.Noise(chance) : Mutation.Of(valid, chance);

    /// <summary>The input, changed a little or nine times in a hundred noise.</summary>
    protected static string Changed(string valid, Random chance) =>
        chance.Next(100) < 9 ? Encoding.Latin1.GetString(Mutation.Noise(chance)) : Mutation.Of(valid, chance);

    private static string Start(string text) => text[..Math.Min(text.Length, 300)];
}
