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
/// reads. Lengths are bare millimetres, heats bare numbers, days ISO 8601; what is not known is left out.
/// </remarks>
public static class EntryFormat
{
    private static readonly JsonSerializerOptions Options = new(EntryJson.Default.Options)
    {
        TypeInfoResolver = EntryJson.Default.WithAddedModifier(ShapeAfterTheRecord),
    };

    private static readonly ImmutableArray<Row> Rows =
    [
        Row.For<ToolAdded>("tool-added"),
        Row.For<ToolRemarked>("tool-remarked"),
        Row.For<ToolStartedHere>("tool-started-here"),
        Row.For<ToolSetAside>("tool-set-aside"),
        Row.For<ToolBroughtBack>("tool-brought-back"),
        Row.For<ToolScrapped>("tool-scrapped"),
        Row.For<SessionOpened>("session-opened"),
        Row.For<SessionClosed>("session-closed"),
        Row.For<HeatsWorked>("heats-worked"),
        Row.For<ToolMeasured>("tool-measured"),
        Row.For<ToolReworked>("tool-reworked"),
        Row.For<ToolLookedOver>("tool-looked-over"),
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
        Rows.ToFrozenDictionary(row => row.Kind, row => row.Version, StringComparer.Ordinal);

    /// <summary>Writes an entry.</summary>
    /// <param name="entry">The entry.</param>
    /// <returns>One JSON object on one line; the same entry always gives the same text.</returns>
    public static string Write(LedgerEntry entry)
    {
        Row row = ByType[entry.GetType()];
        return $"{{\"kind\":\"{row.Kind}\",\"v\":{row.Version},\"entry\":{row.Write(entry)}}}";
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
        Expect(version >= 1 && version <= row.Version);
        Expect(IsNext(ref reader, "entry"u8));
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

    private abstract class Row(string kind, int version, Type type)
    {
        public string Kind => kind;

        public int Version => version;

        public Type Type => type;

        public static Row For<T>(string kind, int version = 1)
            where T : LedgerEntry => new Typed<T>(kind, version, (JsonTypeInfo<T>)Options.GetTypeInfo(typeof(T)));

        public abstract string Write(LedgerEntry entry);

        public abstract LedgerEntry Read(ref Utf8JsonReader reader);

        private sealed class Typed<T>(string kind, int version, JsonTypeInfo<T> json) : Row(kind, version, typeof(T))
            where T : LedgerEntry
        {
            public override string Write(LedgerEntry entry) => JsonSerializer.Serialize((T)entry, json);

            public override LedgerEntry Read(ref Utf8JsonReader reader) =>
                JsonSerializer.Deserialize(ref reader, json) ?? throw new JsonException("An entry is no null.");
        }
    }
}
