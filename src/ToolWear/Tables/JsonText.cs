using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace ToolWear.Tables;

/// <summary>Writes results as JSON.</summary>
public static class JsonText
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.Default,
    };

    /// <summary>Makes JSON text.</summary>
    /// <param name="write">Writes one value.</param>
    /// <returns>Indented JSON with a line end.</returns>
    public static string Of(Action<Utf8JsonWriter> write)
    {
        ArrayBufferWriter<byte> bytes = new();
        using (Utf8JsonWriter json = new(bytes, Options))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan) + "\n";
    }

    /// <summary>Makes one line of JSON.</summary>
    /// <param name="write">Writes one value.</param>
    /// <returns>JSON without a line break inside, and a line end.</returns>
    public static string Line(Action<Utf8JsonWriter> write)
    {
        ArrayBufferWriter<byte> bytes = new();
        using (Utf8JsonWriter json = new(bytes, Options with { Indented = false }))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan) + "\n";
    }

    /// <summary>Writes a cell as a member of an object.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="name">The member's name.</param>
    /// <param name="cell">The cell; not known is null.</param>
    public static void Write(Utf8JsonWriter json, string name, Cell cell)
    {
        if (cell.Number is { } number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteString(name, cell.Text);
        }
    }
}
