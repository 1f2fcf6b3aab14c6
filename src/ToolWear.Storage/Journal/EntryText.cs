using System.Text.Json;

namespace ToolWear.Storage.Journal;

/// <summary>The two things the store must know of an entry: its kind and the version of that kind.</summary>
/// <param name="Kind">The word of the kind, not empty.</param>
/// <param name="Version">The version, 1 or more.</param>
internal readonly record struct EntryText(string Kind, int Version)
{
    /// <summary>Reads kind and version of the object at which a reader stands, and leaves it at the object's end.</summary>
    /// <param name="reader">A reader whose token is the start of an object.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <returns>Kind and version.</returns>
    /// <exception cref="JsonException">The text is no JSON, or has no kind and version at its top.</exception>
    internal static EntryText Read(ref Utf8JsonReader reader, KnownKinds kinds)
    {
        string? kind = null;
        int version = 0;
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            if (kind is null && reader.ValueTextEquals("kind"u8))
            {
                reader.Read();
                kind = reader.TokenType == JsonTokenType.String ? kinds.Word(ref reader) : null;
            }
            else if (version == 0 && reader.ValueTextEquals("v"u8))
            {
                reader.Read();
                bool isWhole = reader.TokenType == JsonTokenType.Number && reader.TryGetInt32(out version);
                version = isWhole ? version : 0;
            }
            else
            {
                reader.Read();
            }
            // a value of the wrong kind may be an array or an object: step over it whole
            reader.Skip();
        }
        return string.IsNullOrEmpty(kind) || version < 1
            ? throw new JsonException("An entry has a \"kind\" (a word) and a \"v\" (1 or more).")
            : new EntryText(kind, version);
    }

    /// <summary>Reads kind and version of an entry that is about to be written.</summary>
    /// <param name="body">The entry in UTF-8.</param>
    /// <param name="kinds">What this program knows.</param>
    /// <returns>Kind and version.</returns>
    /// <exception cref="JsonException">It is not exactly one JSON object on one line, with kind and version.</exception>
    internal static EntryText ReadOne(ReadOnlySpan<byte> body, KnownKinds kinds)
    {
        // a line end inside an entry would be a line of the journal
        if (body.IndexOfAnyInRange((byte)0, (byte)0x1f) >= 0)
        {
            throw new JsonException("An entry has no control characters.");
        }
        var reader = new Utf8JsonReader(body);
        if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject)
        {
            throw new JsonException("An entry is a JSON object.");
        }
        EntryText entry = Read(ref reader, kinds);
        return reader.Read() ? throw new JsonException("An entry is one JSON object.") : entry;
    }
}
