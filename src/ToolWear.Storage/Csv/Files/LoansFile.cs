using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Files;

/// <summary>loans.csv: tools lent out and taken back.</summary>
internal sealed class LoansFile() : EventFile("loans.csv", "tool! on! what! who note")
{
    private enum What
    {
        Out,
        Back,
    }

    private static readonly Vocabulary<What> WhatWords = new("what", (What.Out, "out"), (What.Back, "back"));

    /// <inheritdoc />
    protected override IReadOnlyList<CsvCell>? Cells(LedgerEntry what, ShopToWrite shop) =>
        what switch
        {
            ToolLent e => Cells(e.Tool, e.On, What.Out, e.To, e.Note),
            ToolTakenBack e => Cells(e.Tool, e.On, What.Back, null, e.Note),
            _ => null,
        };

    /// <inheritdoc />
    protected override LedgerEntry Entry(CsvRow row, ShopRead shop)
    {
        ToolMark tool = row.NeedMark("tool");
        DateOnly on = row.NeedPastDay("on");
        What what = row.NeedWord("what", WhatWords);
        string? who = row.Text("who");
        string? note = row.Note("note");
        shop.Tool(row, "tool", tool);
        if (what == What.Back && who is not null)
        {
            row.Fault("who", "who has it stands in the row \"out\"; empty is right here");
        }

        return what == What.Out ? new ToolLent(tool, on, who ?? "", note) : new ToolTakenBack(tool, on, note);
    }

    /// <inheritdoc />
    protected override void Doubt(CsvRow row, ShopRead shop) => shop.Doubt("tool", row.Peek("tool"));

    private static IReadOnlyList<CsvCell> Cells(ToolMark tool, DateOnly on, What what, string? who, string? note) =>
        [
            CsvCell.Text(tool.Text),
            CsvCell.Day(on),
            CsvCell.Word(WhatWords, (What?)what),
            CsvCell.Text(who),
            CsvCell.Text(note),
        ];
}
