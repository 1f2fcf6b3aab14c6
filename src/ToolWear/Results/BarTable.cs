using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;
using ToolWear.Tables;

namespace ToolWear.Results;

/// <summary>The bars in the stock rack, and what could be cut from one.</summary>
public static class BarTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("bar", "Bar"),
        new("steel", "Steel"),
        new("section", "Section"),
        new("size_mm", "Size"),
        new("length_mm", "Length"),
        new("lot", "Lot"),
        new("weight_kg", "kg"),
        new("price_a_kg", "A kg"),
        new("worth", "Worth"),
    ];

    private static readonly ImmutableArray<Column> CutColumns =
    [
        new("tool", "Tool"),
        new("length_mm", "Cut"),
        new("pieces", "Pieces"),
        new("weight_kg", "kg"),
        new("upset", ""),
    ];

    /// <summary>The bars.</summary>
    /// <param name="bars">The bars.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>A row for each.</returns>
    public static Table Of(IEnumerable<BarCuts> bars, LengthUnit units) =>
        new(Columns, [.. bars.Select(bar => Row(bar, units))]);

    /// <summary>What could be cut from a bar.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>A row for each place of the series in its steel.</returns>
    public static Table Cuts(BarCuts bar, LengthUnit units) =>
        new(CutColumns, [.. bar.Cuts.Select(cut => Row(cut, units))]);

    private static ImmutableArray<Cell> Row(BarCuts each, LengthUnit units)
    {
        BarDescribed bar = each.Bar;
        string Size(Length size) => SizeShown.Eye(size, units);
        string Whole(double mm) => SizeShown.Whole(mm, units);
        return
        [
            Cell.Of(bar.Bar),
            Cell.Of(bar.Steel),
            Cell.Of(SectionKinds.Words.Word(bar.Section)),
            Cell.Of(
                bar.B is { } b ? $"{bar.A.ToMmText()} x {b.ToMmText()}" : bar.A.ToMmText(),
                bar.B is { } other ? $"{Size(bar.A)} x {Size(other)}" : Size(bar.A)
            ),
            Cell.Of(bar.Length?.Mm, Whole),
            Cell.Of(bar.Lot),
            Cell.Of(each.WeightKg, kg => kg.ToString("0.0", CultureInfo.InvariantCulture)),
            Cell.Of((double?)bar.PriceAKg, price => price.ToString("0.##", CultureInfo.InvariantCulture)),
            Cell.Of((double?)each.Worth, worth => worth.ToString("0", CultureInfo.InvariantCulture)),
        ];
    }

    private static ImmutableArray<Cell> Row(CutFromBar cut, LengthUnit units) =>
        [
            Cell.Of(cut.Tools.ToString()),
            Cell.Of(cut.Stock.LengthMm, mm => SizeShown.Whole(mm, units)),
            Cell.Of(cut.Pieces),
            Cell.Of(cut.Stock.StockMassKg, kg => kg.ToString("0.00", CultureInfo.InvariantCulture)),
            Cell.Of(cut.Stock.MustBeUpset ? Words.Upset : "", shownIfEmpty: ""),
        ];
}
