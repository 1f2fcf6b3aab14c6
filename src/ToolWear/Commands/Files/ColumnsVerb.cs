using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Doors;
using ToolWear.Results;

namespace ToolWear.Commands.Files;

/// <summary>columns: the data dictionary.</summary>
internal static class ColumnsVerb
{
    private static readonly Argument<string?> Name = Said.Maybe(
        "NAME",
        "a verb such as rack, or one column; usually all"
    );

    public static Verb Verb { get; } =
        new("columns", "Says what each column and key of a result means.", "columns costs", [Name], Run);

    private static void Run(Call call)
    {
        string? name = call.Get(Name);
        Table table = ColumnTable.Columns.Over(name is null ? ColumnTable.All : ColumnTable.Of(name));
        if (table.Rows.IsEmpty)
        {
            throw RefusedException.WrongData(
                Call.NoSuch("column", name!, ColumnTable.All.Select(column => column.Name!))
            );
        }

        call.Print(table);
    }
}
