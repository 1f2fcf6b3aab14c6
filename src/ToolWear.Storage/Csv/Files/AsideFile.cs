using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Files;

/// <summary>aside.csv: tools laid aside and brought back.</summary>
internal sealed class AsideFile() : EventFile("aside.csv", "tool! on! what! why")
{
    private enum What
    {
        SetAside,
        BroughtBack,
    }

    private static readonly Vocabulary<What> WhatWords = new(
        "what",
        (What.SetAside, "set aside"),
        (What.BroughtBack, "brought back")
    );

    /// <inheritdoc />
    protected override IReadOnlyList<CsvCell>? Cells(LedgerEntry what, ShopToWrite shop) =>
        what switch
        {
            ToolSetAside e => Cells(e.Tool, e.On, What.SetAside, e.Why),
            ToolBroughtBack e => Cells(e.Tool, e.On, What.BroughtBack, e.Why),
            _ => null,
        };

    /// <inheritdoc />
    protected override LedgerEntry Entry(CsvRow row, ShopRead shop)
    {
        ToolMark tool = row.NeedMark("tool");
        DateOnly on = row.NeedPastDay("on");
        What what = row.NeedWord("what", WhatWords);
        string? why = row.Note("why");
        shop.Tool(row, "tool", tool);
        return what == What.SetAside ? new ToolSetAside(tool, on, why) : new ToolBroughtBack(tool, on, why);
    }

    /// <inheritdoc />
    protected override void Doubt(CsvRow row, ShopRead shop) => shop.Doubt("tool", row.Peek("tool"));

    private static IReadOnlyList<CsvCell> Cells(ToolMark tool, DateOnly on, What what, string? why) =>
        [CsvCell.Text(tool.Text), CsvCell.Day(on), CsvCell.Word(WhatWords, (What?)what), CsvCell.Text(why)];
}
