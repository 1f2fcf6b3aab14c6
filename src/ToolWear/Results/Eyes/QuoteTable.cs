using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Wording;
using Quote = ToolWear.Results.Column<ToolWear.Core.Planning.OddEyeQuote>;
using Row = ToolWear.Results.Column<ToolWear.Core.Planning.QuotedTool>;

namespace ToolWear.Results.Eyes;

/// <summary>A quote for an odd eye: the tools of the set, and what the heads pay.</summary>
internal static class QuoteTable
{
    public static Columns<QuotedTool> Tools { get; } =
    [
        Row.Text("tool", "Tool", each => Words.SeriesName(null, each.Tool.Series.Place, each.Tool.Series.Form.Name)),
        Row.Number("number", "No", each => each.Number),
        Row.Number("length_mm", "Length", each => each.Tool.Series.Length?.Mm, Quantity.Size),
        Row.Number("width_mm", "Width", each => each.Tool.Series.Width?.Mm, Quantity.Size),
        Row.Number("radius_mm", "r", each => each.Tool.Series.Radius?.Mm, Quantity.Size).Ranked(4),
        Row.Text("steel", "Steel", each => each.Tool.Series.Steel),
        Row.Number("overall_mm", "Long", each => each.Tool.Overall?.Mm, Quantity.Whole).Ranked(2),
        Row.Number("heats", "Heats", each => each.HeatsForAll, Quantity.Worked),
        Row.Number("life_heats", "Life", each => each.Life.Value, Quantity.Heats).Ranked(3),
        Row.Number("hours", "Hours", each => (double?)each.Hours, Quantity.Of("hours", "0.#")).Ranked(1),
        Row.Number("cost", "Cost each", each => (double?)each.Tool.Cost.Total, Quantity.Money),
        new(
            "stock",
            "Stock",
            (each, units) => Cell.Of(EyeWords.StockOf(each.Tool, LengthUnit.Mm), EyeWords.StockOf(each.Tool, units))
        ),
    ];

    public static Columns<OddEyeQuote> Figures { get; } =
    [
        Quote.Number("heads", "Heads", quote => quote.Heads),
        Quote.Number("hours", "Hours to make the set", quote => (double?)quote.Hours, Quantity.Of("hours", "0.#")),
        Quote
            .Number("set_cost", "The whole set", quote => (double?)quote.SetCost, Quantity.Money)
            .Means("a whole set of tools for an odd eye"),
        Quote
            .Number("set_cost_a_head", "The set, a head", quote => (double?)quote.SetCostAHead, Quantity.Money)
            .Means("the same for one head"),
        Quote
            .Number("wear_cost_a_head", "Wear alone, a head", quote => quote.WearCostAHead, Quantity.Money)
            .Means("what tools lose in worth for one head"),
        Quote
            .Number("left_on_the_shelf", "Left on the shelf", quote => quote.LeftOnTheShelf, Quantity.Money)
            .Means("what is left of tools that were made for an odd eye"),
    ];

    /// <summary>The quote in JSON: its figures and its tools.</summary>
    public static Columns<OddEyeQuote> All { get; } =
    [.. Figures, Quote.Part("tools", quote => Tools.Over(quote.Tools))];
}
