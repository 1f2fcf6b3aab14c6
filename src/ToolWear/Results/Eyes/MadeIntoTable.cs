using ToolWear.Core.Sections;
using ToolWear.Core.Wear;
using ToolWear.Wording;
using Row = ToolWear.Results.Column<ToolWear.Core.Wear.MadeIntoOffer>;

namespace ToolWear.Results.Eyes;

/// <summary>What a worn drift can be made into, a row a place.</summary>
internal static class MadeIntoTable
{
    private static readonly Row Possible = Row.YesNo("possible", "Can be", offer => offer.Making.Possible)
        .Means("yes where it can be");

    public static Column<MadeIntoOffer> Into { get; } =
        Row.Text(
                "into",
                "Into",
                offer => Words.SeriesName(offer.Series.Eye, offer.Series.Place, offer.Series.Form.Name)
            )
            .Means("the place it could be made into");

    /// <summary>All places, those too that it cannot be made into.</summary>
    public static Columns<MadeIntoOffer> All { get; } = Of(Possible);

    /// <summary>Places that it can be made into.</summary>
    public static Columns<MadeIntoOffer> Offers { get; } = Of(Possible.InFiles);

    private static Columns<MadeIntoOffer> Of(Row possible) =>
        [
            Into,
            possible,
            Row.Number("clearance_mm", "Room", offer => offer.Making.Clearance.ClearanceMm, Quantity.Wear)
                .Means("the least room between two sections; below zero the inner one bursts the outer"),
            Row.Text("least_at", "least at", offer => Nearest(offer.Making.Clearance))
                .Means("where the room is least: nose, back, cheek, ends"),
            Row.Number("off_each_end_mm", "Off ends", offer => offer.Making.LengthwaysMm, Quantity.Wear)
                .Means("what has to come off each end"),
            Row.Number("off_each_cheek_mm", "Off cheeks", offer => offer.Making.WidthwaysMm, Quantity.Wear)
                .Means("what has to come off each cheek"),
            Row.Number("heats", "Heats", offer => offer.Heats, Quantity.Heats),
            Row.Text("heats_rest_on", "as", RestOn).Means("what a stage's heats a head rest on"),
        ];

    /// <summary>Where a clearance is least, in one word.</summary>
    private static string Nearest(Clearance clearance) =>
        clearance.LeastAt == NearestAt.Cheek ? "cheek"
        : clearance.EndsAlike ? "ends"
        : clearance.LeastAt == NearestAt.Nose ? "nose"
        : "back";

    private static string? RestOn(MadeIntoOffer offer) =>
        offer.Heats is null
            ? null
            : offer.Sisters switch
            {
                0 => "guess by steel",
                1 => "one such tool",
                int sisters => $"{sisters} such tools",
            };
}
