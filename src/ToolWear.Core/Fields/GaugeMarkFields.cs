using ToolWear.Core.Tools;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Core.Fields;

/// <summary>Something of a tool, with the tool's mark.</summary>
/// <typeparam name="T">What.</typeparam>
/// <param name="Tool">The tool's mark.</param>
/// <param name="What">What it has.</param>
public sealed record OfTool<T>(ToolMark Tool, T What);

/// <summary>The fields of a gauge mark.</summary>
public static class GaugeMarkFields
{
    private static readonly GaugeMark Blank = new("", Wears.Smaller, null, null, null, null, null, null);

    /// <summary>A gauge mark by itself.</summary>
    public static FieldTable<GaugeMark> Alone { get; } =
        new FieldTable<GaugeMark>("gauge-marks.csv", Blank)
            .Key("gauge", Name, g => g.Name, (g, v) => g with { Name = v! })
            .Means("the gauge mark's name", "Gauge mark")
            .Needs("wears", Word(GaugeMark.WearsWords), g => g.Wears, (g, v) => g with { Wears = v!.Value })
            .Means("the main direction of wear", "Wears")
            .Maybe("measures", Word(GaugeMark.MeasuresWords), g => g.Measures, (g, v) => g with { Measures = v })
            .Means("what a gauge mark measures", "Measures")
            .Maybe("from_mark_mm", Distance, g => g.FromMark, (g, v) => g with { FromMark = v })
            .Means("how far from the shank mark towards the nose", "From the mark")
            .Maybe("start_mm", Size, g => g.Start, (g, v) => g with { Start = v })
            .Means("the starting size at a gauge mark", "Start")
            .Maybe("least_mm", Size, g => g.Least, (g, v) => g with { Least = v })
            .Means("the least usable size at a gauge mark", "Least")
            .Maybe("greatest_mm", Size, g => g.Greatest, (g, v) => g with { Greatest = v })
            .Means("the greatest usable size at a gauge mark", "Greatest")
            .Maybe("resolution_mm", Size, g => g.Resolution, (g, v) => g with { Resolution = v })
            .Means("what the caliper reads to", "Read to");

    /// <summary>The table.</summary>
    public static FieldTable<OfTool<GaugeMark>> Table { get; } =
        new FieldTable<OfTool<GaugeMark>>("gauge-marks.csv", new(default, Blank))
            .Key("tool", Mark, g => g.Tool, (g, v) => g with { Tool = v!.Value })
            .Means("", like: Kept.Tools)
            .Of(Alone, g => g.What, (g, v) => g with { What = v });
}
