using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using ToolWear.Pens;

namespace ToolWear.Results;

/// <summary>One figure of a result.</summary>
/// <param name="Name">Its pinned name in files.</param>
/// <param name="Heading">What it is, for people.</param>
/// <param name="Value">The figure.</param>
internal sealed record Figure(string Name, string Heading, Cell Value);

/// <summary>A few figures that belong together: a line each for people, one row of CSV, one JSON object.</summary>
/// <param name="All">The figures in their order.</param>
internal sealed record Calculated(ImmutableArray<Figure> All)
{
    /// <summary>The value of a figure by its name in files.</summary>
    /// <param name="name">The name.</param>
    public Cell this[string name] => All.First(each => each.Name == name).Value;

    /// <summary>The figures as lines for people.</summary>
    /// <returns>Lines, each with its line end.</returns>
    public string ToText()
    {
        int width = All.Max(each => each.Heading.Length);
        StringBuilder text = new();
        foreach (Figure each in All)
        {
            text.Append(each.Heading.PadRight(width + 2)).Append(each.Value.Shown).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>The figures as one row of CSV under its header.</summary>
    /// <returns>The whole file.</returns>
    public string ToCsv() =>
        new Table(
            [.. All.Select(each => new Column(each.Name, each.Heading))],
            [
                [.. All.Select(each => each.Value)],
            ]
        ).ToCsv();

    /// <summary>The figures as one JSON object; null for what is not known.</summary>
    /// <returns>Indented JSON with a line end.</returns>
    public string ToJson() => JsonPen.Of(Write);

    /// <summary>Writes the figures as a JSON object.</summary>
    /// <param name="json">Where to.</param>
    public void Write(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        foreach (Figure each in All)
        {
            JsonPen.Write(json, each.Name, each.Value);
        }

        json.WriteEndObject();
    }
}
