using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Outlines in characters and as SVG.</summary>
public sealed partial class OutlineTests
{
    public static TheoryData<SectionKind, double, double, double> Sections =>
        new()
        {
            { SectionKind.Round, 20, 20, 0 },
            { SectionKind.Rectangle, 40, 16, 3 },
            { SectionKind.Rectangle, 40, 16, 0 },
            { SectionKind.Rectangle, 40, 16, 8 },
            { SectionKind.Oval, 40, 20, 0 },
            { SectionKind.Teardrop, 44, 18, 2.5 },
            { SectionKind.Teardrop, 44, 18, 0 },
        };

    // SVG 1.1, 8.3.8: arcs by their ends and radii, here always the small one, turning against the clock as seen
    [Theory]
    [MemberData(nameof(Sections))]
    public void The_path_of_an_outline_encloses_the_sections_area(SectionKind kind, double a, double b, double r)
    {
        Section section = Make(kind, a, b, r);
        (double X, double Y)[] points = [.. Points(OutlineSvg.Path(section, 2))];
        double area = 0;
        for (int i = 0; i < points.Length; i++)
        {
            (double x, double y) = points[i];
            (double u, double v) = points[(i + 1) % points.Length];
            area -= ((x * v) - (u * y)) / 2;
        }

        Assert.Equal(section.AreaMm2(), area, 1e-4 * area);
        Assert.Equal(2 + (a / 2), points.Max(point => point.X), 1e-3);
        Assert.Equal(2 - (a / 2), points.Min(point => point.X), 1e-3);
        Assert.Equal(b / 2, points.Max(point => point.Y), 1e-2);
    }

    [Fact]
    public void A_file_is_whole_and_what_would_be_markup_is_escaped()
    {
        string svg = OutlineSvg.Of(
            [(Make(SectionKind.Teardrop, 36.8, 17.6, 3.2), 0), (Make(SectionKind.Rectangle, 34, 15, 3), -3.345)],
            "<script>&\"]]>"
        );
        XElement root = XDocument.Parse(svg).Root!;
        Assert.Equal("svg", root.Name.LocalName);
        Assert.Equal("<script>&\"]]>", root.Elements().First().Value);
        Assert.Equal(2, root.Elements().Count(each => each.Name.LocalName == "path"));
    }

    [Theory]
    [MemberData(nameof(Sections))]
    public void Without_braille_an_outline_is_drawn_in_plain_marks(SectionKind kind, double a, double b, double r)
    {
        Picture picture = new(40, 12);
        Section section = Make(kind, a, b, r);
        OutlineDrawing.Draw(
            picture,
            2,
            1,
            36,
            10,
            [(section, 0), (Make(SectionKind.Round, 6, 6, 0), 0)],
            hasBraille: false
        );
        string text = picture.ToString();
        Assert.Matches("^[o+ \n]+$", text);
        Assert.Contains('o', text);
        Assert.Contains('+', text);
        Assert.Empty(picture.Overlaps);
        Picture dots = new(40, 12);
        OutlineDrawing.Draw(dots, 2, 1, 36, 10, [(section, 0)], hasBraille: true);
        // the same cells, in dots
        Assert.Equal(
            text.Count(mark => mark == 'o'),
            dots.ToString().Count(mark => mark is >= '\u2800' and <= '\u28ff')
        );
    }

    private static Section Make(SectionKind kind, double a, double b, double r)
    {
        Assert.True(
            Section.TryMake(
                kind,
                Length.FromMm(a),
                Length.FromMm(b),
                Length.FromMm(r),
                out Section? section,
                out string? refusal
            ),
            refusal
        );
        return section;
    }

    private static IEnumerable<(double X, double Y)> Points(string path)
    {
        (double X, double Y) at = (0, 0);
        foreach (Match match in Command().Matches(path))
        {
            double[] figures =
            [
                .. match
                    .Groups["figures"]
                    .Value.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                    .Select(figure => double.Parse(figure, CultureInfo.InvariantCulture)),
            ];
            (double X, double Y) to = (figures[^2], figures[^1]);
            if (match.Groups["command"].Value == "A")
            {
                foreach ((double X, double Y) on in Arc(at, to, figures[0], figures[1]))
                {
                    yield return on;
                }
            }

            yield return at = to;
        }
    }

    // in a plane stretched so that the ellipse is a circle of radius 1: its middle lies to the left of the way
    private static IEnumerable<(double X, double Y)> Arc(
        (double X, double Y) from,
        (double X, double Y) to,
        double rx,
        double ry
    )
    {
        const int steps = 400;
        (double x0, double y0, double x1, double y1) = (from.X / rx, from.Y / ry, to.X / rx, to.Y / ry);
        double half = double.Hypot(x1 - x0, y1 - y0) / 2;
        if (half == 0)
        {
            yield break;
        }

        double off = Math.Sqrt(Math.Max(0, 1 - (half * half)));
        double cx = ((x0 + x1) / 2) + (off * (y1 - y0) / (2 * half));
        double cy = ((y0 + y1) / 2) - (off * (x1 - x0) / (2 * half));
        double begin = Math.Atan2(y0 - cy, x0 - cx);
        double turn = -2 * Math.Asin(Math.Min(1, half));
        for (int i = 1; i < steps; i++)
        {
            double t = begin + (turn * i / steps);
            yield return (rx * (cx + Math.Cos(t)), ry * (cy + Math.Sin(t)));
        }
    }

    [GeneratedRegex("(?<command>[MLA])(?<figures>[-0-9. ]+)")]
    private static partial Regex Command();
}
