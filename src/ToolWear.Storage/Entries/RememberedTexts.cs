using System.IO.Hashing;
using System.Text;
using System.Text.Json;

namespace ToolWear.Storage.Entries;

/// <summary>Short texts that came by lately, so that the name of a session or a gauge mark is made once and not for every entry.</summary>
/// <remarks>A place holds what was made of the last text that fell there. Threads read and write it at once: it is one word that is
/// replaced whole, and what it leads to never changes.</remarks>
/// <typeparam name="T">What is made of a text: a class, or a value that holds nothing but one.</typeparam>
/// <param name="make">Makes it of the text at which a reader stands.</param>
/// <param name="textOf">The text of what was made; null of the default.</param>
internal sealed class RememberedTexts<T>(RememberedTexts<T>.Make make, Func<T, string?> textOf)
{
    private const int Places = 4096;
    private const int Longest = 32;

    private readonly T[] _places = new T[Places];

    /// <summary>Makes something of the text at which a reader stands.</summary>
    /// <param name="reader">A reader at a string.</param>
    /// <returns>What it is.</returns>
    internal delegate T Make(ref Utf8JsonReader reader);

    /// <summary>What the text at which a reader stands is.</summary>
    /// <param name="reader">A reader at a string.</param>
    /// <returns>What was made of it now or before.</returns>
    internal T At(ref Utf8JsonReader reader)
    {
        bool isShort =
            reader.TokenType == JsonTokenType.String
            && !reader.HasValueSequence
            && !reader.ValueIsEscaped
            && reader.ValueSpan.Length <= Longest;
        if (!isShort)
        {
            return make(ref reader);
        }
        ref T place = ref _places[XxHash3.HashToUInt64(reader.ValueSpan) % Places];
        T found = place;
        // what is not ASCII never equals here and is made each time
        if (textOf(found) is not { } text || !Ascii.Equals(reader.ValueSpan, text))
        {
            found = make(ref reader);
            place = found;
        }
        return found;
    }
}
