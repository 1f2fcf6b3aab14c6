using System.Globalization;
using CsCheck;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Testing.Generators;
using Xunit;

namespace ToolWear.Core.Tests.Sections;

public sealed class SectionFiguresTests
{
    // closed forms of the four sections, worked out apart from any program code
    [Theory]
    [InlineData(SectionKind.Rectangle, 40, 16, 3, 632.27433, 106.84956)]
    [InlineData(SectionKind.Teardrop, 44, 18, 2.5, 518.30220, 102.43270)]
    [InlineData(SectionKind.Teardrop, 40, 16, 8, 585.06193, 98.26548)]
    [InlineData(SectionKind.Rectangle, 40, 16, 8, 585.06193, 98.26548)]
    [InlineData(SectionKind.Oval, 40, 20, 0, 628.31853, 96.88448)]
    public void Area_and_perimeter_are_those_worked_out_by_hand(
        SectionKind kind,
        double a,
        double b,
        double r,
        double areaMm2,
        double perimeterMm
    )
    {
        Section section = Make.Of(kind, a, b, r);

        Assert.Equal(areaMm2, section.AreaMm2(), 5e-6);
        Assert.Equal(perimeterMm, section.PerimeterMm(), 5e-6);
    }

    // reference-data/geometry_sections.csv: closed forms, the ellipse by the complete elliptic integral
    [Fact]
    public void Area_and_perimeter_are_those_of_the_reference_table()
    {
        foreach (string[] row in ReferenceRows.Of("geometry_sections.csv"))
        {
            double p1 = Number(row[1]);
            double p2 = Number(row[2]);
            Section section = row[0].Split(' ')[0] switch
            {
                "rounded_rectangle" => Make.Rectangle(p1, p2, Number(row[3])),
                "obround" => Make.Rectangle(p1, p2, p2 / 2),
                "ellipse" => Make.Oval(2 * p1, 2 * p2),
                "teardrop" => Make.Teardrop(p1 + p2, 2 * p1, 0),
                "egg" => Make.Teardrop(p1 + p2 + Number(row[3]), 2 * Math.Max(p1, p2), Math.Min(p1, p2)),
                _ => Skip(row[0]),
            };

            Assert.Equal(Number(row[4]), section.AreaMm2(), 1e-9 * section.AreaMm2());
            Assert.Equal(Number(row[5]), section.PerimeterMm(), 1e-9 * section.PerimeterMm());
        }
    }

    // A. Cauchy: for any convex section P is the integral of h over a full turn, A half that of h^2 - h'^2. Gauss's rule
    // between the kinks of h, its slope by differences; 10 000 sections, the same each time.
    [Fact]
    public void Area_and_perimeter_follow_from_the_reach_by_Cauchys_formulas()
    {
        int sections = 0;
        foreach (Section section in Fixed.Samples(Make.Any, 10_000))
        {
            (double p, double a) = ByCauchy(section);
            Assert.Equal(p, section.PerimeterMm(), 1e-6);
            Assert.Equal(a, section.AreaMm2(), 1e-6 * Math.Max(1, a));
            sections++;
        }

        Assert.Equal(10_000, sections);
    }

    private static (double PerimeterMm, double AreaMm2) ByCauchy(Section section)
    {
        const int panels = 16;
        const double step = 1e-5;
        double[] kinks =
        [
            0,
            Math.PI / 2,
            Math.PI,
            .. section is TeardropSection ? SquareToTheCheek(section) : Array.Empty<double>(),
        ];
        Array.Sort(kinks);
        double p = 0;
        double a = 0;
        for (int i = 1; i < kinks.Length; i++)
        {
            double width = (kinks[i] - kinks[i - 1]) / panels;
            for (int panel = 0; width > 1e-9 && panel < panels; panel++)
            {
                double from = kinks[i - 1] + (panel * width);
                foreach ((double x, double weight) in Gauss)
                {
                    double t = from + (width * (1 + x) / 2);
                    double h = section.SupportMm(t);
                    double d = Math.Min(step, width / 50);
                    double slope = (section.SupportMm(t + d) - section.SupportMm(t - d)) / (2 * d);
                    p += weight * width / 2 * h;
                    a += weight * width / 2 * ((h * h) - (slope * slope)) / 2;
                }
            }
        }

        // the other half of the turn is the same
        return (2 * p, 2 * a);
    }

    private static double[] SquareToTheCheek(Section section)
    {
        double R = section.EyeWidth.Mm / 2;
        double rho = section.Radius.Mm;
        return [Math.Acos((R - rho) / (section.EyeLength.Mm - R - rho))];
    }

    // Gauss-Legendre, five points: M. Abramowitz and I. Stegun, Handbook of Mathematical Functions (1964), table 25.4
    private static (double X, double Weight)[] Gauss { get; } =
    [
        (0, 0.568888888888889),
        (0.538469310105683, 0.478628670499366),
        (-0.538469310105683, 0.478628670499366),
        (0.906179845938664, 0.236926885056189),
        (-0.906179845938664, 0.236926885056189),
    ];

    [Fact]
    public void The_outline_lies_on_the_section_and_encloses_its_area() =>
        Make.Any.Sample(
            section =>
            {
                IReadOnlyList<OutlinePoint> points = Outline.Points(section, 200);
                double area = 0;
                double around = 0;
                for (int i = 0; i < points.Count; i++)
                {
                    OutlinePoint p = points[i];
                    OutlinePoint q = points[(i + 1) % points.Count];
                    area += ((p.XMm * q.YMm) - (q.XMm * p.YMm)) / 2;
                    around += double.Hypot(q.XMm - p.XMm, q.YMm - p.YMm);
                }

                Assert.Equal(section.AreaMm2(), area, 1e-4 * area);
                Assert.Equal(section.PerimeterMm(), around, 1e-4 * around);
                Assert.Equal(section.EyeLength.Mm / 2, points.Max(p => p.XMm), 1e-9);
                Assert.Equal(-section.EyeLength.Mm / 2, points.Min(p => p.XMm), 1e-9);
                Assert.Equal(section.EyeWidth.Mm / 2, points.Max(p => p.YMm), 1e-3);
                for (double t = 0; t < 6.28; t += 0.1)
                {
                    double reach = points.Max(p => (p.XMm * Math.Cos(t)) + (p.YMm * Math.Sin(t)));
                    Assert.InRange(section.SupportMm(t) - reach, -1e-9, 2e-3);
                }
            },
            iter: 100
        );

    [Fact]
    public void The_smiths_figures_make_the_same_section_again() =>
        Make.Any.Sample(section =>
        {
            Assert.True(
                Section.TryMake(
                    section.Kind,
                    section.EyeLength,
                    section.EyeWidth,
                    section.Radius,
                    out Section? again,
                    out string? refusal
                ),
                refusal
            );
            Assert.Equal(section, again);
        });

    [Fact]
    public void A_very_flat_oval_has_nearly_twice_its_length_around_it()
    {
        Assert.Equal(200, Make.Oval(100, 0.1).PerimeterMm(), 0.01);
        Assert.Equal(Math.PI * 31.7, Make.Oval(31.7, 31.7).PerimeterMm(), 1e-12);
    }

    [Fact]
    public void A_worn_drift_keeps_its_made_radius_while_its_width_has_room_for_it()
    {
        Section made = Make.Rectangle(30, 13, 6);

        Assert.True(made.TryWornTo(Length.FromMm(29.8), Length.FromMm(12.4), out Section? worn, out _));
        Assert.Equal(6, worn.Radius.Mm);
        Assert.True(made.TryWornTo(Length.FromMm(29.8), Length.FromMm(11.0), out Section? thin, out _));
        Assert.Equal(5.5, thin.Radius.Mm);
    }

    private static Section Skip(string shape)
    {
        Assert.Fail($"no section for {shape}");
        return Make.Round(1);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
