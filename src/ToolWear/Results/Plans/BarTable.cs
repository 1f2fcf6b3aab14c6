using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;
using Bar = ToolWear.Results.Column<ToolWear.Core.Planning.BarCuts>;
using Cut = ToolWear.Results.Column<ToolWear.Core.Planning.CutFromBar>;

namespace ToolWear.Results.Plans;

/// <summary>The bars in the stock rack, and what could be cut from one.</summary>
internal static class BarTable
{
    private const string Upset = "to be upset";

    public static Columns<BarCuts> Bars { get; } =
    [
        Bar.Text("bar", "Bar", each => each.Bar.Bar),
        Bar.Text("steel", "Steel", each => each.Bar.Steel),
        Bar.Text("section", "Section", each => SectionKinds.Words.Word(each.Bar.Section)).Ranked(3),
        new("size_mm", "Size", (each, units) => Size(each.Bar, units), "mm"),
        Bar.Number("length_mm", "Length", each => each.Bar.Length?.Mm, Quantity.Whole),
        Bar.Text("lot", "Lot", each => each.Bar.Lot).Ranked(4),
        Bar.Number("weight_kg", "kg", each => each.WeightKg, Quantity.Of("kg", "0.0"))
            .Means("what a bar or a piece weighs"),
        Bar.Number("price_a_kg", "A kg", each => (double?)each.Bar.PriceAKg, Quantity.Of("money a kg", "0.##"))
            .Ranked(2),
        Bar.Number("worth", "Worth", each => (double?)each.Worth, Quantity.Of("money", "0"))
            .Means("what a bar or a tool is still worth")
            .Ranked(1),
    ];

    /// <summary>What could be cut from a bar, a row for each place of the series in its steel.</summary>
    public static Columns<CutFromBar> Cuts { get; } =
    [
        Cut.Text("tool", "Tool", cut => cut.Tools.ToString()),
        Cut.Number("length_mm", "Cut", cut => cut.Stock.LengthMm, Quantity.Whole).Means("the length of a piece to cut"),
        Cut.Number("pieces", "Pieces", cut => cut.Pieces).Means("pieces that a bar still gives"),
        Cut.Number("weight_kg", "kg", cut => cut.Stock.StockMassKg, Quantity.Of("kg", "0.00")),
        Cut.Text("upset", "", cut => cut.Stock.MustBeUpset ? Upset : null, none: "")
            .Means("whether the bar has to be upset"),
    ];

    private static Cell Size(BarDescribed bar, LengthUnit units)
    {
        string Sizes(Func<Length, string> size) => bar.B is { } b ? $"{size(bar.A)} x {size(b)}" : size(bar.A);
        return Cell.Of(Sizes(size => size.ToMmText()), Sizes(size => SizeShown.Eye(size, units)));
    }
}
