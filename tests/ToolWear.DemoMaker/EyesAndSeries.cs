using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using static ToolWear.DemoMaker.Written;

namespace ToolWear.DemoMaker;

/// <summary>The eyes, their handles and the series of tools that make them. Invented, sizes in mm.</summary>
internal static class EyesAndSeries
{
    /// <summary>The four eyes of the shop, and the odd one of a commission.</summary>
    public static IEnumerable<LedgerEntry> Eyes =>
        [
            Eye(
                "H",
                SectionKind.Teardrop,
                (36.5m, 17.5m, 3.2m, 40),
                0.030,
                0.030,
                Fit.Wedged,
                (0.8m, 0.4m),
                "hatchet 16"
            ),
            Eye("T", SectionKind.Teardrop, (34.9m, 22.2m, 4, 44), 0.035, 0.035, Fit.SlipOn, (0.4m, 0.4m), "hawk 20"),
            Eye("X", SectionKind.Oval, (25.4m, 17.5m, null, 32), 0.05, 0.04, Fit.Wedged, (0.8m, 1.6m), "hammer 14"),
            Eye("A", SectionKind.Rectangle, (31.8m, 25.4m, 3, 50), 0.05, 0.05, Fit.SlipOn, (0.5m, 0.5m), "adze 30"),
            Eye("C", SectionKind.Teardrop, (28.575m, 19.05m, 3.4m, 40), 0.035, 0.035, Fit.SlipOn, (0.4m, 0.4m), null),
        ];

    /// <summary>The handles as bought. A slip-on handle has the taper of its eye, so the seat is judged along it.</summary>
    public static IEnumerable<LedgerEntry> Handles =>
        [
            new HandleDescribed("hatchet 16", Mm(36.2m), Mm(17.2m), null, null, "bought by the dozen, wedged"),
            new HandleDescribed("hawk 20", Mm(34.9m), Mm(22.2m), 0.035, Mm(12), "slips in from the top"),
            new HandleDescribed("hammer 14", Mm(25.1m), Mm(17.3m), null, null, "turned here"),
            new HandleDescribed("adze 30", Mm(31.8m), Mm(25.4m), 0.05, Mm(10), "slips in from the top"),
        ];

    /// <summary>What each place of each series is made like.</summary>
    public static IEnumerable<LedgerEntry> Series =>
        [
            .. Cutters,
            Drift("H", Place.Rough, "4140", 60, 0),
            Drift("H", Place.Second, "4140", 100, 1),
            Drift("H", Place.Finish, "H13", 290, 7),
            Drift("T", Place.Opener, "mild", 110, 0),
            Drift("T", Place.Rough, "4140", 60, 0),
            Drift("T", Place.Finish, "H13", 290, 7),
            Drift("X", Place.Rough, "4140", 60, 0),
            Drift("X", Place.Second, "4140", 100, 1),
            Drift("X", Place.Finish, "H13", 290, 7),
            Drift("A", Place.Rough, "4140", 60, 0),
            Drift("A", Place.Second, "4140", 100, 1),
            Drift("A", Place.Finish, "4140", 290, 2),
            Drift("C", Place.Rough, "4140", 60, 0),
            Drift("C", Place.Finish, "H13", 290, 7),
        ];

    private static IEnumerable<LedgerEntry> Cutters =>
        [
            Cutter("H", "slitter", 34, 3, "edge 3, corners r 3"),
            Cutter("T", "slot punch", 34, 6, null),
            Cutter("X", "slot punch", 24, 6, null),
            Cutter("A", "slot punch", 30, 10, null),
            Cutter("C", "slot punch", 27, 6, null),
        ];

    private static EyeDescribed Eye(
        string name,
        SectionKind section,
        (decimal Length, decimal Width, decimal? Radius, decimal Depth) size,
        double taperLength,
        double taperWidth,
        Fit fit,
        (decimal Under, decimal Over) limit,
        string? handle
    ) =>
        new(
            name,
            section,
            Mm(size.Length),
            Mm(size.Width),
            size.Radius is { } radius ? Mm(radius) : null,
            Mm(size.Depth),
            taperLength,
            taperWidth,
            fit,
            fit == Fit.Wedged ? Driving.BothFaces : Driving.OneFace,
            Mm(size.Length - limit.Under),
            Mm(size.Length + limit.Over),
            Mm(size.Width - limit.Under),
            Mm(size.Width + limit.Over),
            handle
        );

    private static SeriesDescribed Cutter(string eye, string form, decimal length, decimal width, string? note) =>
        new(
            new Series(
                eye,
                Place.None,
                Form(form),
                SectionKind.Rectangle,
                Mm(length),
                Mm(width),
                Mm(width / 2),
                null,
                null,
                200,
                "H13",
                true,
                4,
                note
            )
        );

    private static SeriesDescribed Drift(string eye, Place place, string steel, double guess, int readyDays)
    {
        DriftShape shape = DriftShape.Of(eye, place);
        Section atMark = shape.AtMark;
        bool isRound = atMark.Kind == SectionKind.Round;
        Length? radius = atMark switch
        {
            TeardropSection teardrop => teardrop.NoseRadius,
            RectangleSection rectangle => rectangle.EdgeRadius,
            _ => null,
        };
        return new(
            new Series(
                eye,
                place,
                Form("drift"),
                atMark.Kind,
                atMark.EyeLength,
                isRound ? null : atMark.EyeWidth,
                radius,
                shape.TaperLength,
                shape.TaperWidth,
                guess,
                steel,
                place == Place.Finish,
                readyDays,
                place == Place.Opener ? "round, drawn down to 9" : null
            )
        );
    }
}
