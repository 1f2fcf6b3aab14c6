using System.Collections.Immutable;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Tables;

namespace ToolWear.Results;

/// <summary>The tools that are lent out.</summary>
public static class LoanTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("tool", "Tool"),
        new(null, "What"),
        new("lent_on", "Since"),
        new("days_out", "Days out"),
        new("who", "Lent to"),
        new("note", "Note"),
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="loans">The loans.</param>
    /// <returns>A row for each, in their order.</returns>
    public static Table Of(ImmutableArray<Loan> loans) => new(Columns, [.. loans.Select(Row)]);

    private static ImmutableArray<Cell> Row(Loan loan) =>
        [
            Cell.Of(loan.Tool.Mark.Text),
            Cell.Of(ToolPlace.Of(loan.Tool.Tool).ToString()),
            Cell.Of(loan.Lent.On),
            Cell.Of(loan.DaysOut),
            Cell.Of(loan.Lent.To),
            Cell.Of(loan.Lent.Note?.ReplaceLineEndings(" "), shownIfEmpty: ""),
        ];
}
