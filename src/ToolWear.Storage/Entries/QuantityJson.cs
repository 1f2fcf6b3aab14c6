using System.Text.Json;
using System.Text.Json.Serialization;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;

namespace ToolWear.Storage.Entries;

/// <summary>A length as bare millimetres, exact.</summary>
internal sealed class LengthJson : JsonConverter<Length>
{
    private const decimal Most = 1e9m;

    /// <inheritdoc />
    public override Length Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Read(ref reader);

    /// <summary>Reads a length.</summary>
    /// <param name="reader">A reader at a number.</param>
    /// <returns>The length.</returns>
    /// <exception cref="JsonException">It is longer than any length that is written.</exception>
    internal static Length Read(ref Utf8JsonReader reader)
    {
        decimal mm = reader.GetDecimal();
        return decimal.Abs(mm) <= Most
            ? Length.FromMm(mm)
            : throw new JsonException("A length is at most a thousand kilometres.");
    }

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, Length value, JsonSerializerOptions options) =>
        writer.WriteRawValue(value.ToMmText());
}

/// <summary>Heats as a bare number in steps of a half.</summary>
internal sealed class HeatsJson : JsonConverter<Heats>
{
    /// <inheritdoc />
    public override Heats Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        decimal count = reader.GetDecimal();
        return count >= 0 && count <= int.MaxValue / 2 && count * 2 == decimal.Truncate(count * 2)
            ? Heats.OfHalves((int)(count * 2))
            : throw new JsonException("Heats are zero or more in steps of a half.");
    }

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, Heats value, JsonSerializerOptions options) =>
        writer.WriteRawValue(value.ToString());
}

/// <summary>A mark as its text.</summary>
internal sealed class ToolMarkJson : JsonConverter<ToolMark>
{
    private readonly RememberedTexts<ToolMark> _marks = new(Parse, mark => mark.Text);

    /// <inheritdoc />
    public override ToolMark Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        _marks.At(ref reader);

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, ToolMark value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.Text);

    private static ToolMark Parse(ref Utf8JsonReader reader) =>
        ToolMark.TryParse(reader.GetString() ?? "", out ToolMark mark, out string refusal)
            ? mark
            : throw new JsonException(refusal);
}

/// <summary>A text as it stands.</summary>
internal sealed class TextJson : JsonConverter<string>
{
    private readonly RememberedTexts<string> _texts = new(
        (ref Utf8JsonReader reader) => reader.GetString()!,
        text => text
    );

    /// <inheritdoc />
    public override string Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        _texts.At(ref reader);

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, string value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value);
}

/// <summary>A form by its name.</summary>
internal sealed class ToolFormJson : JsonConverter<ToolForm>
{
    /// <inheritdoc />
    public override ToolForm Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        ToolForms.TryFind(reader.GetString() ?? "", out ToolForm form, out string refusal)
            ? form
            : throw new JsonException(refusal);

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, ToolForm value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.Name);
}

/// <summary>A section as an array: its kind, then length, width and radius in millimetres, as a smith gives them.</summary>
internal sealed class SectionJson : JsonConverter<Section>
{
    /// <inheritdoc />
    public override Section Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        Expect(reader.TokenType == JsonTokenType.StartArray && reader.Read());
        string word = reader.GetString() ?? "";
        Length[] sizes = new Length[3];
        for (int i = 0; i < sizes.Length; i++)
        {
            Expect(reader.Read());
            sizes[i] = LengthJson.Read(ref reader);
        }

        Expect(reader.Read() && reader.TokenType == JsonTokenType.EndArray);
        return
            SectionKinds.Words.TryParse(word, out SectionKind kind, out _)
            && Section.TryMake(kind, sizes[0], sizes[1], sizes[2], out Section? section, out _)
            ? section
            : throw new JsonException($"There is no section {word} of these sizes.");
    }

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, Section value, JsonSerializerOptions options)
    {
        Length radius = value switch
        {
            RectangleSection rectangle => rectangle.EdgeRadius,
            TeardropSection teardrop => teardrop.NoseRadius,
            _ => Length.Zero,
        };
        writer.WriteStartArray();
        writer.WriteStringValue(SectionKinds.Words.Word(value.Kind));
        writer.WriteRawValue(value.EyeLength.ToMmText());
        writer.WriteRawValue(value.EyeWidth.ToMmText());
        writer.WriteRawValue(radius.ToMmText());
        writer.WriteEndArray();
    }

    private static void Expect(bool isAsWritten)
    {
        if (!isAsWritten)
        {
            throw new JsonException("A section is [kind, length, width, radius].");
        }
    }
}
