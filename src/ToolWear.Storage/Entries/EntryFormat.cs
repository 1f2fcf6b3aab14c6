using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using ToolWear.Core.Ledger;

namespace ToolWear.Storage.Entries;

/// <summary>Writes ledger entries as JSON and reads them back: <c>{"kind":"heats-worked","v":1,"entry":{...}}</c>.</summary>
/// <remarks>
/// The kind is a word, never the name of a type, and stays for ever; v is the version of its fields. An older v still
/// reads. Lengths are bare millimetres, heats bare numbers, days ISO 8601; what is not known is left out.
/// </remarks>
public static class EntryFormat
{
    private static readonly ImmutableArray<Row> Rows =
    [
        Row.For("tool-added", EntryJson.Default.ToolAdded),
        Row.For("tool-remarked", EntryJson.Default.ToolRemarked),
        Row.For("tool-started-here", EntryJson.Default.ToolStartedHere),
        Row.For("tool-set-aside", EntryJson.Default.ToolSetAside),
        Row.For("tool-brought-back", EntryJson.Default.ToolBroughtBack),
        Row.For("tool-scrapped", EntryJson.Default.ToolScrapped),
        Row.For("session-opened", EntryJson.Default.SessionOpened),
        Row.For("session-closed", EntryJson.Default.SessionClosed),
        Row.For("heats-worked", EntryJson.Default.HeatsWorked),
        Row.For("tool-measured", EntryJson.Default.ToolMeasured),
        Row.For("tool-reworked", EntryJson.Default.ToolReworked),
        Row.For("tool-looked-over", EntryJson.Default.ToolLookedOver),
        Row.For("eye-measured", EntryJson.Default.EyeMeasured),
        Row.For("eye-described", EntryJson.Default.EyeDescribed),
        Row.For("handle-described", EntryJson.Default.HandleDescribed),
        Row.For("series-described", EntryJson.Default.SeriesDescribed),
        Row.For("pattern-described", EntryJson.Default.PatternDescribed),
        Row.For("bar-described", EntryJson.Default.BarDescribed),
        Row.For("order-described", EntryJson.Default.OrderDescribed),
        Row.For("setting-changed", EntryJson.Default.SettingChanged),
        Row.For("entry-crossed-out", EntryJson.Default.EntryCrossedOut),
    ];

    private static readonly FrozenDictionary<Type, Row> ByType = Rows.ToFrozenDictionary(row => row.Type);
    private static readonly FrozenDictionary<string, Row> ByKind = Rows.ToFrozenDictionary(
        row => row.Kind,
        StringComparer.Ordinal
    );

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
    public static LedgerEntry Read(string body)
    {
        Utf8JsonReader reader = new(Encoding.UTF8.GetBytes(body));
        Expect(reader.Read() && reader.TokenType == JsonTokenType.StartObject);
        Expect(reader.Read() && reader.ValueTextEquals("kind"u8) && reader.Read());
        string kind = reader.GetString() ?? "";
        if (!ByKind.TryGetValue(kind, out Row? row))
        {
            throw new JsonException($"An entry of unknown kind \"{kind}\".");
        }

        Expect(reader.Read() && reader.ValueTextEquals("v"u8) && reader.Read());
        int version = reader.GetInt32();
        Expect(version >= 1 && version <= row.Version);
        Expect(reader.Read() && reader.ValueTextEquals("entry"u8) && reader.Read());
        LedgerEntry entry = row.Read(ref reader);
        Expect(reader.Read() && reader.TokenType == JsonTokenType.EndObject && !reader.Read());
        return entry;
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

        public static Row For<T>(string kind, JsonTypeInfo<T> json, int version = 1)
            where T : LedgerEntry => new Typed<T>(kind, version, json);

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
