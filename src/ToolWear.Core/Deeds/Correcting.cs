using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Deeds;

/// <summary>A tool that was entered wrongly, or of which more is known now.</summary>
public static class Correcting
{
    /// <summary>The entry: the tool as it is, as it was said to be, and why.</summary>
    /// <param name="tool">The tool of the shop.</param>
    /// <param name="right">The tool as it is.</param>
    /// <param name="why">What was wrong; null where nobody says.</param>
    /// <returns>The entry.</returns>
    public static ToolCorrected Of(ToolInShop tool, Tool right, string? why) => new(right, tool.Tool, why);

    /// <summary>A tool with one more gauge mark, or with another in place of one.</summary>
    /// <param name="tool">The tool.</param>
    /// <param name="old">The gauge mark as it was said to be; null for one more.</param>
    /// <param name="mark">The gauge mark as it is.</param>
    /// <returns>The tool.</returns>
    public static Tool With(Tool tool, GaugeMark? old, GaugeMark mark) =>
        tool with
        {
            GaugeMarks = old is null ? tool.GaugeMarks.Add(mark) : tool.GaugeMarks.Replace(old, mark),
        };

    /// <summary>What a correction changed.</summary>
    /// <param name="entry">The correction.</param>
    /// <param name="units">The unit for sizes.</param>
    /// <returns>One text for each field: "steel 4140, was 1045"; none where the earlier values were not kept.</returns>
    public static IEnumerable<string> Changes(ToolCorrected entry, LengthUnit units) =>
        entry.Was is not { } was
            ? []
            : Between(ToolFields.Table, was, entry.Tool, "", units)
                .Concat(entry.Tool.GaugeMarks.SelectMany(mark => OfMark(was, mark, units)))
                .Concat(was.Stations.SequenceEqual(entry.Tool.Stations) ? [] : ["body sizes"]);

    private static IEnumerable<string> OfMark(Tool was, GaugeMark mark, LengthUnit units) =>
        was.Gauge(mark.Name) is { } old
            ? Between(GaugeMarkFields.Alone, old, mark, $"{mark.Name} ", units)
            : [$"gauge mark {mark.Name} added"];

    private static IEnumerable<string> Between<T>(FieldTable<T> fields, T was, T now, string of, LengthUnit units) =>
        from field in fields.All
        where field.Write(was) != field.Write(now)
        select $"{of}{Called(field)} {Shown(field.Offer(now, units))}, was {Shown(field.Offer(was, units))}";

    private static string Called<T>(Field<T> field) =>
        (field.Asked.Length > 0 ? field.Asked : field.Name).ToLowerInvariant();

    private static string Shown(string value) => value.Length == 0 ? "not known" : value;
}
