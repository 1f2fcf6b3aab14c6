using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using static ToolWear.DemoMaker.Written;

namespace ToolWear.DemoMaker;

/// <summary>Slitters, punches, fullers and the rest of the invented shop's tooling.</summary>
internal static class StruckTools
{
    private static readonly ToolCost SlitterCost = new(17, 0.8m, 0.4m, 10);
    private static readonly ToolCost FullerCost = new(14, 1.0m, 0.5m, 10);

    /// <summary>The slitters and slot punches, then what belongs to no eye.</summary>
    public static ImmutableArray<Tool> All { get; } =
    [
        Slitter("HS1", Day(5, 5)),
        Punch("TP1", "T", 34, 6, Day(5, 18)),
        Punch("XP1", "X", 24, 6, Day(5, 6)),
        Punch("AP1", "A", 30, 10, Day(5, 21)),
        Fuller("FU1", null) with
        {
            Start = new(StartedAs.InUse, Heats.Of(120), HeatsBeforeHow.Counted),
            Note = "its heats were chalked on the door before the records began",
        },
        Fuller("FU2", Day(5, 6)),
        SpringFuller,
        Plain("HC1", "hot cut", [Gauge("edge", Wears.Smaller, Measures.Edge, 48, 36, 0.1m), Overall(165, null)], 250),
        Plain("FL1", "flatter", [Gauge("edge", Wears.Smaller, Measures.Edge, 62, 58, 0.1m), Overall(120, null)], 600),
        Plain("D1", "die", [Gauge("flat", Wears.Larger, Measures.Flat, 1.0m, 4.0m, 0.05m)], 1500) with
        {
            Note = "the pair is counted as one; its hollow is read against a straight edge",
        },
        Plain("B1", "bolster", [Gauge("hole", Wears.Larger, Measures.Width, 42, 45, 0.1m)], 1000),
        Slitter("HS2", Day(8, 5)),
    ];

    private static Tool SpringFuller =>
        Plain(
            "SF1",
            "fuller",
            [Gauge("flat", Wears.Larger, Measures.Flat, 1.0m, 3.0m, 0.05m), Overall(410, null)],
            200
        ) with
        {
            Steel = "5160",
            Note = "spring fuller, both noses worked alike",
        };

    private static Tool Slitter(string mark, DateOnly madeOn) =>
        Cutter(mark, "slitter", "H", 34, 3, madeOn) with
        {
            Note = "edge 3, corners r 3",
        };

    private static Tool Punch(string mark, string eye, decimal width, decimal thick, DateOnly madeOn) =>
        Cutter(mark, "slot punch", eye, width, thick, madeOn);

    private static Tool Cutter(string mark, string form, string eye, decimal width, decimal thick, DateOnly madeOn) =>
        Plain(
            mark,
            form,
            [
                Gauge("width", Wears.Smaller, Measures.Width, width, width - decimal.Round(width / 17, 1), 0.05m),
                Overall(190, 130),
            ],
            null
        ) with
        {
            Eye = eye,
            Section = SectionKind.Rectangle,
            Lot = "W1",
            MadeOn = madeOn,
            Cost = SlitterCost,
            Peg = $"{eye} rail",
            Stations = Blade(width, thick),
        };

    private static Tool Fuller(string mark, DateOnly? madeOn) =>
        Plain(
            mark,
            "fuller",
            [Gauge("flat", Wears.Larger, Measures.Flat, 1.0m, 3.0m, 0.05m), Overall(150, null)],
            null
        ) with
        {
            MadeOn = madeOn,
            Cost = FullerCost,
            GuessHeats = 200,
            Note = "top fuller, nose r 12",
        };

    private static Tool Plain(string mark, string form, ImmutableArray<GaugeMark> gauges, double? guess) =>
        new(
            Mark(mark),
            Form(form),
            null,
            Place.None,
            null,
            "H13",
            null,
            Day(4, 20),
            ToolStart.New,
            guess,
            ToolCost.Unknown,
            "hammer rack",
            null,
            gauges,
            []
        );

    /// <summary>The body of a slitter or slot punch, shank mark to edge.</summary>
    private static ImmutableArray<Station> Blade(decimal width, decimal thick)
    {
        Section shank = Cut(SectionKind.Round, 22, 22, 0);
        decimal edgeRadius = decimal.Min(3, thick / 2);
        return
        [
            new(BodyPart.Shank, Mm(0), shank),
            new(BodyPart.Shank, Mm(80), shank),
            new(BodyPart.Taper, Mm(110), Cut(SectionKind.Rectangle, width, thick + 6, 3)),
            new(BodyPart.Nose, Mm(180), Cut(SectionKind.Rectangle, width, thick, edgeRadius)),
        ];
    }

    private static GaugeMark Overall(decimal start, decimal? least) =>
        Gauge(ToolForm.Overall, Wears.Smaller, Measures.Overall, start, least, 0.1m);

    private static GaugeMark Gauge(
        string name,
        Wears wears,
        Measures measures,
        decimal start,
        decimal? scrap,
        decimal resolution
    ) =>
        new(
            name,
            wears,
            measures,
            null,
            Mm(start),
            wears == Wears.Smaller && scrap is { } least ? Mm(least) : null,
            wears == Wears.Larger && scrap is { } greatest ? Mm(greatest) : null,
            Mm(resolution)
        );
}
