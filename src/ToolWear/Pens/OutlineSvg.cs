using System.Globalization;
using System.Text;
using ToolWear.Core.Sections;
using ToolWear.Doors;

namespace ToolWear.Pens;

/// <summary>Outlines of sections as SVG.</summary>
internal static class OutlineSvg
{
    private const double MarginMm = 1;

    /// <summary>The outline of a section as the data of an SVG path, in mm about its mid-length, the nose to the right.</summary>
    /// <remarks>Round arcs are arcs; straight lines are lines; an oval is two half ellipses. Only digits, points, signs,
    /// letters of path commands and blanks come out.</remarks>
    /// <param name="section">The section.</param>
    /// <param name="shiftMm">How far it lies towards the nose.</param>
    /// <returns>For example "M20 0A20 10 0 0 0 -20 0A20 10 0 0 0 20 0Z".</returns>
    public static string Path(Section section, double shiftMm = 0)
    {
        if (section is OvalSection)
        {
            string a = Mm(section.EyeLength.Mm / 2);
            string b = Mm(section.EyeWidth.Mm / 2);
            string right = Mm((section.EyeLength.Mm / 2) + shiftMm);
            string left = Mm(shiftMm - (section.EyeLength.Mm / 2));
            return $"M{right} 0A{a} {b} 0 0 0 {left} 0A{a} {b} 0 0 0 {right} 0Z";
        }

        // upwards is minus in SVG: over the upper half from nose to back, then under the lower one
        OutlineArc[] upper = [.. section.UpperArcs()];
        StringBuilder path = new();
        OutlinePoint first = upper[0].At(upper[0].FromRad);
        path.Append($"M{Mm(first.XMm + shiftMm)} {Mm(-first.YMm)}");
        foreach (OutlineArc arc in upper)
        {
            Arc(path, arc, arc.At(arc.FromRad), arc.At(arc.ToRad), shiftMm, isUpper: true);
        }

        foreach (OutlineArc arc in upper.Reverse())
        {
            Arc(path, arc, arc.At(arc.ToRad), arc.At(arc.FromRad), shiftMm, isUpper: false);
        }

        return path.Append('Z').ToString();
    }

    /// <summary>A drawing of sections one inside another, to one scale.</summary>
    /// <param name="sections">Each with how far it lies towards the nose, the outermost first.</param>
    /// <param name="title">What it shows; marks of markup in it are escaped.</param>
    /// <returns>A whole SVG file, a user unit a mm.</returns>
    public static string Of(IReadOnlyList<(Section Section, double ShiftMm)> sections, string title)
    {
        double half = sections.Max(each => (each.Section.EyeLength.Mm / 2) + Math.Abs(each.ShiftMm)) + MarginMm;
        double high = sections.Max(each => each.Section.EyeWidth.Mm / 2) + MarginMm;
        StringBuilder svg = new();
        svg.Append(
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{Mm(2 * half)}mm\" height=\"{Mm(2 * high)}mm\" viewBox=\"{Mm(-half)} {Mm(-high)} {Mm(2 * half)} {Mm(2 * high)}\">\n"
        );
        svg.Append($"<title>{System.Security.SecurityElement.Escape(HarmlessWriter.Of(title))}</title>\n");
        foreach ((Section section, double shift) in sections)
        {
            svg.Append($"<path d=\"{Path(section, shift)}\" fill=\"none\" stroke=\"black\" stroke-width=\"0.2\"/>\n");
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Arc(
        StringBuilder path,
        OutlineArc arc,
        OutlinePoint from,
        OutlinePoint to,
        double shiftMm,
        bool isUpper
    )
    {
        double sign = isUpper ? -1 : 1;
        path.Append($"L{Mm(from.XMm + shiftMm)} {Mm(sign * from.YMm)}");
        if (arc.RadiusMm > 0)
        {
            string r = Mm(arc.RadiusMm);
            path.Append($"A{r} {r} 0 0 0 {Mm(to.XMm + shiftMm)} {Mm(sign * to.YMm)}");
        }
    }

    private static string Mm(double mm) => (Math.Round(mm, 6) + 0.0).ToString("0.######", CultureInfo.InvariantCulture);
}
