using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Pens;

namespace ToolWear.Results;

/// <summary>A quote for an odd eye: the tools of the set, and what the heads pay.</summary>
/// <param name="Quote">The quote.</param>
/// <param name="Units">The unit for people.</param>
internal sealed record QuoteResult(OddEyeQuote Quote, LengthUnit Units)
{
    private static readonly Func<double, string> Money = value => value.ToString("F2", CultureInfo.InvariantCulture);

    /// <summary>The tools, a row each.</summary>
    public Table Tools { get; } =
        new(
            [
                new("tool", "Tool"),
                new("number", "No"),
                new("length_mm", "Length"),
                new("width_mm", "Width"),
                new("radius_mm", "r"),
                new("steel", "Steel"),
                new("overall_mm", "Long"),
                new("heats", "Heats"),
                new("life_heats", "Life"),
                new("hours", "Hours"),
                new("cost", "Cost each"),
                new("stock", "Stock"),
            ],
            [.. Quote.Tools.Select(tool => Row(tool, Units))]
        );

    private Calculated Figures { get; } =
        new([
            new("heads", "Heads", Cell.Of(Quote.Heads)),
            new("hours", "Hours to make the set", Cell.Of((double?)Quote.Hours)),
            new("set_cost", "The whole set", Cell.Of((double?)Quote.SetCost, Money)),
            new("set_cost_a_head", "The set, a head", Cell.Of((double?)Quote.SetCostAHead, Money)),
            new("wear_cost_a_head", "Wear alone, a head", Cell.Of(Quote.WearCostAHead, Money)),
            new("left_on_the_shelf", "Left on the shelf", Cell.Of(Quote.LeftOnTheShelf, Money)),
        ]);

    /// <summary>The quote as JSON.</summary>
    /// <returns>Indented JSON with a line end.</returns>
    public string ToJson() =>
        JsonPen.Of(json =>
        {
            json.WriteStartObject();
            foreach (Figure figure in Figures.All)
            {
                JsonPen.Write(json, figure.Name, figure.Value);
            }

            json.WritePropertyName("tools");
            Tools.Write(json);
            json.WriteEndObject();
        });

    /// <summary>The quote for people.</summary>
    /// <returns>Lines, each with its line end.</returns>
    public string ToText()
    {
        string slits = string.Concat(Words.SlitSentences(Quote.Series, Units).Select(each => each.Sentence + "\n"));
        string nesting = string.Concat(Quote.Series.Nesting.Select(step => step.Sentence(Units) + "\n"));
        return $"{Tools.ToText()}\n{Figures.ToText()}\n{slits}{nesting}{Words.CostBasis}\n{Words.EyeCaution}\n";
    }

    private static ImmutableArray<Cell> Row(QuotedTool quoted, LengthUnit units)
    {
        PlannedTool tool = quoted.Tool;
        string Size(double mm) => SizeShown.Eye(Length.FromMm(mm), units);
        return
        [
            Cell.Of(Words.SeriesName(null, tool.Series.Place, tool.Series.Form.Name)),
            Cell.Of(quoted.Number),
            Cell.Of(tool.Series.Length?.Mm, Size),
            Cell.Of(tool.Series.Width?.Mm, Size),
            Cell.Of(tool.Series.Radius?.Mm, Size),
            Cell.Of(tool.Series.Steel),
            Cell.Of(tool.Overall?.Mm, mm => SizeShown.Whole(mm, units)),
            Cell.Of(quoted.HeatsForAll),
            Cell.Of(quoted.Life.Value, Words.About),
            Cell.Of((double?)quoted.Hours),
            Cell.Of((double?)tool.Cost.Total, Money),
            Cell.Of(Words.StockOf(tool, LengthUnit.Mm), Words.StockOf(tool, units)),
        ];
    }
}
