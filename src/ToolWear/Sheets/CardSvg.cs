using System.Text;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Wording;

namespace ToolWear.Sheets;

/// <summary>The card of a tool as one drawing: its verdict, the charts, the outline, what happened.</summary>
internal sealed class CardSvg
{
    private const string OutlineInSvg = "Outline at its mark: as made dashed, now solid";

    private const double Margin = 16;
    private const double LineHeight = 16;

    // a pixel of SVG is 1/96 in: so an outline has its true size
    private const double PixelsInMm = 96 / 25.4;

    private readonly StringBuilder svg = new();
    private double y = Margin;

    private CardSvg() { }

    /// <summary>Draws the card.</summary>
    /// <param name="card">The card.</param>
    /// <returns>A whole SVG file.</returns>
    public static string Of(Card card)
    {
        CardSvg drawn = new();
        drawn.Lines(CardParts.Head(card));
        foreach (GaugeForecast gauge in card.Forecast.Gauges)
        {
            if (CardParts.Chart(card, gauge) is { } chart)
            {
                drawn.Chart(chart);
            }

            drawn.Lines(CardParts.Gauge(card, gauge));
        }

        if (CardParts.Outline(card) is { } outline)
        {
            drawn.Outline(outline);
        }

        drawn.Lines(EyeText.Of(card));
        drawn.Lines(EyeText.Into(card));
        drawn.Lines(card.Readings.Rows.IsEmpty ? "" : CardSheet.ReadingsHeading + "\n" + card.Readings.ToText());
        drawn.Lines(CardParts.Entries(card));
        drawn.Lines(Wrapped.Of(Words.ForecastBasis) + Wrapped.Of(Cautions.ForecastCaution));
        return drawn.Done(Words.CardHeading(card.Forecast.Tool.Mark.Text));
    }

    private void Lines(string text)
    {
        foreach (string line in text.Trim('\n').Split('\n').Where(_ => text.Trim().Length > 0))
        {
            y += LineHeight;
            svg.Append(
                $"<text xml:space=\"preserve\" x=\"{Markup.Of(Margin)}\" y=\"{Markup.Of(y)}\">{Markup.Of(line)}</text>\n"
            );
        }

        y += LineHeight / 2;
    }

    private void Chart(string elements)
    {
        y += LineHeight;
        svg.Append(
            $"<g transform=\"translate({Markup.Of(Margin)} {Markup.Of(y)})\" font-family=\"DejaVu Sans, Verdana, Arial, sans-serif\" font-size=\"14\">\n{elements}</g>\n"
        );
        y += ChartSvg.Height;
    }

    private void Outline(CardOutline outline)
    {
        Lines(OutlineInSvg);
        double half = outline.HeightMm / 2 * PixelsInMm;
        double x = Margin + (outline.WidthMm / 2 * PixelsInMm);
        y += half;
        svg.Append(
            $"<g transform=\"translate({Markup.Of(x)} {Markup.Of(y)}) scale({PixelsInMm.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture)})\">\n{outline.Elements}</g>\n"
        );
        y += half + LineHeight;
    }

    private string Done(string title)
    {
        string width = Markup.Of(ChartSvg.Width + (2 * Margin));
        string height = Markup.Of(y + Margin);
        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}\" height=\"{height}\" viewBox=\"0 0 {width} {height}\" font-family=\"DejaVu Sans Mono, Consolas, monospace\" font-size=\"12.5\" style=\"white-space:pre\">\n"
            + $"<title>{Markup.Of(title)}</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n{svg}</svg>\n";
    }
}
