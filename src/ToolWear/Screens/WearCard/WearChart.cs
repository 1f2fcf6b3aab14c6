using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.WearCard;

/// <summary>Draws the chart of a gauge mark: sizes upwards, heats to the right.</summary>
internal sealed class WearChart
{
    private const string ChartTooSmall = "The window is too small for the chart.";

    private const int BandLayer = 1;
    private const int BreakLayer = 2;
    private const int LimitLayer = 3;
    private const int CurveLayer = 4;
    private const int MadeLayer = 5;
    private const int EndLayer = 6;
    private const int ReadingLayer = 7;
    private const string Marks = ".|-~o=+";
    private static readonly Ink[] Inks = [Ink.Quiet, Ink.Quiet, Ink.Warn, Ink.Plain, Ink.Done, Ink.Warn, Ink.Strong];

    private readonly ChartFigures figures;
    private readonly DotCanvas canvas;
    private readonly ChartRange range;

    private WearChart(ChartFigures figures, LengthUnit units, DotCanvas canvas)
    {
        this.figures = figures;
        this.canvas = canvas;
        range = ChartRange.Of(figures, units);
    }

    /// <summary>Draws it, or says that its place is too small.</summary>
    /// <param name="picture">Where to; the chart fills it.</param>
    /// <param name="figures">The figures.</param>
    /// <param name="units">The unit for people.</param>
    /// <param name="hasBraille">Whether the font can be trusted with braille.</param>
    public static void Draw(Picture picture, ChartFigures figures, LengthUnit units, bool hasBraille)
    {
        int margin = units == LengthUnit.Mm ? 8 : 9;
        if (picture.Width < margin + 16 || picture.Height < 5)
        {
            picture.Put(0, 0, ChartTooSmall, Ink.Quiet);
            return;
        }

        WearChart chart = new(figures, units, new DotCanvas(picture.Width - margin, picture.Height - 2, hasBraille));
        chart.DrawDots();
        chart.canvas.PutInto(picture, margin, 0, Marks, Inks);
        chart.DrawAxes(picture, margin);
        chart.DrawEnd(picture, margin);
    }

    private int X(double heats) => (int)Math.Round(heats / range.LastHeat * (canvas.Width - 1));

    private int Y(double size) =>
        (int)Math.Round((range.Greatest - size) / (range.Greatest - range.Least) * (canvas.Height - 1));

    private void DrawDots()
    {
        Edge(figures.Low, BandLayer, every: 2);
        Edge(figures.High, BandLayer, every: 2);
        foreach (double heats in figures.Breaks)
        {
            for (int y = 0; y < canvas.Height; y += 2)
            {
                canvas.Set(X(heats), y, BreakLayer);
            }
        }

        if (figures.ScrapMm is { } scrap)
        {
            for (int x = 0; x < canvas.Width; x++)
            {
                if (x % 6 < 4)
                {
                    canvas.Set(x, Y(range.InUnit(scrap)), LimitLayer);
                }
            }
        }

        Edge(figures.Fitted, CurveLayer, every: 1);
        DrawEndBar();
        foreach (ChartPoint made in figures.Made)
        {
            Cross(made, MadeLayer, square: true);
        }

        foreach (ChartPoint reading in figures.Readings)
        {
            Cross(reading, ReadingLayer, square: false);
        }

        foreach (ChartPoint misread in figures.Misread)
        {
            Saltire(misread);
        }
    }

    /// <summary>A bar along the limit from where the end may come to where it may come at the latest, a stroke where it comes.</summary>
    private void DrawEndBar()
    {
        if (figures is not { End: { } end, ScrapMm: { } scrap })
        {
            return;
        }

        int y = Y(range.InUnit(scrap));
        int last = X(figures.Now + (end.To ?? range.LastHeat));
        for (int x = X(figures.Now + (end.From ?? 0)); x <= last; x++)
        {
            canvas.Set(x, y, EndLayer);
            canvas.Set(x, y - 1, EndLayer);
        }

        for (int step = -4; step <= 3; step++)
        {
            canvas.Set(X(figures.Now + end.About), y + step, EndLayer);
        }
    }

    /// <summary>Says about when the end comes, as near to its mark as nothing else stands.</summary>
    private void DrawEnd(Picture picture, int margin)
    {
        if (figures is not { End: { } end, ScrapMm: { } scrap })
        {
            return;
        }

        string text = EndOnChart(end.About, end.From, end.To);
        int row = Y(range.InUnit(scrap)) / 4;
        int middle = margin + (X(figures.Now + end.About) / 2);
        if (FreeNear(picture, row, middle, margin, Picture.ColumnsOf(text)) is var (y, x))
        {
            picture.Put(x, y, text, Ink.Warn);
        }
    }

    /// <summary>The empty stretch that lies nearest to a place: rows are counted thrice, for they are taller.</summary>
    private (int Row, int Column)? FreeNear(Picture picture, int row, int middle, int margin, int length)
    {
        (int Row, int Column)? nearest = null;
        int best = int.MaxValue;
        for (int y = 0; y < canvas.Rows; y++)
        {
            int run = 0;
            for (int x = margin; x < picture.Width; x++)
            {
                run = picture[x, y].Text == " " ? run + 1 : 0;
                int first = x - length;
                int away = (3 * Math.Abs(y - row)) + Math.Abs(first + (length / 2) - middle);
                // a space stands on either side of the text
                if (run >= length + 2 && away < best)
                {
                    (best, nearest) = (away, (y, first));
                }
            }
        }

        return nearest;
    }

    private void Edge(ImmutableArray<ChartPoint> points, int layer, int every)
    {
        for (int i = 1; i < points.Length; i++)
        {
            int from = X(points[i - 1].Heats);
            int to = X(points[i].Heats);
            double start = range.InUnit(points[i - 1].SizeMm);
            double rise = range.InUnit(points[i].SizeMm) - start;
            for (int x = from; x <= to; x++)
            {
                if (x % every == 0)
                {
                    canvas.Set(x, Y(start + (rise * (to == from ? 0 : (double)(x - from) / (to - from)))), layer);
                }
            }
        }
    }

    private void Cross(ChartPoint point, int layer, bool square)
    {
        int x = X(point.Heats);
        int y = Y(range.InUnit(point.SizeMm));
        (int, int)[] around = square ? [(0, 0), (1, 0), (0, 1), (1, 1)] : [(0, 0), (-1, 0), (1, 0), (0, -1), (0, 1)];
        foreach ((int dx, int dy) in around)
        {
            canvas.Set(x + dx, y + dy, layer);
        }
    }

    /// <summary>A reading that is likelier wrong than right is drawn crosswise, larger than the others.</summary>
    private void Saltire(ChartPoint point)
    {
        for (int step = -2; step <= 2; step++)
        {
            canvas.Set(X(point.Heats) + step, Y(range.InUnit(point.SizeMm)) + step, ReadingLayer);
            canvas.Set(X(point.Heats) + step, Y(range.InUnit(point.SizeMm)) - step, ReadingLayer);
        }
    }

    private void DrawAxes(Picture picture, int margin)
    {
        int bottom = canvas.Rows;
        for (int row = 0; row < bottom; row++)
        {
            picture.Put(margin - 1, row, "│", Ink.Quiet);
        }

        (IReadOnlyList<double> sizes, int decimals) = RoundTicks.Of(
            range.Least,
            range.Greatest,
            Math.Max(4, canvas.Rows / 2)
        );
        foreach (double size in sizes)
        {
            string text = RoundTicks.Text(size, decimals);
            picture.PutRight(margin - 1, Y(size) / 4, text, Ink.Quiet);
        }

        picture.Put(margin - 1, bottom, "└" + new string('─', canvas.Columns), Ink.Quiet);
        (IReadOnlyList<double> heats, int places) = RoundTicks.Of(0, range.LastHeat, Math.Max(2, canvas.Columns / 10));
        int free = 0;
        foreach (double at in heats)
        {
            string text = RoundTicks.Text(at, places);
            int column = Math.Max(free, margin + (X(at) / 2) - (text.Length / 2));
            if (column + text.Length < picture.Width - Words.HeatsAxis.Length - 1)
            {
                free = picture.Put(column, bottom + 1, text, Ink.Quiet) + 1;
            }
        }

        picture.PutRight(picture.Width, bottom + 1, Words.HeatsAxis, Ink.Quiet);
    }

    private static string EndOnChart(double about, double? from, double? to) =>
        $"done in about {Words.About(about)}"
        + (from is { } low && to is { } high ? $", {Words.About(low)}-{Words.About(high)}" : "");
}
