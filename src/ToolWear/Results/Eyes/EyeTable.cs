using ToolWear.Core.Ledger;
using ToolWear.Core.Sections;
using Row = ToolWear.Results.Column<ToolWear.Core.Ledger.EyeDescribed>;

namespace ToolWear.Results.Eyes;

/// <summary>The shop's eyes in files, as they were entered.</summary>
internal static class EyeTable
{
    public static Columns<EyeDescribed> Columns { get; } =
    [
        Row.Text("eye", null, eye => eye.Name),
        Row.Text("section", null, eye => SectionKinds.Words.Word(eye.Section)),
        Row.Number("length_mm", null, eye => eye.Length.Mm, Quantity.Size),
        Row.Number("width_mm", null, eye => eye.Width.Mm, Quantity.Size),
        Row.Number("depth_mm", null, eye => eye.Depth?.Mm, Quantity.Size),
        Row.Number("taper_length", null, eye => eye.TaperLength),
        Row.Number("taper_width", null, eye => eye.TaperWidth),
        Row.Text("fit", null, eye => eye.Fit is { } fit ? EyeDescribed.FitWords.Word(fit) : null),
        Row.Text("driven", null, eye => eye.Driven is { } driven ? EyeDescribed.DrivenWords.Word(driven) : null),
        Row.Number("least_length_mm", null, eye => eye.LeastLength?.Mm, Quantity.Size),
        Row.Number("greatest_length_mm", null, eye => eye.GreatestLength?.Mm, Quantity.Size),
        Row.Number("least_width_mm", null, eye => eye.LeastWidth?.Mm, Quantity.Size),
        Row.Number("greatest_width_mm", null, eye => eye.GreatestWidth?.Mm, Quantity.Size),
        Row.Text("handle", null, eye => eye.Handle),
    ];
}
