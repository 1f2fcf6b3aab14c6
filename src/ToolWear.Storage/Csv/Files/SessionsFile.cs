using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Storage.Csv.Files;

/// <summary>sessions.csv: the sessions at the hammer.</summary>
internal sealed class SessionsFile()
    : EventFile("sessions.csv", "session! on! pattern heads lubricant cooling blows hand closed note")
{
    /// <inheritdoc />
    protected override IReadOnlyList<CsvCell>? Cells(LedgerEntry what, ShopToWrite shop)
    {
        if (what is not SessionOpened e)
        {
            return null;
        }

        Session session = shop.Shop.Sessions[e.Session];
        return
        [
            CsvCell.Text(e.Session),
            CsvCell.Day(e.On),
            CsvCell.Text(e.Pattern),
            CsvCell.Count(session.Heads),
            CsvCell.Text(e.Care.Lubricant),
            CsvCell.Word(Care.CoolingWords, e.Care.Cooling),
            CsvCell.Count(e.Care.Blows),
            CsvCell.Text(e.Hand),
            CsvCell.YesNo(!session.IsOpen),
            CsvCell.Text(e.Note),
        ];
    }

    /// <inheritdoc />
    protected override LedgerEntry Entry(CsvRow row, ShopRead shop)
    {
        SessionOpened entry = new(
            row.NeedName("session"),
            row.NeedPastDay("on"),
            row.Text("pattern"),
            new(row.Text("lubricant"), row.Word("cooling", Care.CoolingWords), row.Count("blows")),
            row.Text("hand"),
            row.Note("note")
        );
        if (row.YesNo("closed") == false && row.Has("heads"))
        {
            row.Fault("heads", "heads are counted when a session is closed; this one is open");
        }

        shop.Once(row, "session", entry.Session);
        shop.Sessions.TryAdd(entry.Session, (entry.On, shop.Sessions.Count));
        return entry;
    }

    /// <inheritdoc />
    protected override LedgerEntry? After(CsvRow row, ShopRead shop) =>
        row.YesNo("closed") == false ? null : new SessionClosed(row.NeedName("session"), row.Count("heads"));

    /// <inheritdoc />
    protected override void Doubt(CsvRow row, ShopRead shop) => shop.Doubt("session", row.Peek("session"));
}
