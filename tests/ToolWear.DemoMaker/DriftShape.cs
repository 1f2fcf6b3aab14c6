using System.Collections.Immutable;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using static ToolWear.DemoMaker.Written;

namespace ToolWear.DemoMaker;

/// <summary>What a drift of one place is forged to: its section at the mark and its body. Invented, mm.</summary>
/// <param name="AtMark">The section at the drive mark, cold.</param>
/// <param name="Nose">The section at the nose.</param>
/// <param name="ShankMm">The diameter of the shank.</param>
/// <param name="FullMm">How far the full-size part runs below the drive mark.</param>
/// <param name="NoseRunMm">How far the nose lies beyond it; fitted to the volume that such a drift took.</param>
/// <param name="TaperLength">Taper of the length in the full-size part.</param>
/// <param name="TaperWidth">Taper of the width there.</param>
/// <param name="SpareMm">How far the full-size part goes on above the drive mark, still growing: driven deeper, it makes
/// up for wear.</param>
internal sealed record DriftShape(
    Section AtMark,
    Section Nose,
    decimal ShankMm,
    decimal FullMm,
    decimal NoseRunMm,
    double TaperLength,
    double TaperWidth,
    decimal SpareMm = 0
)
{
    /// <summary>Where the drive mark lies from the shank mark: the shank is 70 long and ends in a shoulder of 10.</summary>
    public const decimal DriveMarkMm = 70;

    /// <summary>The struck end behind the shank mark.</summary>
    private const decimal BehindMarkMm = 10;

    /// <summary>The length over all when new.</summary>
    public decimal OverallMm => BehindMarkMm + DriveMarkMm + FullMm + NoseRunMm;

    /// <summary>The body from the shank mark to the nose.</summary>
    public ImmutableArray<Station> Stations
    {
        get
        {
            Section shank = Cut(SectionKind.Round, ShankMm, ShankMm, 0);
            return
            [
                new(BodyPart.Shank, Mm(0), shank),
                new(BodyPart.Shank, Mm(DriveMarkMm - SpareMm - 10), shank),
                .. SpareMm > 0
                    ? [new Station(BodyPart.FullSize, Mm(DriveMarkMm - SpareMm), FullSizeAt(-SpareMm))]
                    : Array.Empty<Station>(),
                new(BodyPart.FullSize, Mm(DriveMarkMm), AtMark),
                new(BodyPart.Taper, Mm(DriveMarkMm + FullMm), FullSizeAt(FullMm)),
                new(BodyPart.Nose, Mm(DriveMarkMm + FullMm + NoseRunMm), Nose),
            ];
        }
    }

    /// <summary>The section of the full-size part so far below the drive mark; above it where negative.</summary>
    private Section FullSizeAt(decimal belowMm)
    {
        decimal length = (decimal)AtMark.EyeLength.Mm - ((decimal)TaperLength * belowMm);
        decimal width = (decimal)AtMark.EyeWidth.Mm - ((decimal)TaperWidth * belowMm);
        decimal radius = AtMark switch
        {
            TeardropSection teardrop => (decimal)teardrop.NoseRadius.Mm,
            // an edge radius cannot be more than half the width left
            RectangleSection rectangle => decimal.Min((decimal)rectangle.EdgeRadius.Mm, width / 2),
            _ => 0,
        };
        return Cut(AtMark.Kind, length, width, radius);
    }

    /// <summary>The shape of a drift of a place in the series for an eye.</summary>
    public static DriftShape Of(string eye, Place place) =>
        (eye, place) switch
        {
            ("H", Place.Rough) => Teardrop((34.5m, 14.0m, 2.6m), (16, 7, 1.5m), 20, 45, 162, 0.030),
            ("H", Place.Second) => Teardrop((36.0m, 16.4m, 3.0m), (16, 7, 1.5m), 20, 45, 150, 0.030),
            ("H", Place.Finish) => Teardrop((36.80m, 17.60m, 3.2m), (18, 8, 1.5m), 20, 45, 176, 0.030),
            ("T", Place.Opener) => new(Round(20), Round(9), 18, 20, 130, 0.01, 0.01),
            ("T", Place.Rough) => Teardrop((33.4m, 20.4m, 3.5m), (13, 9, 1.8m), 22, 50, 156, 0.035),
            ("T", Place.Finish) => Teardrop((35.18m, 22.38m, 4.0m), (14, 10, 2), 23, 50, 202, 0.035) with
            {
                SpareMm = 10,
            },
            ("X", Place.Rough) => new(Rectangle(22.0m, 12.5m, 6), Rectangle(12, 7, 3.4m), 20, 38, 151, 0.05, 0.04),
            ("X", Place.Second) => new(Oval(24.6m, 16.6m), Oval(12, 7), 20, 38, 130, 0.05, 0.04),
            ("X", Place.Finish) => new(Oval(25.60m, 17.60m), Oval(12, 7), 20, 38, 140, 0.05, 0.04),
            ("A", Place.Rough) => new(Rectangle(29.0m, 21.5m, 3), Rectangle(14, 10, 2), 24, 55, 171, 0.05, 0.05),
            ("A", Place.Second) => new(Rectangle(31.0m, 24.4m, 3), Rectangle(14, 10, 2), 24, 55, 180, 0.05, 0.05),
            ("A", Place.Finish) => new(Rectangle(32.05m, 25.60m, 3), Rectangle(14, 10, 2), 24, 55, 223, 0.05, 0.05),
            ("C", Place.Rough) => Teardrop((27.2m, 17.6m, 3.0m), (13, 9, 1.8m), 20, 50, 150, 0.035),
            ("C", Place.Finish) => Teardrop((28.80m, 19.20m, 3.4m), (14, 10, 2), 22, 50, 180, 0.035),
            _ => throw new ArgumentOutOfRangeException(nameof(place), $"{eye} has no {place} drift."),
        };

    private static DriftShape Teardrop(
        (decimal Length, decimal Width, decimal Radius) atMark,
        (decimal Length, decimal Width, decimal Radius) nose,
        decimal shankMm,
        decimal fullMm,
        decimal noseRunMm,
        double taper
    ) =>
        new(
            Cut(SectionKind.Teardrop, atMark.Length, atMark.Width, atMark.Radius),
            Cut(SectionKind.Teardrop, nose.Length, nose.Width, nose.Radius),
            shankMm,
            fullMm,
            noseRunMm,
            taper,
            taper
        );

    private static Section Round(decimal diameter) => Cut(SectionKind.Round, diameter, diameter, 0);

    private static Section Oval(decimal length, decimal width) => Cut(SectionKind.Oval, length, width, 0);

    private static Section Rectangle(decimal length, decimal width, decimal radius) =>
        Cut(SectionKind.Rectangle, length, width, radius);
}
