using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Results;
using ToolWear.Results.Eyes;
using ToolWear.Results.Plans;
using ToolWear.Wording;

namespace ToolWear.Pens;

/// <summary>A quote for an odd eye as text.</summary>
internal static class QuoteText
{
    /// <summary>The tools of the set, what the heads pay, and how the tools follow each other.</summary>
    public static string Of(OddEyeQuote quote, LengthUnit units, Func<Table, string> drawn)
    {
        string slits = string.Concat(SlitSentences(quote.Series, units).Select(each => each.Sentence + "\n"));
        string nesting = string.Concat(quote.Series.Nesting.Select(step => step.Sentence(units) + "\n"));
        return $"{drawn(QuoteTable.Tools.Over(quote.Tools, units))}\n{drawn(QuoteTable.Figures.Of(quote, units))}\n{slits}{nesting}{PlanWords.CostBasis}\n{Cautions.EyeCaution}\n";
    }

    /// <summary>The slit of a series, with its warnings.</summary>
    public static IEnumerable<(string Sentence, Ink Ink)> SlitSentences(SeriesPlan plan, LengthUnit units)
    {
        if (plan.Slit is { } slit)
        {
            string length = SizeShown.Eye(Length.FromMm(slit.LengthMm), units);
            yield return (
                $"The slit of {length} stretches by {Results.Quantity.Share.Show(slit.StretchShare, units)} round the eye.",
                Ink.Plain
            );
            if (slit.Warning is { } warning)
            {
                yield return (warning, Ink.Warn);
            }
        }
        else if (plan.SlitRefusal is { } refusal)
        {
            yield return (refusal, Ink.Warn);
        }
    }
}
