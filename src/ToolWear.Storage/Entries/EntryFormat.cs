using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using ToolWear.Core.Ledger;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Entries;

/// <summary>Writes ledger entries as JSON and reads them back: <c>{"kind":"heats-worked","v":1,"entry":{...}}</c>.</summary>
/// <remarks>
/// The kind is a word, never the name of a type, and stays for ever; v is the version of its fields. An older v still
/// reads. Version 2 of each kind is version 1 with the key of a command that is to be done once: "once":"KEY" before the
/// entry. Version 3 holds what version 1 cannot say, with that key or without; it is written only where it is needed. Lengths are bare millimetres, heats bare numbers, days ISO 8601; what is not known is left out.
/// </remarks>
public static class EntryFormat
{
    private const int WithOnce = 2;
    private const int WithMore = 3;

    private static readonly JsonSerializerOptions Options = new(EntryJson.Default.Options)
    {
        TypeInfoResolver = EntryJson.Default.WithAddedModifier(ShapeAfterTheRecord),
    };

    private static readonly ImmutableArray<Row> Rows =
    [
        Row.For<ToolAdded>("tool-added"),
        Row.For<ToolCorrected>("tool-corrected", e => e.Was is not null || e.Why is not null),
        Row.For<ToolRemarked>("tool-remarked"),
        Row.For<ToolStartedHere>("tool-started-here"),
        Row.For<ToolSetAside>("tool-set-aside"),
        Row.For<ToolBroughtBack>("tool-brought-back"),
        Row.For<ToolScrapped>("tool-scrapped", e => e.Part is not null || e.LedTo is not null),
        Row.For<SessionOpened>("session-opened", e => e.AtHammer is not null),
        Row.For<SessionClosed>("session-closed"),
        Row.For<HeatsWorked>("heats-worked"),
        Row.For<ToolMeasured>("tool-measured"),
        Row.For<ToolReworked>("tool-reworked", e => e.What is Rework.Tempered or Rework.Rehandled),
        Row.For<ToolLookedOver>("tool-looked-over", e => e.Part is not null),
        Row.For<EyeMeasured>("eye-measured"),
        Row.For<EyeDescribed>("eye-described"),
        Row.For<HandleDescribed>("handle-described"),
        Row.For<SeriesDescribed>("series-described"),
        Row.For<PatternDescribed>("pattern-described"),
        Row.For<BarDescribed>("bar-described"),
        Row.For<OrderDescribed>("order-described"),
        Row.For<SettingChanged>("setting-changed"),
        Row.For<EntryCrossedOut>("entry-crossed-out"),
        Row.For<HeadsDone>("heads-done"),
        Row.For<EntryCountsAgain>("entry-counts-again"),
        Row.For<ToolLent>("tool-lent"),
        Row.For<ToolTakenBack>("tool-taken-back"),
        Row.For<ToolLookedFor>("tool-looked-for"),
    ];

    private static readonly FrozenDictionary<Type, Row> ByType = Rows.ToFrozenDictionary(row => row.Type);
    private static readonly FrozenDictionary<string, Row> ByKind = Rows.ToFrozenDictionary(
        row => row.Kind,
        StringComparer.Ordinal
    );

    private static readonly FrozenDictionary<string, Row>.AlternateLookup<ReadOnlySpan<char>> BySpelledKind =
        ByKind.GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>Every kind that is known, with the newest version of its fields.</summary>
    public static IReadOnlyDictionary<string, int> Known { get; } =
        Rows.ToFrozenDictionary(row => row.Kind, row => row.Newest, StringComparer.Ordinal);

    /// <summary>Writes an entry.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="once">The key of a command that is to be done once, null for none.</param>
    /// <returns>One JSON object on one line; the same entry always gives the same text.</returns>
    public static string Write(LedgerEntry entry, string? once = null)
    {
        Row row = ByType[entry.GetType()];
        int version =
            row.SaysMore(entry) ? WithMore
            : once is null ? 1
            : WithOnce;
        string key = once is null ? "" : $",\"once\":\"{JsonEncodedText.Encode(once)}\"";
        return $"{{\"kind\":\"{row.Kind}\",\"v\":{version}{key},\"entry\":{row.Write(entry)}}}";
    }

    /// <summary>The key of the command that recorded an entry and is to be done once.</summary>
    /// <param name="body">What <see cref="Write"/> gave, in UTF-8.</param>
    /// <returns>The key; null where there was none.</returns>
    public static string? OnceOf(ReadOnlySpan<byte> body)
    {
        // never part of a text: there a quotation mark stands behind a backslash
        ReadOnlySpan<byte> name = ",\"once\":"u8;
        int at = body.IndexOf(name);
        if (at < 0)
        {
            return null;
        }
        Utf8JsonReader reader = new(body[(at + name.Length)..], isFinalBlock: false, default);
        return reader.Read() && reader.TokenType == JsonTokenType.String ? reader.GetString() : null;
    }

    /// <summary>Reads an entry.</summary>
    /// <param name="body">What <see cref="Write"/> gave, now or in an earlier version.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="JsonException">The text is none of the known kinds, or its fields are not as they should be.</exception>
    public static LedgerEntry Read(string body) => Read(Encoding.UTF8.GetBytes(body));

    /// <summary>Reads an entry.</summary>
    /// <param name="body">What <see cref="Write"/> gave, now or in an earlier version, in UTF-8.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="JsonException">The text is none of the known kinds, or its fields are not as they should be.</exception>
    public static LedgerEntry Read(ReadOnlySpan<byte> body)
    {
        try
        {
            return Parse(body);
        }
        catch (InvalidOperationException e)
        {
            // what the reader of JSON says of half a letter, such as \ud800 alone
            throw new JsonException("A text with half a letter in it.", e);
        }
    }

    private static LedgerEntry Parse(ReadOnlySpan<byte> body)
    {
        Utf8JsonReader reader = new(body);
        Expect(reader.Read() && reader.TokenType == JsonTokenType.StartObject);
        Expect(IsNext(ref reader, "kind"u8) && reader.TokenType == JsonTokenType.String);
        ReadOnlySpan<char> kind = ShortText.LettersOf(reader, stackalloc char[ShortText.Room]);
        if (!BySpelledKind.TryGetValue(kind, out Row? row))
        {
            throw new JsonException($"An entry of unknown kind \"{kind}\".");
        }

        Expect(IsNext(ref reader, "v"u8));
        int version = reader.GetInt32();
        Expect(version >= 1 && version <= row.Newest);
        Expect(reader.Read() && reader.TokenType == JsonTokenType.PropertyName);
        bool hasOnce = reader.ValueTextEquals("once"u8);
        Expect(version == WithOnce ? hasOnce : version == WithMore || !hasOnce);
        if (hasOnce)
        {
            Expect(reader.Read() && reader.TokenType == JsonTokenType.String && reader.Read());
            Expect(reader.TokenType == JsonTokenType.PropertyName);
        }

        Expect(reader.ValueTextEquals("entry"u8) && reader.Read());
        LedgerEntry entry = row.Read(ref reader);
        Expect(reader.Read() && reader.TokenType == JsonTokenType.EndObject && !reader.Read());
        return entry;
    }

    private static bool IsNext(ref Utf8JsonReader reader, ReadOnlySpan<byte> name) =>
        reader.Read()
        && reader.TokenType == JsonTokenType.PropertyName
        && reader.ValueTextEquals(name)
        && reader.Read();

    private static void ShapeAfterTheRecord(JsonTypeInfo type)
    {
        foreach (JsonPropertyInfo property in type.Properties)
        {
            if (property.AssociatedParameter is null)
            {
                // worked out from what the record is made of: never written, and passed over where older lines hold it
                property.Get = null;
                continue;
            }

            // what is not marked as unknowable must stand in the text: no default ever takes its place
            bool isNullable = Nullable.GetUnderlyingType(property.PropertyType) is not null || property.IsGetNullable;
            property.IsRequired = !isNullable;
        }
    }

    private static void Expect(bool isAsWritten)
    {
        if (!isAsWritten)
        {
            throw new JsonException("An entry is {\"kind\":...,\"v\":...,\"entry\":{...}}.");
        }
    }

    private abstract class Row(string kind, Type type, int newest)
    {
        public string Kind => kind;

        public Type Type => type;

        public int Newest => newest;

        public static Row For<T>(string kind, Func<T, bool>? saysMore = null)
            where T : LedgerEntry => new Typed<T>(kind, (JsonTypeInfo<T>)Options.GetTypeInfo(typeof(T)), saysMore);

        public abstract bool SaysMore(LedgerEntry entry);

        public abstract string Write(LedgerEntry entry);

        public abstract LedgerEntry Read(ref Utf8JsonReader reader);

        private sealed class Typed<T>(string kind, JsonTypeInfo<T> json, Func<T, bool>? saysMore)
            : Row(kind, typeof(T), saysMore is null ? WithOnce : WithMore)
            where T : LedgerEntry
        {
            public override bool SaysMore(LedgerEntry entry) => saysMore?.Invoke((T)entry) == true;

            public override string Write(LedgerEntry entry) => JsonSerializer.Serialize((T)entry, json);

            public override LedgerEntry Read(ref Utf8JsonReader reader) =>
                JsonSerializer.Deserialize(ref reader, json) ?? throw new JsonException("An entry is no null.");
        }
    }
}
