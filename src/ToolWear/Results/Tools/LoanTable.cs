using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using Lent = ToolWear.Results.Column<ToolWear.Core.Shops.Loan>;

namespace ToolWear.Results.Tools;

/// <summary>The tools that are lent out.</summary>
internal static class LoanTable
{
    public static Columns<Loan> Columns { get; } =
    [
        Lent.Text("tool", "Tool", loan => loan.Tool.Mark.Text),
        Lent.Text(null, "What", loan => ToolPlace.Of(loan.Tool.Tool).ToString()).Ranked(2),
        Lent.Day("lent_on", "Since", loan => loan.Lent.On).Means("the day a tool was lent"),
        Lent.Number("days_out", "Days out", loan => loan.DaysOut).Means("days since a tool was lent"),
        Lent.Text("who", "Lent to", loan => loan.Lent.To).Means("who has a lent tool"),
        Lent.Text("note", "Note", loan => loan.Lent.Note?.ReplaceLineEndings(" "), none: "").Ranked(1),
    ];
}
