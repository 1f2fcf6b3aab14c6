using System.Collections.Immutable;
using System.Text;
using ToolWear.Core.Sections;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Pens;
using ToolWear.Results.Tools;

namespace ToolWear.Sheets;

/// <summary>What the card's sheet and its drawing are made of; the sentences are those that the card verb prints.</summary>
internal static class CardParts
{
    /// <summary>What the tool is, its verdict, when it was looked over.</summary>
    public static string Head(Card card) => Text(text => CardText.Head(text, card));

    /// <summary>A gauge mark with both its forecasts.</summary>
    public static string Gauge(Card card, GaugeForecast gauge) => Text(text => CardText.Gauge(text, gauge, card.Units));

    /// <summary>The last of what happened to it.</summary>
    public static string Entries(Card card) => Text(text => CardText.Entries(text, card));

    /// <summary>The chart of a gauge mark; null where nothing was ever measured and no limit is set.</summary>
    public static string? Chart(Card card, GaugeForecast gauge) =>
        gauge.History.Readings.IsEmpty && gauge.History.Gauge.ScrapSize is null
            ? null
            : ChartSvg.Elements(ChartFigures.Of(card.Shop, gauge), card.Units);

    /// <summary>The outline at its mark, as made and now, in mm about the middle; null where its section is not known.</summary>
    public static CardOutline? Outline(Card card)
    {
        Section? now = ToolNow.SectionNow(card.Shop, card.Forecast);
        Section? made = ToolNow.SectionMade(card.Shop, card.Forecast.Tool.Tool);
        ImmutableArray<Section> all = [.. new[] { made, now }.OfType<Section>()];
        if (all.IsEmpty)
        {
            return null;
        }

        const string dashed = " stroke-dasharray=\"1.2 0.8\"";
        StringBuilder paths = new();
        foreach (Section section in all)
        {
            string style = section == made && now is not null ? dashed : "";
            paths.Append(
                $"<path d=\"{OutlineSvg.Path(section)}\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.3\"{style}/>\n"
            );
        }

        return new(all.Max(each => each.EyeLength.Mm) + 2, all.Max(each => each.EyeWidth.Mm) + 2, paths.ToString());
    }

    private static string Text(Action<StringBuilder> write)
    {
        StringBuilder text = new();
        write(text);
        return text.ToString();
    }
}

/// <summary>A drawing of an outline.</summary>
/// <param name="WidthMm">How wide, mm.</param>
/// <param name="HeightMm">How high, mm.</param>
/// <param name="Elements">Its elements in mm about the middle.</param>
internal sealed record CardOutline(double WidthMm, double HeightMm, string Elements);
