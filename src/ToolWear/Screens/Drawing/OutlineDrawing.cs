using ToolWear.Core.Sections;
using ToolWear.Pens;

namespace ToolWear.Screens.Drawing;

/// <summary>Draws sections one inside another in characters, to one scale and about their mid-length.</summary>
internal static class OutlineDrawing
{
    private const string Marks = ".+o";
    private const int PointsAQuarter = 60;
    private static readonly Ink[] Inks = [Ink.Quiet, Ink.Plain, Ink.Strong];

    /// <summary>Draws them.</summary>
    /// <param name="picture">Where to.</param>
    /// <param name="left">The column of the left edge.</param>
    /// <param name="top">The row of the upper edge; above the picture where negative.</param>
    /// <param name="columns">Columns it may take.</param>
    /// <param name="rows">Rows it may take.</param>
    /// <param name="sections">
    /// The sections from the outermost to the innermost, each with how far it lies towards the nose; the first is drawn
    /// strongest, those after the second faintest.
    /// </param>
    /// <param name="hasBraille">Whether the font can be trusted with braille.</param>
    public static void Draw(
        Picture picture,
        int left,
        int top,
        int columns,
        int rows,
        IReadOnlyList<(Section Section, double ShiftMm)> sections,
        bool hasBraille
    )
    {
        if (sections.Count == 0 || columns < 4 || rows < 2)
        {
            return;
        }

        DotCanvas canvas = new(columns, rows, hasBraille);
        double length = sections.Max(each => each.Section.EyeLength.Mm);
        double width = sections.Max(each => each.Section.EyeWidth.Mm);
        // a dot is about as tall as it is wide
        double dotsPerMm = Math.Min((canvas.Width - 1) / length, (canvas.Height - 1) / width);
        for (int i = sections.Count - 1; i >= 0; i--)
        {
            int layer = Math.Max(1, Inks.Length - i);
            foreach ((double x, double y) in Along(sections[i].Section))
            {
                canvas.Set(
                    (int)Math.Round(((canvas.Width - 1) / 2.0) + ((x + sections[i].ShiftMm) * dotsPerMm)),
                    (int)Math.Round(((canvas.Height - 1) / 2.0) - (y * dotsPerMm)),
                    layer
                );
            }
        }

        canvas.PutInto(picture, left, top, Marks, Inks);
    }

    // points closer than a dot, along the straight cheeks too
    private static IEnumerable<(double X, double Y)> Along(Section section)
    {
        const int between = 80;
        IReadOnlyList<OutlinePoint> points = Outline.Points(section, PointsAQuarter);
        for (int i = 0; i < points.Count; i++)
        {
            OutlinePoint from = points[i];
            OutlinePoint to = points[(i + 1) % points.Count];
            double way = double.Hypot(to.XMm - from.XMm, to.YMm - from.YMm);
            int steps = way > section.EyeLength.Mm / 50 ? between : 1;
            for (int step = 0; step < steps; step++)
            {
                double share = step / (double)steps;
                yield return (double.Lerp(from.XMm, to.XMm, share), double.Lerp(from.YMm, to.YMm, share));
            }
        }
    }
}
