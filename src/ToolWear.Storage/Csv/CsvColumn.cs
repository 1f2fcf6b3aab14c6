using System.Collections.Immutable;
using ToolWear.Core.Fields;

namespace ToolWear.Storage.Csv;

/// <summary>A column of a CSV file.</summary>
/// <param name="Name">Its name in the header row.</param>
/// <param name="IsRequired">Whether a file without it is refused.</param>
internal sealed record CsvColumn(string Name, bool IsRequired)
{
    /// <summary>The columns of a file of described things.</summary>
    /// <typeparam name="T">The thing.</typeparam>
    /// <param name="fields">Its fields.</param>
    /// <returns>The columns.</returns>
    public static ImmutableArray<CsvColumn> Of<T>(FieldTable<T> fields) =>
        [.. fields.All.Select(field => new CsvColumn(field.Name, field.Need != Need.Maybe))];
}
