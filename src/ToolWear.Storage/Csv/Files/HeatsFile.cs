using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Files;

/// <summary>heats.csv: the heats as worked, those of one session, tool and work that follow each other in one row.</summary>
internal sealed class HeatsFile() : EventFile("heats.csv", "session! tool! work! heats! how")
{
    /// <inheritdoc />
    protected override IReadOnlyList<CsvCell>? Cells(LedgerEntry what, ShopToWrite shop) =>
        what is not HeatsWorked e
            ? null
            :
            [
                CsvCell.Text(e.Session),
                CsvCell.Text(e.Tool.Text),
                CsvCell.Word(Works.Words, (Work?)e.Work),
                CsvCell.Of(e.Heats),
                CsvCell.Word(HeatsWorked.HowWords, (HeatsHow?)e.How),
            ];

    /// <inheritdoc />
    protected override LedgerEntry Entry(CsvRow row, ShopRead shop)
    {
        HeatsWorked entry = new(
            row.NeedName("session"),
            row.NeedMark("tool"),
            row.NeedWord("work", Works.Words),
            row.NeedHeats("heats"),
            row.Word("how", HeatsWorked.HowWords) ?? HeatsHow.Counted
        );
        shop.NeedSession(row, entry.Session);
        shop.Tool(row, "tool", entry.Tool);
        if (!row.IsFaulty && (entry.Heats < Heats.Half || entry.Heats > Heats.MostAtOnce))
        {
            row.Fault("heats", $"{entry.Heats} heats in one row; 0.5 to 1000 can be");
        }

        return entry;
    }
}
