using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using static ToolWear.DemoMaker.Written;

namespace ToolWear.DemoMaker;

/// <summary>The drifts of the invented shop.</summary>
internal static class Drifts
{
    /// <summary>Heats that somebody guessed the adze's second drift had done before the records begin.</summary>
    private static readonly ToolStart AboutSixty = new(StartedAs.InUse, Heats.Of(60), HeatsBeforeHow.Estimated);

    /// <summary>Every drift, in the order of the days on which they were made; what was in use comes first.</summary>
    public static ImmutableArray<Tool> All { get; } =
    [
        InUse("A2ND", "A", Place.Second, AboutSixty),
        InUse("X2ND", "X", Place.Second, ToolStart.Unknown),
        New("H2ND", "H", Place.Second, "4140", "K4", Day(4, 22), new(2.9m, 1.4m, 0.7m, null), null),
        New("HF1", "H", Place.Finish, "H13", "W1", Day(4, 27), new(12.6m, 2.1m, 2.8m, 25), "the eye's true section"),
        New("TF1", "T", Place.Finish, "H13", "W1", Day(4, 27), new(16.8m, 2.1m, 2.8m, 25), "goes in from the top last"),
        New("XF1", "X", Place.Finish, "H13", "W1", Day(4, 28), new(8.5m, 2.1m, 2.8m, 25), null),
        New("AF1", "A", Place.Finish, "4140", "K5", Day(4, 29), new(6.5m, 2.1m, 2.8m, 25), null),
        New("TO1", "T", Place.Opener, "mild", "M1", Day(5, 4), new(1.1m, 0.6m, 0.1m, null), "round, drawn down to 9"),
        Rough("H1", "H", "mild", Day(5, 4), 1.4m),
        Rough("H2", "H", "mild", Day(5, 4), 1.4m),
        Rough("H3", "H", "mild", Day(5, 4), 1.4m),
        Rough("X1", "X", "4140", Day(5, 5), 2.1m),
        Rough("X2", "X", "4140", Day(5, 5), 2.1m),
        Rough("X3", "X", "4140", Day(5, 5), 2.1m),
        Rough("T1", "T", "4140", Day(5, 14), 3.5m),
        Rough("T2", "T", "4140", Day(5, 14), 3.5m),
        Rough("T3", "T", "4140", Day(5, 14), 3.5m),
        Rough("A1", "A", "4140", Day(5, 22), 4.8m),
        Rough("A2", "A", "4140", Day(5, 22), 4.8m),
        Rough("H4", "H", "4140", Day(7, 6), 2.7m),
        Rough("H5", "H", "4140", Day(7, 6), 2.7m),
        Rough("H6", "H", "4140", Day(7, 6), 2.7m),
    ];

    /// <summary>The loss of thickness at which a drift is done, mm: 1.2 rough, 0.8 second, 0.35 finish.</summary>
    public static decimal Allowed(Place place) =>
        place switch
        {
            Place.Finish => 0.35m,
            Place.Second => 0.8m,
            _ => 1.2m,
        };

    /// <summary>The loss of the long way at which it is done, mm: there is more of it to lose.</summary>
    private static decimal AllowedAlong(Place place) =>
        place switch
        {
            Place.Finish => 0.5m,
            Place.Second => 1.0m,
            _ => 1.5m,
        };

    /// <summary>A drift that was in use when the records began: its making size is the series'.</summary>
    private static Tool InUse(string mark, string eye, Place place, ToolStart start) =>
        New(mark, eye, place, "4140", null, null, null, "hung here when the records began") with
        {
            Start = start,
        };

    /// <summary>Rough drifts are forged in batches of three: 0.7 hours at the fire, 0.2 at the grinder each.</summary>
    private static Tool Rough(string mark, string eye, string steel, DateOnly madeOn, decimal steelCost)
    {
        string lot = (steel, eye) switch
        {
            ("mild", _) => "M1",
            (_, "A") => "K5",
            _ => "K4",
        };
        return New(mark, eye, Place.Rough, steel, lot, madeOn, new(steelCost, 0.7m, 0.2m, null), null);
    }

    private static Tool New(
        string mark,
        string eye,
        Place place,
        string steel,
        string? lot,
        DateOnly? madeOn,
        ToolCost? cost,
        string? note
    )
    {
        DriftShape shape = DriftShape.Of(eye, place);
        return new(
            Mark(mark),
            Form("drift"),
            eye,
            place,
            shape.AtMark.Kind,
            steel,
            lot,
            madeOn,
            ToolStart.New,
            null,
            cost ?? ToolCost.Unknown,
            $"{eye} rail",
            note,
            GaugeMarks(shape, place),
            shape.Stations
        );
    }

    private static ImmutableArray<GaugeMark> GaugeMarks(DriftShape shape, Place place)
    {
        Length at = Mm(DriftShape.DriveMarkMm);
        Length width = shape.AtMark.EyeWidth;
        Length length = shape.AtMark.EyeLength;
        Length fine = Mm(place == Place.Finish ? 0.01m : 0.05m);
        GaugeMark thickness = new(
            "width",
            Wears.Smaller,
            Measures.Width,
            at,
            width,
            width - Mm(Allowed(place)),
            null,
            fine
        );
        // no least: how short a drift may be follows from the head it works on
        GaugeMark over = new(
            ToolForm.Overall,
            Wears.Smaller,
            Measures.Overall,
            null,
            Mm(shape.OverallMm),
            null,
            null,
            Mm(0.1m)
        );
        // a round has one size only
        return shape.AtMark.Kind == SectionKind.Round
            ? [thickness, over]
            :
            [
                thickness,
                new("length", Wears.Smaller, Measures.Length, at, length, length - Mm(AllowedAlong(place)), null, fine),
                over,
            ];
    }
}
