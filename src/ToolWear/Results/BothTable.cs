using System.Collections.Immutable;
using ToolWear.Core.Planning;
using ToolWear.Core.Tools;

namespace ToolWear.Results;

/// <summary>Two forge lists side by side, a row a place: as things are, and as they would be.</summary>
internal static class BothTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new(null, ""),
        new("eye", null),
        new("place", null),
        new("form", null),
        new(null, "What"),
        new("number", null),
        new("forge_by", null),
        new(null, Words.AsItIs),
        new("if_number", null),
        new("if_forge_by", null),
        new(null, "If"),
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="both">The two lists.</param>
    /// <returns>A row for each place for which one of them forges something.</returns>
    public static Table Of(TwoForgeLists both) => new(Columns, [.. both.Places.Select(Row)]);

    private static ImmutableArray<Cell> Row(PlaceInBoth place) =>
        [
            Cell.Of(place.Differs ? "*" : "", none: ""),
            Cell.Of(place.Tools.Eye),
            Cell.Of(place.Tools.Place == Place.None ? null : Places.Words.Word(place.Tools.Place)),
            Cell.Of(place.Tools.Form),
            Cell.Of(place.Tools.ToString()),
            Cell.Of(place.Now.Number),
            Cell.Of(FirstOf(place.Now)),
            Cell.Of(Words.SideOf(place.Now)),
            Cell.Of(place.Then.Number),
            Cell.Of(FirstOf(place.Then)),
            Cell.Of(Words.SideOf(place.Then)),
        ];

    private static DateOnly? FirstOf(PlaceSide side) => side.Number == 0 ? null : side.Days[0].ForgeBy;
}
