using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear;

namespace ToolWear.Results;

/// <summary>What a worn drift can be made into, a row a place.</summary>
internal static class MadeIntoTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("into", "Into"),
        new("possible", null),
        new("clearance_mm", "Room"),
        new("least_at", "least at"),
        new("off_each_end_mm", "Off ends"),
        new("off_each_cheek_mm", "Off cheeks"),
        new("heats", "Heats"),
        new("heats_rest_on", "as"),
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="offers">The places.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>A row for each.</returns>
    public static Table Of(IEnumerable<MadeIntoOffer> offers, LengthUnit units) =>
        new(Columns, [.. offers.Select(offer => Row(offer, units))]);

    private static ImmutableArray<Cell> Row(MadeIntoOffer offer, LengthUnit units)
    {
        string Wear(double mm) => SizeShown.Wear(mm, units);
        return
        [
            Cell.Of(Words.SeriesName(offer.Series.Eye, offer.Series.Place, offer.Series.Form.Name)),
            Cell.Of(offer.Making.Possible ? "yes" : "no"),
            Cell.Of(offer.Making.Clearance.ClearanceMm, Wear),
            Cell.Of(Words.Nearest(offer.Making.Clearance)),
            Cell.Of(offer.Making.LengthwaysMm, Wear),
            Cell.Of(offer.Making.WidthwaysMm, Wear),
            Cell.Of(offer.Heats, Words.About),
            Cell.Of(
                offer.Heats is null ? null
                : offer.Sisters == 0 ? Words.TheGuess
                : Words.TheirLives(offer.Sisters)
            ),
        ];
    }
}
