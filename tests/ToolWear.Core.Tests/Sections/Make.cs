using CsCheck;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using Xunit;

namespace ToolWear.Core.Tests.Sections;

/// <summary>Sections from plain millimetres, and random ones.</summary>
internal static class Make
{
    public static Gen<Section> AnyRound { get; } = Gen.Int[200, 6000].Select(d => (Section)Round(d / 100.0));

    public static Gen<Section> AnyRectangle { get; } =
        Gen.Select(
            Gen.Int[500, 6000],
            Gen.Int[500, 6000],
            Gen.Double[0, 0.5],
            (a, b, r) => (Section)Rectangle(a / 100.0, b / 100.0, Math.Min(a, b) / 100.0 * r)
        );

    public static Gen<Section> AnyOval { get; } =
        Gen.Select(Gen.Int[500, 6000], Gen.Int[500, 6000], (a, b) => (Section)Oval(a / 100.0, b / 100.0));

    public static Gen<Section> AnyTeardrop { get; } =
        Gen.Select(
            Gen.Int[500, 4000],
            Gen.Double[0, 0.5],
            Gen.Double[1.001, 4],
            (width, rho, ratio) => (Section)Teardrop(width / 100.0 * ratio, width / 100.0, width / 100.0 * rho)
        );

    /// <summary>Sections whose outline is made of circles and straight lines.</summary>
    public static Gen<Section> AnyOfArcs { get; } = Gen.OneOf(AnyRound, AnyRectangle, AnyTeardrop);

    public static Gen<Section> Any { get; } = Gen.OneOf(AnyRound, AnyRectangle, AnyTeardrop, AnyOval);

    public static Section Round(double d) => Of(SectionKind.Round, d, d, 0);

    public static Section Rectangle(double a, double b, double r) => Of(SectionKind.Rectangle, a, b, r);

    public static Section Oval(double a, double b) => Of(SectionKind.Oval, a, b, 0);

    /// <summary>A teardrop by length, greatest width and nose radius.</summary>
    public static Section Teardrop(double a, double width, double rho) => Of(SectionKind.Teardrop, a, width, rho);

    public static Section Of(SectionKind kind, double a, double b, double r)
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

    public static Body Body(params (double FromMarkMm, Section Section)[] stations)
    {
        Assert.True(
            ToolWear.Core.Sections.Body.TryMake(
                [
                    .. stations.Select(station => new Station(
                        BodyPart.Body,
                        Length.FromMm(station.FromMarkMm),
                        station.Section
                    )),
                ],
                out Body? body,
                out string? refusal
            ),
            refusal
        );
        return body;
    }
}
