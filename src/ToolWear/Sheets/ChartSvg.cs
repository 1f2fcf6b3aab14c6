using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ToolWear.Core.Measure;
using ToolWear.Pens;
using ToolWear.Wording;

namespace ToolWear.Sheets;

/// <summary>The chart of a gauge mark in black and white: sizes upwards, heats to the right.</summary>
internal sealed class ChartSvg
{
    private const string LegendReading = "read";
    private const string LegendMade = "made";
    private const string LegendFitted = "expected";
    private const string LegendBand = "8 times in 10";
    private const string LegendScrap = "limit";

    /// <summary>How wide it is.</summary>
    public const double Width = 720;

    /// <summary>How high it is, with its legend.</summary>
    public const double Height = 344;

    private const double Left = 64;
    private const double Right = Width - 12;
    private const double Top = 12;
    private const double Bottom = Height - 84;

    private readonly ChartFigures figures;
    private readonly ChartRange range;
    private readonly StringBuilder svg = new();

    private ChartSvg(ChartFigures figures, LengthUnit units)
    {
        this.figures = figures;
        range = ChartRange.Of(figures, units);
    }

    /// <summary>Draws it as the content of an SVG element.</summary>
    /// <param name="figures">The figures.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>Elements, no text of the store among them.</returns>
    public static string Elements(ChartFigures figures, LengthUnit units)
    {
        ChartSvg chart = new(figures, units);
        chart.Axes();
        chart.Curves();
        chart.Limit();
        chart.Marks();
        chart.Legend();
        return chart.svg.ToString();
    }

    private double X(double heats) => Left + (heats / range.LastHeat * (Right - Left));

    private double Y(double mm) =>
        Bottom - ((range.InUnit(mm) - range.Least) / (range.Greatest - range.Least) * (Bottom - Top));

    private void Axes()
    {
        svg.Append(
            $"<rect x=\"{Markup.Of(Left)}\" y=\"{Markup.Of(Top)}\" width=\"{Markup.Of(Right - Left)}\" height=\"{Markup.Of(Bottom - Top)}\" fill=\"none\" stroke=\"#000\"/>\n"
        );
        (IReadOnlyList<double> sizes, int decimals) = RoundTicks.Of(range.Least, range.Greatest, 8);
        foreach (double size in sizes)
        {
            double y = Bottom - ((size - range.Least) / (range.Greatest - range.Least) * (Bottom - Top));
            Line(Left - 5, y, Left, y, "");
            Text(Left - 9, y + 5, Fixed(size, decimals), "end");
        }

        (IReadOnlyList<double> heats, int places) = RoundTicks.Of(0, range.LastHeat, 12);
        foreach (double at in heats)
        {
            Line(X(at), Bottom, X(at), Bottom + 5, "");
            Text(X(at), Bottom + 20, Fixed(at, places), "middle");
        }

        Text(Left - 9, Bottom + 20, SizeShown.Mark(range.Units), "end");
        Text(Right, Bottom + 38, Words.HeatsAxis, "end");
    }

    private void Curves()
    {
        // a clip of its own would want a name that no other chart on the page has: points outside are left out
        Path(figures.Low, "stroke-dasharray=\"2 4\"");
        Path(figures.High, "stroke-dasharray=\"2 4\"");
        Path(figures.Fitted, "stroke-width=\"2\"");
        foreach (double heats in figures.Breaks)
        {
            Line(X(heats), Top, X(heats), Bottom, "stroke-dasharray=\"1 5\"");
        }

        Line(X(figures.Now), Bottom - 10, X(figures.Now), Bottom, "stroke-width=\"2\"");
    }

    private void Limit()
    {
        if (figures.ScrapMm is not { } scrap)
        {
            return;
        }

        Line(Left, Y(scrap), Right, Y(scrap), "stroke-width=\"2\" stroke-dasharray=\"12 6\"");
        if (figures.End is { } end)
        {
            double x = X(figures.Now + end.About);
            double y = Y(scrap);
            svg.Append(
                $"<path d=\"M{Markup.Of(x)} {Markup.Of(y - 8)}L{Markup.Of(x + 8)} {Markup.Of(y)}L{Markup.Of(x)} {Markup.Of(y + 8)}L{Markup.Of(x - 8)} {Markup.Of(y)}Z\" fill=\"#fff\" stroke=\"#000\" stroke-width=\"2\"/>\n"
            );
        }
    }

    private void Marks()
    {
        foreach (ChartPoint made in figures.Made)
        {
            Made(X(made.Heats), Y(made.SizeMm));
        }

        foreach (ChartPoint reading in figures.Readings)
        {
            Reading(X(reading.Heats), Y(reading.SizeMm));
        }

        foreach (ChartPoint misread in figures.Misread)
        {
            Misread(X(misread.Heats), Y(misread.SizeMm));
        }
    }

    private void Legend()
    {
        double y = Height - 22;
        double x = Left;
        void Word(string word, double sign)
        {
            Text(x + sign + 6, y + 5, word, "start");
            x += sign + 24 + (word.Length * 7.6);
        }

        Reading(x + 5, y);
        Word(LegendReading, 10);
        if (!figures.Misread.IsEmpty)
        {
            Misread(x + 5, y);
            Word(Words.Suspect, 10);
        }

        Made(x + 5, y);
        Word(LegendMade, 10);
        Line(x, y, x + 24, y, "stroke-width=\"2\"");
        Word(LegendFitted, 24);
        Line(x, y, x + 24, y, "stroke-dasharray=\"2 4\"");
        Word(LegendBand, 24);
        Line(x, y, x + 24, y, "stroke-width=\"2\" stroke-dasharray=\"12 6\"");
        Word(LegendScrap, 24);
    }

    private void Path(ImmutableArray<ChartPoint> points, string style)
    {
        StringBuilder path = new();
        foreach (ChartPoint point in points)
        {
            double x = X(point.Heats);
            double y = Y(point.SizeMm);
            bool isInside = x <= Right && y >= Top && y <= Bottom;
            if (isInside)
            {
                path.Append(path.Length == 0 ? 'M' : 'L').Append($"{Markup.Of(x)} {Markup.Of(y)}");
            }
        }

        if (path.Length > 0)
        {
            svg.Append($"<path d=\"{path}\" fill=\"none\" stroke=\"#000\" {style}/>\n");
        }
    }

    private void Reading(double x, double y) =>
        svg.Append($"<circle cx=\"{Markup.Of(x)}\" cy=\"{Markup.Of(y)}\" r=\"5\"/>\n");

    private void Made(double x, double y) =>
        svg.Append(
            $"<rect x=\"{Markup.Of(x - 5)}\" y=\"{Markup.Of(y - 5)}\" width=\"10\" height=\"10\" fill=\"#fff\" stroke=\"#000\" stroke-width=\"1.5\"/>\n"
        );

    private void Misread(double x, double y)
    {
        Line(x - 6, y - 6, x + 6, y + 6, "stroke-width=\"2\"");
        Line(x - 6, y + 6, x + 6, y - 6, "stroke-width=\"2\"");
    }

    private void Line(double x1, double y1, double x2, double y2, string style) =>
        svg.Append(
            $"<line x1=\"{Markup.Of(x1)}\" y1=\"{Markup.Of(y1)}\" x2=\"{Markup.Of(x2)}\" y2=\"{Markup.Of(y2)}\" stroke=\"#000\" {style}/>\n"
        );

    private void Text(double x, double y, string text, string anchor) =>
        svg.Append(
            $"<text x=\"{Markup.Of(x)}\" y=\"{Markup.Of(y)}\" text-anchor=\"{anchor}\">{Markup.Of(text)}</text>\n"
        );

    private static string Fixed(double value, int decimals) =>
        value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
