using System.Text;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.WearCard;

/// <summary>The text of the wear card. Its sentences are those that the card verb prints.</summary>
internal static class WearCardText
{
    private const string CheckByHand = "Check each handle by hand.";

    private const int LeastChart = 5;
    private const int HighBody = 30;

    /// <summary>Draws the page with the chart.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="card">The card.</param>
    /// <param name="gauge">Which gauge mark, from 0.</param>
    /// <param name="figures">The figures of its chart, null while they are being worked out.</param>
    /// <param name="hasBraille">Whether the font can be trusted with braille.</param>
    public static void DrawChart(Picture body, Card card, int gauge, ChartFigures? figures, bool hasBraille)
    {
        string[] head = [.. Lines(Head(card), body.Width)];
        int y = 0;
        for (int whole = WholeLines(head, body.Height < HighBody ? 3 : head.Length); y < whole; y++)
        {
            body.Put(0, y, head[y], y == 0 ? Ink.Strong : Ink.Plain);
        }

        if (card.Forecast.Gauges.IsEmpty)
        {
            body.Put(0, y + 1, Words.NoGaugeMark, Ink.Warn);
            return;
        }

        GaugeForecast shown = card.Forecast.Gauges[gauge];
        string[] below = [.. Lines(Below(card, shown), body.Width)];
        int room = body.Height - y - below.Length;
        if (room >= LeastChart)
        {
            Picture chart = new(body.Width, room);
            if (figures is null)
            {
                chart.Put(0, 0, Words.WorkingOut, Ink.Quiet);
            }
            else
            {
                WearChart.Draw(chart, figures, card.Units, hasBraille);
            }

            body.Put(0, y, chart);
            y += room;
        }

        foreach (string line in below)
        {
            body.Put(0, y++, line);
        }
    }

    /// <summary>Draws the page in words.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="card">The card.</param>
    /// <param name="first">The first line shown, from 0.</param>
    /// <returns>How many lines there are.</returns>
    public static int DrawWords(Picture body, Card card, int first)
    {
        string[] lines = [.. Lines(CardText.Of(card), body.Width)];
        for (int i = 0; i < body.Height && first + i < lines.Length; i++)
        {
            body.Put(0, i, lines[first + i]);
        }

        return lines.Length;
    }

    /// <summary>The lines of whole sentences; a line that goes on is set in.</summary>
    private static int WholeLines(string[] lines, int most)
    {
        int shown = Math.Min(lines.Length, most);
        while (shown > 1 && shown < lines.Length && lines[shown].StartsWith(' '))
        {
            shown--;
        }

        return shown;
    }

    private static string Head(Card card)
    {
        StringBuilder text = new();
        CardText.Head(text, card);
        return text.ToString();
    }

    private static string Below(Card card, GaugeForecast gauge)
    {
        StringBuilder text = new();
        CardText.Gauge(text, gauge, card.Units);
        return text.ToString().Trim('\n') + "\n" + EyeLine(card) + Cautions.ForecastCautionShort;
    }

    private static string EyeLine(Card card) =>
        card.Drift is not { } drift ? "" : $"{EyeText.Short(drift, card.Units)} {CheckByHand}\n";

    private static string[] Lines(string text, int width) => Picture.Wrap(text.TrimEnd('\n'), Math.Max(10, width));
}
