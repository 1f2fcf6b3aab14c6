using System.Collections.Immutable;
using ToolWear.Core.Fields;
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
                .. All.Where(each => names.Count == 0 || names.Contains(each.Name, StringComparer.Ordinal))
                    .GroupBy(each => each.Name, StringComparer.Ordinal)
                    .OrderBy(each => each.Key, StringComparer.Ordinal)
                    .Select(each => Row([.. each])),
            ]
        );

    /// <summary>What files and results say of their columns.</summary>
    private static IEnumerable<(string Name, string Unit, string Where, string Meaning)> All =>
        FieldTables
            .All.SelectMany(table => table.Columns.Select(each => (each.Name, each.Unit, table.File, each.Meaning)))
            .Concat(
                Words
                    .ColumnMeanings.Split('\n')
                    .Select(line => line.Split('|'))
                    .Select(parts => (parts[0], parts[1], Words.InResults, parts[2]))
            );

    private static ImmutableArray<Cell> Row((string Name, string Unit, string Where, string Meaning)[] each) =>
        [
            Cell.Of(each[0].Name),
            Cell.Of(
                string.Join(
                    "; ",
                    each.Select(one => one.Unit).Where(unit => unit.Length > 0).Distinct(StringComparer.Ordinal)
                ),
                shownIfEmpty: ""
            ),
            Cell.Of(Meaning(each)),
        ];

    /// <summary>What a name means; where it means something else in each file, that is said of each.</summary>
    private static string Meaning((string Name, string Unit, string Where, string Meaning)[] each)
    {
        var meanings = each.Where(one => one.Meaning.Length > 0)
            .GroupBy(one => one.Meaning, StringComparer.Ordinal)
            .ToArray();
        return meanings.Length == 1
            ? meanings[0].Key
            : string.Join("; ", meanings.Select(one => $"{string.Join(", ", one.Select(at => at.Where))}: {one.Key}"));
    }
}
