using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Tools;

namespace ToolWear.Results;

/// <summary>The forge list in files.</summary>
internal static class ForgeTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        .. new[]
        {
            "forge_by",
            "ready_by",
            "number",
            "eye",
            "place",
            "form",
            "section",
            "length_mm",
            "width_mm",
            "steel",
            "bar",
            "cut_mm",
            "stock",
            "buy",
            "piece_kg",
            "batch_kg",
            "hours",
            "cost",
            "sure",
            "sure_with_one_fewer",
            "late",
            "order",
            "why",
        }.Select(name => new Column(name, null)),
    ];

    /// <summary>Makes the table, in mm.</summary>
    /// <param name="list">The list.</param>
    /// <returns>A row for each batch.</returns>
    public static Table Of(ForgeList list) => new(Columns, [.. list.Batches.Select(Row)]);

    private static ImmutableArray<Cell> Row(ForgeBatch batch)
    {
        ToolPlace tools = batch.Tools;
        BatchStock stock = batch.Stock;
        double? cutMm = stock.Cuts.Select(cut => (double?)cut.PieceMm).FirstOrDefault() ?? stock.Buy?.PieceMm;
        return
        [
            Cell.Of(batch.ForgeBy),
            Cell.Of(batch.ReadyBy),
            Cell.Of(batch.Number),
            Cell.Of(tools.Eye),
            Cell.Of(tools.Place == Place.None ? null : Places.Words.Word(tools.Place)),
            Cell.Of(tools.Form),
            Cell.Of(batch.Series is { } series ? Core.Sections.SectionKinds.Words.Word(series.Section) : null),
            Cell.Of(batch.Series?.Length?.Mm),
            Cell.Of(batch.Series?.Width?.Mm),
            Cell.Of(batch.Series?.Steel),
            Cell.Of(string.Join("; ", stock.Cuts.Select(cut => Words.BarOf(cut.Bar, LengthUnit.Mm)))),
            Cell.Of(cutMm),
            Cell.Of(Words.CutsOf(stock, LengthUnit.Mm)),
            Cell.Of(Words.BuyOf(stock, LengthUnit.Mm)),
            Cell.Of(stock.PieceKg),
            Cell.Of(stock.PieceKg * batch.Number),
            Cell.Of((double?)batch.Hours),
            Cell.Of((double?)batch.TotalCost),
            Cell.Of(batch.Sure),
            Cell.Of(batch.SureWithOneFewer),
            Cell.Of(batch.IsLate ? "yes" : ""),
            Cell.Of(batch.Needed.Order),
            Cell.Of(batch.Why),
        ];
    }
}
