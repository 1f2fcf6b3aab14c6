using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Results.Eyes;

namespace ToolWear.Pens;

/// <summary>A quote for an odd eye as text.</summary>
internal static class QuoteText
{
    /// <summary>The tools of the set, what the heads pay, and how the tools follow each other.</summary>
    public static string Of(OddEyeQuote quote, LengthUnit units)
    {
        string slits = string.Concat(Words.SlitSentences(quote.Series, units).Select(each => each.Sentence + "\n"));
        string nesting = string.Concat(quote.Series.Nesting.Select(step => step.Sentence(units) + "\n"));
        return $"{QuoteTable.Tools.Over(quote.Tools, units).ToText()}\n{QuoteTable.Figures.Of(quote, units).ToText()}\n{slits}{nesting}{Words.CostBasis}\n{Words.EyeCaution}\n";
    }
}
