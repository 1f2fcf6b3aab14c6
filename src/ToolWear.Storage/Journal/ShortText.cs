using System.Text.Json;

namespace ToolWear.Storage.Journal;

/// <summary>The letters of a short text of JSON, looked up in a list without being made a text of their own.</summary>
internal static class ShortText
{
    /// <summary>The room that the words of every list fit into.</summary>
    internal const int Room = 64;

    /// <summary>The text at which a reader stands.</summary>
    /// <param name="reader">A reader at a string.</param>
    /// <param name="room">Where its letters go if they fit.</param>
    /// <returns>Its letters.</returns>
    /// <exception cref="InvalidOperationException">The reader stands at something else, or at bytes that are no UTF-8.</exception>
    internal static ReadOnlySpan<char> LettersOf(scoped Utf8JsonReader reader, Span<char> room) =>
        !reader.HasValueSequence && reader.ValueSpan.Length <= room.Length
            ? room[..reader.CopyString(room)]
            : reader.GetString();
}
