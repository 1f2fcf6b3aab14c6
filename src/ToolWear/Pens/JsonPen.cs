using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ToolWear.Results;

namespace ToolWear.Pens;

/// <summary>Draws results as JSON; what is not known is null.</summary>
internal static class JsonPen
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.Default,
    };

    /// <summary>Makes JSON text of what writes one value, with a line end.</summary>
    public static string Of(Action<Utf8JsonWriter> write, bool isIndented = true)
    {
        ArrayBufferWriter<byte> bytes = new();
        using (Utf8JsonWriter json = new(bytes, Options with { Indented = isIndented }))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan) + "\n";
    }

    /// <summary>A list of objects, or the one object.</summary>
    public static string ToJson(this Table table) => Of(table.Write);

    /// <summary>An object a row, each on a line of its own; empty where there is no row.</summary>
    public static string ToJsonLines(this Table table) =>
        string.Concat(table.Rows.Select(row => Of(json => table.Write(json, row), isIndented: false)));

    /// <summary>Writes a list of objects, or the one object.</summary>
    public static void Write(this Table table, Utf8JsonWriter json)
    {
        if (table.IsOne)
        {
            table.Write(json, table.Rows[0]);
            return;
        }

        json.WriteStartArray();
        foreach (ImmutableArray<Cell> row in table.Rows)
        {
            table.Write(json, row);
        }

        json.WriteEndArray();
    }

    /// <summary>Writes a row as an object.</summary>
    public static void Write(this Table table, Utf8JsonWriter json, ImmutableArray<Cell> row)
    {
        json.WriteStartObject();
        foreach ((string name, int index) in table.InFiles)
        {
            Write(json, name, row[index]);
        }

        json.WriteEndObject();
    }

    /// <summary>Writes a cell as a member of an object.</summary>
    public static void Write(Utf8JsonWriter json, string name, Cell cell)
    {
        if (cell.Part is { } part)
        {
            json.WritePropertyName(name);
            part.Write(json);
        }
        else if (cell.Number is { } number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteString(name, cell.Text);
        }
    }
}
