using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Wear;
using ToolWear.Results.Plans;
using ToolWear.Wording;

namespace ToolWear.Results.Eyes;

/// <summary>What verbs, screens and sheets say alike of eyes, series and bars.</summary>
internal static class EyeWords
{
    public static string CouldBeCut(string bar) => $"From {bar}, forged on its end, could be cut";

    public static string NoToolToCut(string steel) =>
        $"No tool of the series is made of {steel}, or no body of one is known.";

    /// <summary>What a planned tool is cut from.</summary>
    public static string? StockOf(PlannedTool tool, LengthUnit units)
    {
        string[] parts =
        [
            PlanWords.CutsOf(tool.Stock, units),
            PlanWords.BuyOf(tool.Stock, units) is { } buy ? $"buy {buy}" : "",
            .. tool.Stock.Notes,
        ];
        return string.Join("; ", parts.Where(part => part.Length > 0)) is { Length: > 0 } all ? all : null;
    }

    public static string StockSentence(PlannedTool tool, LengthUnit units)
    {
        string name = Words.SeriesName(null, tool.Series.Place, tool.Series.Form.Name);
        string weight = tool.Stock.PieceKg is { } kg
            ? $"{kg.ToString("0.00", CultureInfo.InvariantCulture)} kg as cut; "
            : "";
        string hours = tool.Cost.Hours is { } work
            ? $"; {work.ToString("0.0", CultureInfo.InvariantCulture)} hours"
            : "";
        string cost = tool.Cost.Total is { } total
            ? $", usually costs {total.ToString("0", CultureInfo.InvariantCulture)}"
            : "";
        string lasts = tool.Series.GuessHeats is { } heats ? $"; usually lasts {Words.About(heats)} heats" : "";
        return $"{name}: {weight}{StockOf(tool, units) ?? "no bar of its steel in the rack"}{hours}{cost}{lasts}.";
    }

    public static string OfferInWords(MadeIntoOffer offer, Core.Measure.LengthUnit units) =>
        Words.SeriesName(offer.Series.Eye, offer.Series.Place, offer.Series.Form.Name)
        + $" ({offer.Making.Clearance.ToWords(units)}{(offer.Heats is { } heats ? $"; about {Words.About(heats)} heats" : "")})";

    public static string ScrappedNow(Core.Tools.ToolMark tool) => $"{tool} is scrapped. Bksp undoes it.";
}
