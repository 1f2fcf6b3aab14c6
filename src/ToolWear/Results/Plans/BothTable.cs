using ToolWear.Core.Planning;
using Row = ToolWear.Results.Column<ToolWear.Core.Planning.PlaceInBoth>;

namespace ToolWear.Results.Plans;

/// <summary>Two forge lists side by side, a row a place: as things are, and as they would be.</summary>
internal static class BothTable
{
    public static Columns<PlaceInBoth> Columns { get; } =
    [
        Row.Text(null, "", place => place.Differs ? "*" : null, none: ""),
        .. Row.Tools("What", place => place.Tools),
        Row.Number("number", null, place => place.Now.Number),
        Row.Day("forge_by", null, place => FirstOf(place.Now)),
        Row.Text(null, PlanWords.AsItIs, place => PlanWords.SideOf(place.Now)),
        Row.Number("if_number", null, place => place.Then.Number).Means("how many to forge under what was supposed"),
        Row.Day("if_forge_by", null, place => FirstOf(place.Then))
            .Means("the day by which to forge under what was supposed"),
        Row.Text(null, "If", place => PlanWords.SideOf(place.Then)),
    ];

    private static DateOnly? FirstOf(PlaceSide side) => side.Number == 0 ? null : side.Days[0].ForgeBy;
}
