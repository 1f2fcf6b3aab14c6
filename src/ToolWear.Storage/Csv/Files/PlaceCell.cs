using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Files;

/// <summary>A place in the series as a cell: no place is the empty cell.</summary>
internal static class PlaceCell
{
    /// <summary>The cell.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The cell, empty for no place.</returns>
    public static CsvCell Of(Place place) => CsvCell.Word(Places.Words, place == Place.None ? null : (Place?)place);
}
