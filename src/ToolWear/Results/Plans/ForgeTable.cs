using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;
using Row = ToolWear.Results.Column<ToolWear.Core.Planning.ForgeBatch>;

namespace ToolWear.Results.Plans;

/// <summary>The forge list in files, in mm.</summary>
internal static class ForgeTable
{
    public static Columns<ForgeBatch> Columns { get; } =
    [
        Row.Day("forge_by", null, batch => batch.ForgeBy).Means("the day by which to forge a batch"),
        Row.Day("ready_by", null, batch => batch.ReadyBy)
            .Means("the day on which the first of a batch must be ready, and can be"),
        Row.Number("number", null, batch => batch.Number).Means("how many tools of a batch"),
        Row.Text("eye", null, batch => batch.Tools.Eye),
        Row.Place(null, batch => batch.Tools.Place),
        Row.Text("form", null, batch => batch.Tools.Form),
        Row.Text("section", null, batch => batch.Series is { } made ? SectionKinds.Words.Word(made.Section) : null),
        Row.Number("length_mm", null, batch => batch.Series?.Length?.Mm, Quantity.Size),
        Row.Number("width_mm", null, batch => batch.Series?.Width?.Mm, Quantity.Size),
        Row.Text("steel", null, batch => batch.Series?.Steel),
        Row.Text(
                "bar",
                null,
                batch => string.Join("; ", batch.Stock.Cuts.Select(cut => PlanWords.BarOf(cut.Bar, LengthUnit.Mm)))
            )
            .Means("the bars that a batch is cut from"),
        Row.Number("cut_mm", null, CutMm, Quantity.Whole).Means("how long a piece is cut for one tool"),
        Row.Text("stock", null, batch => PlanWords.CutsOf(batch.Stock, LengthUnit.Mm))
            .Means("which bars a batch is cut from, in words"),
        Row.Text("buy", null, batch => PlanWords.BuyOf(batch.Stock, LengthUnit.Mm))
            .Means("the bars that have to be bought"),
        Row.Number("piece_kg", null, batch => batch.Stock.PieceKg, Quantity.Of("kg", "0.00"))
            .Means("what one piece weighs as cut"),
        Row.Number("batch_kg", null, batch => batch.Stock.PieceKg * batch.Number, Quantity.Of("kg", "0.00"))
            .Means("what the pieces of a batch weigh as cut"),
        Row.Number("hours", null, batch => (double?)batch.Hours, Quantity.Of("hours", "0.#"))
            .Means("hours that a batch takes"),
        Row.Number("cost", null, batch => (double?)batch.TotalCost, Quantity.Money),
        Row.Number("sure", null, batch => batch.Sure, Quantity.Sure)
            .Means("the certainty that was asked for or that a batch gives"),
        Row.Number("sure_with_one_fewer", null, batch => batch.SureWithOneFewer, Quantity.Sure)
            .Means("the certainty with one tool fewer"),
        Row.Text("late", null, batch => batch.IsLate ? "yes" : null)
            .Means("yes where tools are needed before they can be ready"),
        Row.Text("order", null, batch => batch.Needed.Order),
        Row.Text("why", null, batch => batch.Why),
        Row.Day("wanted_on", null, batch => batch.Needed.WantedOn)
            .Means("the session day on which the tools on hand fall below the certainty"),
        Row.Number("sure_until", null, batch => batch.SureUntil, Quantity.Sure)
            .Means("the certainty of the tools on hand up to the day before a batch is ready"),
        .. CostTables.Parts<ForgeBatch>(batch => batch.Cost, batch => batch.Number),
    ];

    private static double? CutMm(ForgeBatch batch) =>
        batch.Stock.Cuts.Select(cut => (double?)cut.PieceMm).FirstOrDefault() ?? batch.Stock.Buy?.PieceMm;
}
