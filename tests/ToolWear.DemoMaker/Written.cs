using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;

namespace ToolWear.DemoMaker;

/// <summary>Short ways to write down sizes, marks and days of the invented shop.</summary>
internal static class Written
{
    /// <summary>The day on which the records begin.</summary>
    public static readonly DateOnly Begin = new(2026, 5, 4);

    /// <summary>A size in mm.</summary>
    public static Length Mm(decimal mm) => Length.FromMm(mm);

    /// <summary>A day of the half year, 2026.</summary>
    public static DateOnly Day(int month, int day) => new(2026, month, day);

    /// <summary>A tool's mark.</summary>
    public static ToolMark Mark(string text) =>
        ToolMark.TryParse(text, out ToolMark mark, out string refusal)
            ? mark
            : throw new InvalidOperationException(refusal);

    /// <summary>A form of tool by its word.</summary>
    public static ToolForm Form(string name) =>
        ToolForms.TryFind(name, out ToolForm form, out string refusal)
            ? form
            : throw new InvalidOperationException(refusal);

    /// <summary>A section of its figures.</summary>
    public static Section Cut(SectionKind kind, decimal length, decimal width, decimal radius) =>
        Section.TryMake(kind, Mm(length), Mm(width), Mm(radius), out Section? section, out string? refusal)
            ? section
            : throw new InvalidOperationException(refusal);
}
