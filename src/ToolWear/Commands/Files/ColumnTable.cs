using System.Collections.Immutable;
using ToolWear.Core.Fields;
using ToolWear.Results;
using ToolWear.Results.Eyes;
using ToolWear.Results.Looks;
using ToolWear.Results.Plans;
using ToolWear.Results.Tools;
using ToolWear.Storage.Csv;
using Named = ToolWear.Results.Column<ToolWear.Results.Column>;

namespace ToolWear.Commands.Files;

/// <summary>The data dictionary: every column of the CSV files and every key of the JSON results.</summary>
internal static class ColumnTable
{
    private const string InResults = "in results";

    public static Columns<Column> Columns { get; } =
    [
        Named.Text("name", "Name", column => column.Name).Means("the name of a column or key"),
        Named.Text("unit", "Unit", column => column.Unit, none: "").Means("the unit of a column"),
        Named.Text("meaning", "Meaning", column => column.Meaning).Means("what a column or key means"),
    ];

    /// <summary>The columns of each result by its verb.</summary>
    private static ImmutableSortedDictionary<string, Column[]> OfResults { get; } =
        new Dictionary<string, Column[]>(StringComparer.Ordinal)
        {
            ["bars"] = [.. BarTable.Bars, .. BarTable.Cuts],
            ["card"] = [.. Card.Columns, .. EyeFigures.Columns, .. SlitFigures.Columns, .. MadeIntoTable.All],
            ["compare"] = [.. Compared.All],
            ["costs"] = [.. CostTables.Places, .. CostTables.Heads, .. DecisionTables.Reforge],
            ["drive-depth"] = [.. ReckonedTables.Shift],
            ["export-history"] = [.. HistoryTable.Columns],
            ["eye"] = [.. ReckonedTables.Eye, .. ReckonedTables.Drift],
            ["forecast"] = [.. ForecastTable.Columns],
            ["forge-list"] = [.. ForgeTable.Columns, .. BothTable.Columns],
            ["hand-over"] = [.. HandOverTable.Columns],
            ["heat-split"] = [.. DecisionTables.HeatSplit],
            ["ledger"] = [.. LedgerTable.Columns],
            ["lifetimes"] =
            [
                .. LifetimeTable.All,
                .. LifetimeTable.Columns,
                .. LifetimeTable.OfFit,
                .. LifetimeTable.OfPrior,
            ],
            ["loans"] = [.. LoanTable.Columns],
            ["losses"] = [.. LossTable.Columns],
            ["order"] = [.. OrderTable.Columns],
            ["patterns"] = [.. PatternTable.Columns],
            ["plan"] = [.. PlanTable.Columns, .. PlanTable.Covers],
            ["pull-early"] = [.. DecisionTables.PullEarly],
            ["quote"] = [.. QuoteTable.All, .. QuoteTable.Tools],
            ["rack"] = [.. RackTable.Columns],
            ["section"] = [.. ReckonedTables.OfSection],
            ["series"] = [.. SeriesTable.Columns],
            ["settings"] = [.. SettingTable.Columns],
            ["slit"] = [.. ReckonedTables.Slits],
            ["stock"] = [.. ReckonedTables.Cut],
            ["stock-take"] = [.. StockTakeTable.Columns],
            ["to-measure"] = [.. ToMeasureTable.Columns],
            ["year"] =
            [
                .. YearTables.All,
                .. YearTables.Causes,
                .. YearTables.Heads,
                .. YearTables.Kept,
                .. YearTables.Lives,
                .. YearTables.Measured,
            ],
        }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <summary>What files and results say of their columns, by name.</summary>
    public static ImmutableArray<Column> All { get; } =
    [
        .. FieldTables
            .All.SelectMany(file =>
                file.Columns.Select(each =>
                    (Where: file.File, Column: new Column(each.Name, null, each.Unit) { Meaning = each.Meaning })
                )
            )
            .Concat(Results.Select(column => (Where: InResults, Column: column)))
            .GroupBy(each => each.Column.Name!, StringComparer.Ordinal)
            .OrderBy(named => named.Key, StringComparer.Ordinal)
            .Select(named => new Column(named.Key, null, Together(named.Select(each => each.Column.Unit)))
            {
                Meaning = Meaning([.. named]),
            }),
    ];

    /// <summary>What files and results say of the columns of one verb's result, or of one name.</summary>
    public static IEnumerable<Column> Of(string name) =>
        OfResults.TryGetValue(name, out Column[]? result)
            ? All.Where(column => result.Any(each => each.Name == column.Name))
            : All.Where(column => column.Name == name);

    /// <summary>The key of a file's rows in the document that holds the whole shop: "gauge_marks".</summary>
    public static string KeyOf(string file) => Path.GetFileNameWithoutExtension(file).Replace('-', '_');

    private static Column[] Unprinted =>
        [
            // what is read from plain tables alone
            new("from_heats", null, "heats")
            {
                Meaning = "heats a tool had when the records began; empty means from new",
            },
            // the document that holds the whole shop
            new("toolwear", null) { Meaning = "what a document holds: shop" },
            new("start_mm", null, "mm") { Meaning = "the wear at the start of the segment" },
        ];

    private static IEnumerable<Column> Results =>
        Unprinted
            .Concat(CsvSet.FileNames.Select(name => new Column(KeyOf(name), null) { Meaning = $"the rows of {name}" }))
            .Concat(OfResults.Values.SelectMany(columns => columns))
            .Concat(Columns)
            .Where(column => column.Name is not null);

    /// <summary>What a name means; where it means something else in each file, that is said of each.</summary>
    private static string Meaning((string Where, Column Column)[] named)
    {
        IGrouping<string, string>[] meanings =
        [
            .. named
                .Where(each => each.Column.Meaning?.Length > 0)
                .GroupBy(each => each.Column.Meaning!, each => each.Where, StringComparer.Ordinal),
        ];
        return meanings.Length == 1
            ? meanings[0].Key
            : string.Join(
                "; ",
                meanings.Select(each => $"{string.Join(", ", each.Distinct(StringComparer.Ordinal))}: {each.Key}")
            );
    }

    private static string Together(IEnumerable<string> units) =>
        string.Join("; ", units.Where(unit => unit.Length > 0).Distinct(StringComparer.Ordinal));
}
