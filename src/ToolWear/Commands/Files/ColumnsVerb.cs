using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Doors;
using ToolWear.Results;

namespace ToolWear.Commands.Files;

/// <summary>columns: the data dictionary.</summary>
internal static class ColumnsVerb
{
    private static readonly Argument<string?> Name = Said.Maybe("NAME", "one column or key; usually all");

    public static Verb Verb { get; } =
        new(
            "columns",
            "Says what the columns of the CSV files and the keys of the JSON results mean, and their units.",
            "columns left_lo90",
            [Name],
            Run
        );

    private static void Run(Call call)
    {
        string? name = call.Get(Name);
        Table table = ColumnTable.Columns.Over(ColumnTable.All.Where(column => name is null || column.Name == name));
        if (table.Rows.IsEmpty)
        {
            throw RefusedException.WrongData(NoSuchColumn(name!));
        }

        call.Print(table);
    }

    private static string NoSuchColumn(string name) =>
        $"no file and no result has a column {name}: \"toolwear columns\" lists them all";
}
