using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Tools;
using ToolWear.Tables;

namespace ToolWear.Results;

/// <summary>The forge list.</summary>
public static class ForgeTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("forge_by", "Forge by"),
        new("ready_by", "Ready by"),
        new("number", "No"),
        new("eye", null),
        new("place", null),
        new("form", null),
        new(null, "What"),
        new("section", null),
        new("length_mm", "L"),
        new("width_mm", "W"),
        new("steel", "Steel"),
        new("stock", "Stock"),
        new("buy", null),
        new("piece_kg", "kg each"),
        new("hours", "Hours"),
        new("cost", "Cost"),
        new("sure", "Certainty"),
        new("sure_with_one_fewer", "One fewer"),
        new("late", null),
        new("why", null),
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="list">The list.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>A row for each batch.</returns>
    public static Table Of(ForgeList list, LengthUnit units) =>
        new(Columns, [.. list.Batches.Select(batch => Row(batch, units))]);

    /// <summary>The bars of a batch in words.</summary>
    /// <param name="stock">The stock.</param>
    /// <returns>For example "4140 32: 3 x 86 mm, 1542 left".</returns>
    public static string Cuts(BatchStock stock) =>
        string.Join(
            "; ",
            stock.Cuts.Select(cut => $"{cut.Bar}: {cut.Pieces} x {Whole(cut.PieceMm)} mm, {Whole(cut.LeftMm)} left")
        );

    /// <summary>What to buy in words.</summary>
    /// <param name="stock">The stock.</param>
    /// <returns>For example "1 bar of 4140 round 38, 3000 mm, for 2 x 107 mm"; null where nothing has to be bought.</returns>
    public static string? Buy(BatchStock stock) =>
        stock.Buy is { } buy
            ? $"{buy.Bars} {(buy.Bars == 1 ? "bar" : "bars")} of {buy.What}, {Whole(buy.BarMm)} mm, for {buy.Pieces} x {Whole(buy.PieceMm)} mm"
            : null;

    private static ImmutableArray<Cell> Row(ForgeBatch batch, LengthUnit units)
    {
        ToolPlace tools = batch.Tools;
        string Size(double mm) => SizeShown.Eye(Length.FromMm(mm), units);
        string cuts = Cuts(batch.Stock);
        string? buy = Buy(batch.Stock);
        string shown = string.Join(
            "; ",
            new[] { cuts, buy is null ? "" : "buy " + buy }.Where(part => part.Length > 0)
        );
        return
        [
            Cell.Of(batch.ForgeBy),
            Cell.Of(batch.ReadyBy),
            Cell.Of(batch.Number),
            Cell.Of(tools.Eye),
            Cell.Of(tools.Place == Place.None ? null : Places.Words.Word(tools.Place)),
            Cell.Of(tools.Form),
            Cell.Of(tools.ToString()),
            Cell.Of(batch.Series is { } series ? Core.Sections.SectionKinds.Words.Word(series.Section) : null),
            Cell.Of(batch.Series?.Length?.Mm, Size),
            Cell.Of(batch.Series?.Width?.Mm, Size),
            Cell.Of(batch.Series?.Steel),
            Cell.Of(cuts, shown.Length == 0 ? null : shown, shown.Length == 0 ? "-" : shown),
            Cell.Of(buy),
            Cell.Of(batch.Stock.PieceKg, kg => kg.ToString("0.00", CultureInfo.InvariantCulture)),
            Cell.Of((double?)batch.Hours),
            Cell.Of((double?)batch.TotalCost, cost => cost.ToString("0", CultureInfo.InvariantCulture)),
            Cell.Of(batch.Sure, Words.Percent),
            Cell.Of(batch.SureWithOneFewer, Words.Percent),
            Cell.Of(batch.IsLate ? "yes" : ""),
            Cell.Of(batch.Why),
        ];
    }

    private static string Whole(double mm) => mm.ToString("0", CultureInfo.InvariantCulture);
}
