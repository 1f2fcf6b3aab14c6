using System.Collections.Immutable;
using ToolWear.Tables;

namespace ToolWear.Results;

/// <summary>The data dictionary: every column of the CSV files and every key of the JSON results.</summary>
public static class ColumnTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("name", "Name"),
        new("unit", "Unit"),
        new("meaning", "Meaning"),
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="names">The names wanted; all where empty.</param>
    /// <returns>A row for each, by name; none where no column is called so.</returns>
    public static Table Of(params IReadOnlyCollection<string> names) =>
        new(
            Columns,
            [
                .. Words
                    .ColumnMeanings.Split('\n')
                    .Select(line => line.Split('|'))
                    .Where(parts => names.Count == 0 || names.Contains(parts[0], StringComparer.Ordinal))
                    .Select(parts =>
                        (ImmutableArray<Cell>)
                            [Cell.Of(parts[0]), Cell.Of(parts[1], shownIfEmpty: ""), Cell.Of(parts[2])]
                    ),
            ]
        );
}
