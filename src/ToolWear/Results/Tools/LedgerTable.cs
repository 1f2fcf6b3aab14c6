using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using Row = ToolWear.Results.Column<ToolWear.Results.Tools.LedgerRow>;

namespace ToolWear.Results.Tools;

/// <summary>An entry of the ledger, and the one that crosses it out.</summary>
internal sealed record LedgerRow(Shop Shop, Entered Entered)
{
    public Entered? CrossedOutBy => Shop.CrossedOut.GetValueOrDefault(Entered.Number);
}

/// <summary>Entries of the ledger; files say sizes in mm.</summary>
internal static class LedgerTable
{
    public static Columns<LedgerRow> Columns { get; } =
    [
        Row.Number("entry", "Entry", row => row.Entered.Number)
            .Means(
                "the entry's number in the ledger; in the CSV set the rank of the row among all rows of all event files"
            ),
        Row.Day("entered_on", "Entered on", row => row.Entered.Day).Means("the shop's day on which an entry was made"),
        Row.Text("tools", "Tools", row => string.Join(' ', row.Entered.What.Tools.Distinct()), none: ""),
        new Row("what", "What", (row, units) => Cell.Of(Said(row, LengthUnit.Mm), Said(row, units))).Means(
            "what happened, in words"
        ),
        new Row(
            "crossed_out_by",
            "Crossed out by",
            (row, _) => row.CrossedOutBy is { } by ? Cell.Of(by.Number) : Cell.Of(null, none: "")
        ).Means("the entry that crosses this one out"),
        Row.Text("why", "Why", row => (row.CrossedOutBy?.What as EntryCrossedOut)?.Why, none: ""),
    ];

    private static string Said(LedgerRow row, LengthUnit units) => EntryWords.Of(row.Entered.What, units);
}
