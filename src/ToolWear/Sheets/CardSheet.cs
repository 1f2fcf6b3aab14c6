using ToolWear.Core.Wear.OneTool;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Wording;

namespace ToolWear.Sheets;

/// <summary>The card of a tool to print.</summary>
internal static class CardSheet
{
    internal const string ReadingsHeading = "Readings";
    private const string OutlineHeading = "Outline at its mark, true size at 100 %: as made dashed, now solid";

    /// <summary>Makes the sheet.</summary>
    /// <param name="card">The card.</param>
    /// <param name="on">The day it is of.</param>
    /// <returns>The whole file.</returns>
    public static string Of(Card card, DateOnly on)
    {
        Sheet sheet = new(Words.CardHeading(card.Forecast.Tool.Mark.Text), card.Shop, on, Words.SheetSizes(card.Units));
        sheet.Lines(CardParts.Head(card));
        foreach (GaugeForecast gauge in card.Forecast.Gauges)
        {
            sheet.Head(gauge.History.Gauge.Name);
            if (CardParts.Chart(card, gauge) is { } chart)
            {
                sheet.Draw(ChartSvg.Width, ChartSvg.Height, gauge.History.Gauge.Name, chart);
            }

            sheet.Lines(CardParts.Gauge(card, gauge));
        }

        if (CardParts.Outline(card) is { } outline)
        {
            sheet.Head(OutlineHeading);
            sheet.DrawTrue(outline.WidthMm, outline.HeightMm, OutlineHeading, outline.Elements);
        }

        sheet.Lines(EyeText.Of(card));
        sheet.Lines(EyeText.Into(card));
        if (!card.Readings.Rows.IsEmpty)
        {
            sheet.Head(ReadingsHeading);
            sheet.Put(card.Readings);
        }

        sheet.Lines(CardParts.Entries(card));
        return sheet.Done(Words.ForecastBasis, card.Drift is null ? "" : Cautions.EyeCaution, Cautions.ForecastCaution);
    }
}
