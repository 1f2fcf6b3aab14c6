using System.IO.Hashing;
using System.Text;
using System.Text.Json;

namespace ToolWear.Storage.Entries;

/// <summary>Short texts that came by lately, so that the name of a session or a gauge mark is made once and not for every entry.</summary>
/// <remarks>
/// A place holds what was made of the last text that fell there. Threads read and write it at once: it is one word that is
/// replaced whole, and what it leads to never changes.
/// </remarks>
/// <typeparam name="T">What is made of a text: a class, or a value that holds nothing but one.</typeparam>
/// <param name="make">Makes it of a text.</param>
/// <param name="textOf">The text of what was made; null of the default.</param>
internal sealed class RememberedTexts<T>(Func<string, T> make, Func<T, string?> textOf)
{
    private const int Places = 4096;
    private const int Longest = 32;

    private readonly T[] _places = new T[Places];

    /// <summary>What the text at which a reader stands is.</summary>
    /// <param name="reader">A reader at a string.</param>
    /// <returns>What was made of it now or before.</returns>
    internal T At(ref Utf8JsonReader reader)
    {
        bool isAsItStands =
            reader.TokenType == JsonTokenType.String && !reader.HasValueSequence && !reader.ValueIsEscaped;
        return isAsItStands && Ascii.IsValid(reader.ValueSpan) ? Of(reader.ValueSpan) : make(reader.GetString() ?? "");
    }

    /// <summary>What a text is.</summary>
    /// <param name="text">A text in ASCII.</param>
    /// <returns>What was made of it now or before.</returns>
    internal T Of(ReadOnlySpan<byte> text)
    {
        if (text.Length > Longest)
        {
            return make(Encoding.ASCII.GetString(text));
        }
        ref T place = ref _places[XxHash3.HashToUInt64(text) % Places];
        T found = place;
        if (textOf(found) is not { } itsText || !Ascii.Equals(text, itsText))
        {
            found = make(Encoding.ASCII.GetString(text));
            place = found;
        }
        return found;
    }
}
